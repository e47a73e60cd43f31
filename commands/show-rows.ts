// The printed rows with their likeliest reading, in parts that a screen or a terminal can lay out.
import {separators} from "../engine/cell/printed-row.ts";
import type {Book, Reading} from "../engine/index.ts";

/** A stretch of a row: one field as read, or characters that no field takes. */
export interface RowPart {
  /** Null for characters that carry nothing known. */
  readonly field: string | null;
  readonly characters: readonly {readonly shown: string; readonly doubtful: boolean}[];
  /** What stands before it in the row: nothing, a blank, or one of - . / */
  readonly before: string;
}

/** The row cut into the fields of one reading. */
export function rowParts(reading: Reading): RowPart[] {
  const {row} = reading;
  const parts: RowPart[] = [];
  const brackets = [...reading.brackets].sort((a, b) => a.from - b.from);
  for (let at = 0; at < row.cells.length; ) {
    const bracket = brackets.find(({from}) => from === at);
    const end = bracket?.until ?? Math.min(row.cells.length, ...brackets.flatMap(({from}) => (from > at ? [from] : [])));
    const weights = at > 0 ? row.boundaries[at - 1]! : [];
    parts.push({
      field: bracket?.field ?? null,
      characters: row.cells.slice(at, end).map(({shown, doubtful}) => ({shown, doubtful})),
      before: at > 0 ? separators[weights.indexOf(Math.max(...weights))]! : "",
    });
    at = end;
  }
  return parts;
}

/** A reading in words: its date, its codes with their names. */
export function sayReading(reading: Reading, book: Book | undefined): string {
  const codes = (["plant", "lot", "fabric"] as const).flatMap((kind) => (reading[kind] === null ? [] : [`${kind} ${sayCode(kind, reading[kind], book)}`]));
  return [...(reading.date ? [reading.date] : []), ...codes].join("; ") || "nothing that the book knows";
}

function sayCode(kind: "plant" | "lot" | "fabric", code: string, book: Book | undefined): string {
  const list = book?.[`${kind}s`]?.codes;
  const name = list && Object.hasOwn(list, code) ? list[code]!.name : undefined;
  return name ? `${code} (${name})` : code;
}

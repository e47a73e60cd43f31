// The line of column names: which column says what, before the first garment is read.
import {knownMarks, nearest, rowsId, type Book, type Problem} from "../../engine/index.ts";
import {resultColumns} from "../brief.ts";
import {delimiters, readCells, unguarded, type Delimiter} from "./cells.ts";
import * as say from "./problems.ts";

/** Columns that say something about the garment itself; every other one is a mark. */
const ownColumns = ["garment", "title", "maker", "market", "type", "note", rowsId] as const;
export type OwnColumn = (typeof ownColumns)[number];

/** What the cells of a table say, as plain data that can be handed to a worker. */
export interface Columns {
  readonly delimiter: Delimiter;
  /** The names as written, in their order. */
  readonly names: readonly string[];
  /** For each column of the garment itself its place. */
  readonly own: Readonly<Partial<Record<OwnColumn, number>>>;
  /** The columns that are marks: place and id. */
  readonly marks: readonly (readonly [place: number, id: string])[];
  /** Columns that go into the result: all but those of an earlier result, which are written anew. */
  readonly kept: readonly number[];
}

/** The sign between cells: the one that the line of column names holds most often, a comma when there is none. */
export function delimiterOf(header: string): Delimiter {
  const outside = header.replace(/"[^"]*"/g, "");
  const counts = delimiters.map((sign) => outside.split(sign).length);
  return delimiters[counts.indexOf(Math.max(...counts))]!;
}

/**
 * Reads the line of column names.
 * @param carry  names of columns that are handed through without being read
 * @param at     head of problems
 */
export function readColumns(header: string, books: readonly Book[], carry: readonly string[], at: string): {columns: Columns; problems?: undefined} | {columns?: undefined; problems: Problem[]} {
  const delimiter = delimiterOf(header);
  const names = readCells(header, delimiter)?.map((name) => unguarded(name).trim());
  if (!names) return {problems: [say.headerQuotes(at)]};
  const ids = names.map((name) => name.toLowerCase());
  const passed = new Set(carry.map((name) => name.trim().toLowerCase()));
  const known = knownMarks(books);
  const problems = ids.flatMap((id, i) => (id === "" ? [say.nameless(at, i + 1)] : []));
  const double = [...new Set(ids.filter((id, i) => id !== "" && !passed.has(id) && ids.indexOf(id) !== i))];
  if (double.length > 0) problems.push(say.twice(at, double));
  const own: Partial<Record<OwnColumn, number>> = {};
  const marks: [number, string][] = [];
  const kept: number[] = [];
  ids.forEach((id, i) => {
    if ((resultColumns as readonly string[]).includes(id) && !passed.has(id)) return;
    kept.push(i);
    if (passed.has(id) || id === "") return;
    if ((ownColumns as readonly string[]).includes(id)) own[id as OwnColumn] = i;
    else if (known.has(id)) marks.push([i, id]);
    else problems.push(say.unknownColumn(at, names[i]!, nearest(id, [...known.keys(), ...ownColumns])));
  });
  return problems.length > 0 ? {problems} : {columns: {delimiter, names, own, marks, kept}};
}

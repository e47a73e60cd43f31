// What was seen at a mark as a cell of a table, and back without loss: plain where that is possible, several divided by |, weights as JSON.
import type {Garment} from "../../../engine/index.ts";
import {oneOrSeveral} from "../../write-garment.ts";

type Seen = Exclude<Garment["saw"][string], Garment["saw"]["rows"]>;
type Rows = NonNullable<Garment["saw"]["rows"]>;

/** Texts that would be read as something else stand in the cell as JSON. */
const isPlain = (text: string) => text !== "" && text !== "-" && text === text.trim() && !/[|]|^[["{]/.test(text);

export function printSeen(value: unknown): string {
  if (typeof value === "string") return isPlain(value) ? value : JSON.stringify(value);
  if (Array.isArray(value) && value.length > 1 && value.every((one) => typeof one === "string" && isPlain(one))) return value.join("|");
  return JSON.stringify(value);
}

export function printRows(rows: Rows): string {
  const texts = rows.map((row) => (typeof row === "string" ? row : null));
  return texts.length > 0 && texts.every((text) => text !== null && isPlain(text)) ? texts.join("|") : JSON.stringify(rows);
}

/** Nothing for an empty cell and for a single dash: not looked at. */
export function readSeen(cell: string): Seen | undefined {
  if (cell === "" || cell === "-") return undefined;
  const json = asJson(cell);
  return json === undefined ? (oneOrSeveral(cell) as Seen) : (json as Seen);
}

export function readRows(cell: string): Rows | undefined {
  if (cell === "" || cell === "-") return undefined;
  const json = asJson(cell);
  return json === undefined ? cell.split("|").map((row) => row.trim()) : (json as Rows);
}

function asJson(cell: string): unknown {
  if (!/^[["{]/.test(cell)) return undefined;
  try {
    return JSON.parse(cell) as unknown;
  } catch {
    return undefined;
  }
}

// A row of a garment file in one line of text, whichever of its forms it was written in.
import type {RowText} from "./garment.ts";

/** A row in one line, and the edge it stands on; "" when that was not said. */
export interface WrittenRow {
  readonly text: string;
  readonly at: string;
}

/**
 * The row in the notation in which rows are typed. Of several whole readings it is the likeliest.
 * @example
 * writtenRow({cells: ["3", {either: {"3": 80, "8": 20}}]}).text // -> "3(3:80/8:20)"
 */
export function writtenRow(row: RowText): WrittenRow {
  if (typeof row === "string") return {text: row, at: ""};
  return {text: textOf(row), at: row.at ?? ""};
}

function textOf(row: Exclude<RowText, string>): string {
  if ("text" in row) return row.text;
  if ("readings" in row) return row.readings.reduce((best, one) => (one.weight > best.weight ? one : best)).text;
  return row.cells.map((cell) => (typeof cell === "string" ? cell : `(${Object.entries(cell.either).map(([character, weight]) => `${character}:${weight}`).join("/")})`)).join("");
}

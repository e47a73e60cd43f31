// A row of a garment as one text: what was typed, or the likeliest of several readings.
import type {RowText} from "../../engine/index.ts";

/** The likeliest text of a row; doubtful characters by their heaviest. */
export function textOfRow(row: RowText): string {
  if (typeof row === "string") return row;
  if ("readings" in row) return row.readings.reduce((best, one) => (one.weight > best.weight ? one : best)).text;
  if ("text" in row) return row.text;
  return row.cells.map((cell) => (typeof cell === "string" ? cell : Object.entries(cell.either).reduce((best, one) => (one[1] > best[1] ? one : best))[0])).join("");
}

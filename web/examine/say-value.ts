// A part of a garment's content in words, for showing two of them side by side.
import {writtenRow, type RowText} from "../../engine/index.ts";
import type {LabelReading} from "../../reader/model.ts";
import {settle} from "../../reader/settle.ts";
import {sayFlaw} from "../../state/grade.ts";
import type {Flaw} from "../../state/model.ts";
import type {Money} from "../../store/model.ts";
import {printMoney} from "../../commands/rack/table/money-cell.ts";

/**
 * @example
 * sayValue({cents: 12000, currency: "EUR"}) // -> "120.00 EUR"
 * sayValue(["412-0318", {text: "3 8", at: "back"}]) // -> "412-0318; 3 8 (back)"
 */
export function sayValue(value: unknown): string {
  if (value === undefined || value === null || value === "") return "nothing";
  if (Array.isArray(value)) return value.length === 0 ? "nothing" : value.map(sayValue).join("; ");
  if (typeof value !== "object") return String(value);
  if ("cents" in value && "currency" in value) return printMoney(value as Money);
  if ("text" in value) return `${String(value.text)}${"at" in value && value.at ? ` (${String(value.at)})` : ""}`;
  if ("either" in value) return Object.entries(value.either as Readonly<Record<string, number>>).map(([one, weight]) => `${one} (${weight})`).join(" or ");
  if ("typed" in value && "unit" in value) return `${String(value.typed)} ${String(value.unit)}`;
  if ("point" in value && "length" in value) return `${String(value.point)} ${sayValue(value.length)}`;
  if ("severity" in value && "mended" in value) return sayFlaw(value as Flaw);
  if ("readings" in value) return sayValue(writtenRow(value as RowText));
  if ("photo" in value && "rows" in value) return (value as LabelReading).rows.filter(({settled}) => !settled?.left).map(({read, settled}) => settle(read, settled).best).join(" | ");
  if ("cells" in value) return (value.cells as readonly unknown[]).map((cell) => (typeof cell === "string" ? cell : `(${sayValue(cell)})`)).join("");
  return Object.entries(value).map(([key, part]) => `${key}: ${sayValue(part)}`).join(", ");
}

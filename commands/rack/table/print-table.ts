// Garments as a table that reads back to the same garments, with what they were dated to; no cell can run as a formula.
import {guarded, printCells} from "../../batch/cells.ts";
import type {Content} from "../../../store/model.ts";
import {printMeasures} from "../../state/measures-cell.ts";
import {printRows, printSeen} from "./mark-cell.ts";
import {printMoney} from "./money-cell.ts";
import {entryColumns, type EntryColumn} from "./column.ts";

const told: Readonly<Record<string, (dating: NonNullable<Content["dating"]>) => string>> = {
  dated: ({words}) => words,
  sureness: ({sureness}) => sureness,
  best: ({best}) => best,
  probability: ({probability}) => probability.toFixed(4),
  no_earlier: ({noEarlier}) => noEarlier,
  no_later: ({noLater}) => noLater,
};

/** The line of names. @param marks  ids of the marks that any of the garments carries */
export const printHeader = (marks: readonly string[]) => printCells([...entryColumns, ...marks, ...Object.keys(told)].map(guarded), ",");

/** Guarded as the OWASP page on CSV injection asks: ' before = + - @ tab and carriage return; every cell with a sign of its own in quotes (RFC 4180). */
export function printRecord(content: Content, marks: readonly string[]): string {
  const {saw} = content.garment;
  const entries = entryColumns.map((name) => entryCell(name, content));
  const seen = marks.map((id) => (Object.hasOwn(saw, id) ? printSeen(saw[id]) : ""));
  const dating = Object.values(told).map((print) => (content.dating ? print(content.dating) : ""));
  return printCells([...entries, ...seen, ...dating].map(guarded), ",");
}

function entryCell(name: EntryColumn, {garment, place, standing, paid, asked, tags, sizes}: Content): string {
  switch (name) {
    case "rows": return garment.saw.rows ? printRows(garment.saw.rows) : "";
    case "maker": return [garment.maker ?? []].flat().join("|");
    case "place": return place;
    case "standing": return standing;
    case "paid": return paid ? printMoney(paid) : "";
    case "asked": return asked ? printMoney(asked) : "";
    case "tags": return tags.join("|");
    case "size": return sizes?.tag?.text ?? "";
    case "measures": return sizes ? printMeasures(sizes) : "";
    default: return garment[name] ?? "";
  }
}

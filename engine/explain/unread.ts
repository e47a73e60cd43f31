// Why a number is no date: month 19 and week 60 do not exist, and a date outside its scheme's time is not read.
import type {Evaluation} from "../infer/evaluate.ts";
import {rowsId} from "../infer/evidence.ts";
import type {Unread} from "../infer/finding.ts";
import type {RowReadings} from "../infer/readings.ts";
import {readText} from "../mark/coded.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import type {Scheme} from "../rule/schema.ts";
import {dateTroubles} from "../scheme/trouble.ts";

/** Texts and rows that no scheme can date, each with the nearest reason. */
export function unreadCodes({evidence}: Evaluation, rows: readonly RowReadings[]): Unread[] {
  const result: Unread[] = [];
  for (const {mark, seen} of evidence.marks) {
    if (seen.kind !== "coded" || mark.mark.kind !== "coded") continue;
    const book = evidence.view.books.find((b) => b.marks.get(mark.id) === mark)!;
    const schemes = book.schemes.filter(({id}) => mark.mark.kind === "coded" && mark.mark.schemes.includes(id));
    for (const {row} of seen.texts) {
      if (readText(schemes, row).length === 0) result.push({mark: mark.id, text: row.text, why: reason(row, schemes.map(({scheme}) => scheme))});
    }
  }
  const dated = rows.some(({readings}) => readings.some(({date, probability}) => date !== null && probability > 0.05));
  const own = evidence.view.own;
  if (own && rows.length > 0 && !dated) {
    for (const {row} of rows) result.push({mark: rowsId, text: row.text, why: reason(row, own.schemes.map(({scheme}) => scheme))});
  }
  return result;
}

function reason(row: PrintedRow, schemes: readonly Scheme[]): string {
  const troubles = dateTroubles(row, schemes);
  return troubles.length > 0 ? troubles.join("; ") : "no code scheme of the book has this form";
}

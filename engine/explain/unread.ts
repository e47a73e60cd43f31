// Why a number is no date: month 19 and week 60 do not exist, and a date outside its scheme's time is not read.
import type {Evaluation} from "../infer/evaluate.ts";
import {rowsId} from "../infer/evidence.ts";
import type {Unread} from "../infer/finding.ts";
import type {Reading, RowReadings} from "../infer/readings.ts";
import {readText} from "../mark/coded.ts";
import {readTypedRow, type PrintedRow} from "../cell/printed-row.ts";
import type {Scheme} from "../rule/schema.ts";
import {readCode} from "../scheme/code.ts";
import {sayStated} from "../scheme/say.ts";
import type {ReadyScheme} from "../scheme/scheme.ts";
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
  const own = evidence.view.own;
  if (!own) return result;
  const schemes = own.schemes.map(({scheme}) => scheme);
  const dated = rows.some(({readings}) => readings.some(({date, probability}) => date !== null && probability > worthNaming));
  for (const {row, readings} of rows) {
    const best = readings.find(({date, probability}) => date !== null && probability > worthNaming);
    const bracket = best?.brackets.find(({field}) => field === "date");
    if (best && bracket && !readsAsPrinted(bracket.text, best, own.schemes)) {
      result.push({mark: rowsId, text: bracket.text, why: `${reasonFor(bracket.text, schemes)}; as ${best.date} it would be a misprint or a worn figure (${Math.round(best.probability * 100)} in 100)`});
    } else if (!dated) result.push({mark: rowsId, text: row.text, why: reason(row, schemes)});
  }
  return result;
}

/** Below this probability a reading is not spoken of. */
const worthNaming = 0.05;

/** Whether a date needs no look-alike: some scheme reads the very characters as the reading says. */
function readsAsPrinted(text: string, {scheme, date}: Reading, schemes: readonly ReadyScheme[]): boolean {
  if (/[?(]/.test(text)) return true;
  const used = schemes.find(({id}) => id === scheme);
  return used ? readCode(used, text).some(({stated}) => sayStated(stated) === date) : true;
}

function reasonFor(text: string, schemes: readonly Scheme[]): string {
  const row = readTypedRow(text);
  return "slip" in row ? row.slip : reason(row, schemes);
}

function reason(row: PrintedRow, schemes: readonly Scheme[]): string {
  const troubles = dateTroubles(row, schemes);
  return troubles.length > 0 ? troubles.join("; ") : "no code scheme of the book has this form";
}

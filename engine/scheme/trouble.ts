// Says what would be wrong with a number if it were a date.
import type {PrintedRow} from "../cell/printed-row.ts";
import type {Part, Scheme} from "../rule/schema.ts";
import {readCode, loneScheme} from "./code.ts";

/**
 * The reasons why a row's figures are no date by the schemes: an impossible month, week or day, or a time when the scheme was not in use.
 * Only schemes whose figures fit the row's in number are asked.
 */
export function dateTroubles(row: PrintedRow, schemes: readonly Scheme[]): string[] {
  const figures = row.cells.map((cell) => (cell.doubtful ? "?" : cell.shown)).join("");
  if (figures.includes("?") || !/^\d+$/.test(figures)) return [];
  const troubles = new Set<string>();
  for (const scheme of schemes) {
    if (readCode(loneScheme({...scheme, window: {}}), figures).length > 0) {
      troubles.add(`${figures} would read by “${scheme.name}”, but not in the time when that was in use`);
      continue;
    }
    for (const trouble of partTroubles(scheme.parts, figures)) troubles.add(trouble);
  }
  return [...troubles].slice(0, 3);
}

function partTroubles(parts: readonly Part[], figures: string): string[] {
  let at = 0;
  const troubles: string[] = [];
  const widths = parts.map((part) => widthOf(part));
  const fixed = widths.reduce<number>((sum, width) => sum + (width ?? 0), 0);
  const open = widths.filter((width) => width === null).length;
  for (const [i, part] of parts.entries()) {
    const width = widths[i] ?? (open === 1 ? figures.length - fixed : 0);
    const value = figures.slice(at, at + width);
    at += width;
    if (value === "") return [];
    const number = Number(value);
    if ("month" in part && typeof part.month === "string" && (number < 1 || number > 12)) troubles.push(`there is no month ${number}`);
    if ("week" in part && (number < 1 || number > 53)) troubles.push(`there is no week ${number}`);
    if ("day of year" in part && (number < 1 || number > 366)) troubles.push(`no year has a day ${number}`);
    if ("day" in part && (number < 1 || number > 31)) troubles.push(`no month has a day ${number}`);
  }
  return at === figures.length ? troubles : [];
}

/** How many figures a part prints; null when it varies. */
function widthOf(part: Part): number | null {
  if ("month" in part) return part.month === "padded" ? 2 : part.month === "plain" ? null : 1;
  if ("week" in part) return part.week === "padded" ? 2 : null;
  if ("day" in part) return part.day === "padded" ? 2 : null;
  if ("day of year" in part) return part["day of year"] === "padded" ? 3 : null;
  if ("quarter" in part) return 1;
  const year = "year" in part ? part.year : "fiscal year" in part ? part["fiscal year"] : null;
  if (year !== null) return year === "two figures" ? 2 : year === "four figures" ? 4 : 1;
  if ("text" in part) return part.text.length;
  const count = "digits" in part ? part.digits : "letters" in part ? part.letters : 0;
  return typeof count === "number" ? count : null;
}

// Prints days as codes and reads codes back: the two faces of one grammar, so that reading undoes printing.
import type {DayIndex} from "../units.ts";
import {monthIndex} from "../units.ts";
import {isoWeekOf} from "../month/iso-week.ts";
import {readTypedRow} from "../cell/printed-row.ts";
import type {Scheme} from "../rule/schema.ts";
import type {Span} from "../window/window.ts";
import {matchScheme} from "./match.ts";
import {readyScheme, type ReadyScheme} from "./scheme.ts";
import {spansOf, statedOn, type DaySpan, type Stated} from "./stated.ts";

/**
 * The text that a scheme prints on a day.
 * @param fill  the character for figures and letters that say nothing of the date; their least number is printed
 * @returns     null when a table has no letter for the day
 * @example
 * printCode(monthAndYearFigure, dayNumber(1968, 3, 9)) // -> "38"
 */
export function printCode(scheme: ReadyScheme, day: DayIndex, fill = {digit: "1", letter: "A"}): string | null {
  const on = statedOn(day, isoWeekOf(day));
  const weekly = scheme.scheme.parts.some((part) => "week" in part);
  let text = "";
  for (const part of scheme.parts) {
    if ("free" in part) {
      text += (part.free === "digits" ? fill.digit : fill.letter).repeat(part.from);
      continue;
    }
    const found = part.find(({states}) => agrees(states, on, weekly));
    if (!found) return null;
    text += found.text;
  }
  return text;
}

function agrees(states: Stated, on: ReturnType<typeof statedOn>, weekly: boolean): boolean {
  for (const key of ["month", "quarter", "week", "day", "dayOfYear"] as const) {
    if (states[key] !== undefined && states[key] !== on[key]) return false;
  }
  if (!states.year) return true;
  const year = states.year.fiscal ? on.fiscalYear : weekly ? on.weekYear : on.year;
  return states.year.modulus === 0 ? states.year.value === year : ((year % states.year.modulus) + states.year.modulus) % states.year.modulus === states.year.value;
}

/** One meaning of a printed code. */
export interface CodeReading {
  readonly stated: Stated;
  /** Every stretch of days within the scheme's window that it can mean. */
  readonly spans: readonly DaySpan[];
}

/**
 * Reads a code that is printed in full and without doubt.
 * @returns every meaning with at least one possible day; none for nonsense such as month 19 or week 60
 * @example
 * readCode(monthAndYearFigure, "38").map((r) => r.stated) // -> [{month: 3, year: {value: 8, modulus: 10, fiscal: false}}]
 */
export function readCode(scheme: ReadyScheme, text: string): CodeReading[] {
  const typed = readTypedRow(text);
  if ("slip" in typed || !scheme.span) return [];
  const exact = {...typed, cells: typed.cells.map((cell) => (cell.doubtful ? cell : {...cell, weights: new Map([[cell.shown, 1]]), top: 1}))};
  const result: CodeReading[] = [];
  matchScheme(scheme, exact, 0, (until, _chance, stated) => {
    if (until !== exact.cells.length) return;
    const spans = spansOf(stated, scheme.span!);
    if (spans.length > 0) result.push({stated, spans});
  });
  return result;
}

/** A scheme alone, outside any book, over the years that the calendar of this tool covers. */
export function loneScheme(scheme: Scheme, axis: Span = {from: monthIndex(-1200), until: monthIndex(2400)}): ReadyScheme {
  return readyScheme("scheme", scheme, axis);
}

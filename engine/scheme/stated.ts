// What the parts of a date code state, and which months can have printed it.
import {dayIndex, monthIndex, type DayIndex, type MonthIndex} from "../units.ts";
import {dateOf, dayNumber, daysIn, firstDayOf, month, monthOf, monthOfYear, yearOf} from "../month/month.ts";
import {mondayOf} from "../month/iso-week.ts";
import {fiscalYearOf, monthsOfFiscalYear} from "../month/fiscal-year.ts";
import type {Span} from "../window/window.ts";

/** A year as far as the code tells it: `value` modulo `modulus`, or the year itself when modulus is 0. */
export interface StatedYear {
  readonly value: number;
  readonly modulus: 0 | 10 | 100;
  readonly fiscal: boolean;
}

/** What a code states; absent parts are open. */
export interface Stated {
  readonly year?: StatedYear;
  readonly month?: number;
  readonly quarter?: number;
  readonly week?: number;
  readonly day?: number;
  readonly dayOfYear?: number;
}

/** Months with weights: the chance that a garment made in the month carries the code. Ascending; indices count from the axis' first month. */
export interface SparseMonths {
  readonly at: Int32Array;
  readonly weight: Float64Array;
}

export interface DaySpan {
  readonly from: DayIndex;
  readonly until: DayIndex;
}

const fits = (year: number, stated: StatedYear | undefined) =>
  !stated || (stated.modulus === 0 ? year === stated.value : ((year % stated.modulus) + stated.modulus) % stated.modulus === stated.value);

/**
 * Every stretch of days within `span` that a code can mean, in order; both ends included.
 * Nonsense (month 19, week 60, 31 June, week 53 of a short year) has none.
 */
export function spansOf(stated: Stated, span: Span): DaySpan[] {
  const result: DaySpan[] = [];
  const first = yearOf(span.from) - 1;
  const last = yearOf(span.until) + 1;
  const low = firstDayOf(span.from);
  const high = dayIndex(firstDayOf(monthIndex(span.until + 1)) - 1);
  for (let year = first; year <= last; year++) {
    if (!fits(year, stated.year)) continue;
    const whole = stated.year?.fiscal ? monthsOfFiscalYear(year) : {from: month(year, 1), until: month(year, 12)};
    for (const piece of piecesOf(stated, year, whole)) {
      const from = Math.max(piece.from, low);
      const until = Math.min(piece.until, high);
      if (from <= until) result.push({from: dayIndex(from), until: dayIndex(until)});
    }
  }
  return result;
}

function piecesOf(stated: Stated, year: number, whole: Span): DaySpan[] {
  if (stated.week !== undefined || stated.dayOfYear !== undefined) {
    // A fiscal year takes in days of two calendar years; a calendar year is its own.
    if (!stated.year?.fiscal) return countedDays(stated, year);
    const [low, high] = [firstDayOf(whole.from), firstDayOf(monthIndex(whole.until + 1)) - 1];
    return [year - 1, year].flatMap((y) => countedDays(stated, y)).flatMap(({from, until}) => {
      const cut = {from: dayIndex(Math.max(from, low)), until: dayIndex(Math.min(until, high))};
      return cut.from <= cut.until ? [cut] : [];
    });
  }
  const result: DaySpan[] = [];
  for (let m = whole.from as number; m <= whole.until; m++) {
    const at = monthIndex(m);
    if (stated.month !== undefined && monthOfYear(at) !== stated.month) continue;
    if (stated.quarter !== undefined && Math.ceil(monthOfYear(at) / 3) !== stated.quarter) continue;
    const start = firstDayOf(at);
    if (stated.day === undefined) {
      const before = result.at(-1);
      if (before && before.until === start - 1) result[result.length - 1] = {from: before.from, until: dayIndex(start + daysIn(at) - 1)};
      else result.push({from: start, until: dayIndex(start + daysIn(at) - 1)});
    } else if (stated.day >= 1 && stated.day <= daysIn(at)) {
      const day = dayIndex(start + stated.day - 1);
      result.push({from: day, until: day});
    }
  }
  return result;
}

/** The days of a week or of a day of the year. */
function countedDays({week, dayOfYear}: Stated, year: number): DaySpan[] {
  if (week !== undefined) {
    const monday = mondayOf(year, week);
    return monday === null ? [] : [{from: monday, until: dayIndex(monday + 6)}];
  }
  const day = dayIndex(dayNumber(year, 1, 1) + dayOfYear! - 1);
  return dayOfYear! >= 1 && dateOf(day).year === year ? [{from: day, until: day}] : [];
}

/** The days of a code spread over the months they touch: the share of each month's days. */
export function monthsOf(stated: Stated, span: Span, axisFrom: MonthIndex): SparseMonths {
  const weights = new Map<number, number>();
  for (const piece of spansOf(stated, span)) {
    for (let m = monthOf(piece.from) as number; m <= monthOf(piece.until); m++) {
      const at = monthIndex(m);
      const start = firstDayOf(at);
      const days = Math.min(piece.until, start + daysIn(at) - 1) - Math.max(piece.from, start) + 1;
      weights.set(m, (weights.get(m) ?? 0) + days / daysIn(at));
    }
  }
  const months = [...weights.keys()].sort((a, b) => a - b);
  return {at: Int32Array.from(months, (m) => m - axisFrom), weight: Float64Array.from(months, (m) => weights.get(m)!)};
}

/** What a code printed on a day states, for the parts that a scheme has. */
export function statedOn(day: DayIndex, week: {year: number; week: number}): Required<Omit<Stated, "year">> & {year: number; fiscalYear: number; weekYear: number} {
  const date = dateOf(day);
  return {
    year: date.year,
    weekYear: week.year,
    fiscalYear: fiscalYearOf(monthOf(day)),
    month: date.month,
    quarter: Math.ceil(date.month / 3),
    week: week.week,
    day: date.day,
    dayOfYear: day - dayNumber(date.year, 1, 1) + 1,
  };
}

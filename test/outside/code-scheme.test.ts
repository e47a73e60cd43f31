// Law of a grammar: what is printed on a day reads back as a span that holds the day; nonsense reads as nothing.
// The meaning of each form is that of ISO 8601-1:2019 (weeks, ordinal days) or of the plain calendar, told by temporal-polyfill.
import {Temporal} from "temporal-polyfill";
import {describe, expect, test} from "vitest";
import {daysIn, dayNumber, firstDayOf, month, monthOf, printDay} from "../../engine/month/month.ts";
import {fiscalYearOf, monthsOfFiscalYear} from "../../engine/month/fiscal-year.ts";
import type {Scheme} from "../../engine/rule/schema.ts";
import {loneScheme, printCode, readCode} from "../../engine/scheme/code.ts";
import type {DaySpan} from "../../engine/scheme/stated.ts";
import {dayIndex, monthIndex, type DayIndex} from "../../engine/units.ts";
import {readData, type Sourced} from "../helper/data.ts";
import {dayOf} from "../helper/day.ts";
import {schemeOf} from "../helper/small-book.ts";

const axis = {from: month(1935, 1), until: month(2065, 12)};
const ready = (scheme: Scheme) => loneScheme(scheme, axis);

/** Every day of 1950 to 2050 as the calendar library counts them; made once, since the library is slow. */
const calendar = everyDay("1950-01-01", "2050-12-31");

function everyDay(from: string, until: string): {readonly on: DayIndex; readonly year: number; readonly month: number; readonly weekday: number}[] {
  const days = [];
  for (let plain = Temporal.PlainDate.from(from); Temporal.PlainDate.compare(plain, until) <= 0; plain = plain.add({days: 1})) {
    days.push({on: dayNumber(plain.year, plain.month, plain.day), year: plain.year, month: plain.month, weekday: plain.dayOfWeek});
  }
  return days;
}

const monthLetters = {A: 1, B: 2, C: 3, D: 4, E: 5, F: 6, G: 7, H: 8, J: 9, K: 10, L: 11, M: 12};
const yearLetters = Object.fromEntries([..."ABCDEFGHJKLMNPRSTVWXYZ"].map((letter, i) => [letter, 1960 + i]));

type Span = (on: DayIndex, plain: (typeof calendar)[number]) => DaySpan;

const day: Span = (on) => ({from: on, until: on});
const monthSpan: Span = (on) => ({from: firstDayOf(monthOf(on)), until: dayIndex(firstDayOf(monthIndex(monthOf(on) + 1)) - 1)});
const weekSpan: Span = (on, plain) => ({from: dayIndex(on - plain.weekday + 1), until: dayIndex(on - plain.weekday + 7)});
const quarterSpan: Span = (_, plain) => {
  const start = Math.floor((plain.month - 1) / 3) * 3 + 1;
  const until = month(plain.year, start + 2);
  return {from: dayNumber(plain.year, start, 1), until: dayIndex(firstDayOf(until) + daysIn(until) - 1)};
};
const yearSpan: Span = (_, plain) => ({from: dayNumber(plain.year, 1, 1), until: dayNumber(plain.year, 12, 31)});
const fiscalSpan: Span = (on) => {
  const {from, until} = monthsOfFiscalYear(fiscalYearOf(monthOf(on)));
  return {from: firstDayOf(from), until: dayIndex(firstDayOf(until) + daysIn(until) - 1)};
};


interface Form {
  readonly name: string;
  readonly scheme: Scheme;
  /** The stretch of days that prints the same, by the calendar library. */
  readonly own: Span;
  readonly never: readonly string[];
}

const forms: readonly Form[] = [
  {name: "month and last figure of the year", scheme: schemeOf([{month: "plain"}, {year: "last figure"}]), own: monthSpan, never: ["08", "138", "198", "1", "0"]},
  {name: "padded month and two-figure year", scheme: schemeOf([{month: "padded"}, {year: "two figures"}]), own: monthSpan, never: ["0068", "1368", "1968", "389", "99"]},
  {name: "plain month, dot, two-figure year", scheme: schemeOf([{month: "plain"}, {text: "."}, {year: "two figures"}]), own: monthSpan, never: ["0.68", "13.68", "19.68"]},
  {name: "week and two-figure year", scheme: schemeOf([{week: "padded"}, {year: "two figures"}]), own: weekSpan, never: ["0084", "5484", "6084", "5378", "5377"]},
  {name: "two-figure year and week", scheme: schemeOf([{year: "two figures"}, {week: "padded"}]), own: weekSpan, never: ["8400", "8454", "8460", "7853", "7753"]},
  {name: "week and last figure of the year", scheme: schemeOf([{week: "padded"}, {year: "last figure"}]), own: weekSpan, never: ["004", "544", "604"]},
  {name: "day of year and year figure", scheme: schemeOf([{"day of year": "padded"}, {year: "last figure"}]), own: day, never: ["0007", "3677", "3663", "3665", "3667"]},
  {name: "year figure and day of year", scheme: schemeOf([{year: "last figure"}, {"day of year": "padded"}]), own: day, never: ["7000", "7367", "7366", "3366"]},
  {name: "month letter and last figure", scheme: schemeOf([{month: monthLetters}, {year: "last figure"}]), own: monthSpan, never: ["I8", "N8", "88"]},
  {name: "year letter and padded month", scheme: schemeOf([{year: yearLetters}, {month: "padded"}]), own: monthSpan, never: ["I03", "A13", "A00", "A19"]},
  {name: "year figure and quarter letter", scheme: schemeOf([{year: "last figure"}, {quarter: "letters"}]), own: quarterSpan, never: ["8E", "8Z", "81"]},
  {name: "quarter and two-figure year", scheme: schemeOf([{quarter: "plain"}, {year: "two figures"}]), own: quarterSpan, never: ["068", "568", "968"]},
  {
    name: "fiscal year inside a contract number",
    scheme: schemeOf([{text: "ABC"}, {digits: 3}, {text: "-"}, {"fiscal year": "two figures"}, {text: "-"}, {letters: 1}, {text: "-"}, {digits: [3, 5]}]),
    own: fiscalSpan,
    never: ["ABC100-6-C-2010", "ABC100-67-C", "ABD100-67-C-2010", "ABC100-67-C-201055"],
  },
  {name: "four-figure year", scheme: schemeOf([{year: "four figures"}]), own: yearSpan, never: ["0000", "1850", "68"]},
  {name: "four-figure year and month", scheme: schemeOf([{year: "four figures"}, {text: "-"}, {month: "padded"}]), own: monthSpan, never: ["1968-00", "1968-13", "1968-19"]},
  {
    name: "day, month and two-figure year",
    scheme: schemeOf([{day: "padded"}, {text: "/"}, {month: "padded"}, {text: "/"}, {year: "two figures"}]),
    own: day,
    never: ["31/06/68", "30/02/68", "29/02/67", "00/03/68", "32/03/68", "31/13/68", "31/00/68", "31/04/99"],
  },
];

describe.each(forms)("$name (ISO 8601-1:2019, temporal-polyfill)", ({scheme, own, never}) => {
  const made = ready(scheme);

  test("a code printed on any day of 1950 to 2050 reads as the days that print alike, that day among them", () => {
    const read = new Map<string, ReturnType<typeof readCode>>();
    const wrong: string[] = [];
    for (const plain of calendar) {
      const {on} = plain;
      const code = printCode(made, on);
      if (code === null) continue;
      if (!read.has(code)) read.set(code, readCode(made, code));
      const expected = own(on, plain);
      const found = read.get(code)!.some(({spans}) => spans.some(({from, until}) => from === expected.from && until === expected.until));
      if (!found || expected.from > on || expected.until < on) wrong.push(`${printDay(on)} ${code}`);
    }
    expect(wrong).toEqual([]);
  });

  test.each(never)("%s reads as no day at all", (code) => expect(readCode(made, code)).toEqual([]));
});

test("a table that names no letter for a year prints nothing in it", () => {
  expect(printCode(ready(forms[9]!.scheme), dayNumber(1955, 3, 1))).toBeNull();
});

describe("days of the year (ISO 8601 ordinal dates)", () => {
  interface Ordinal extends Sourced {
    readonly days: readonly {readonly year: number; readonly day: number; readonly date: string}[];
    readonly oneFigure: {readonly code: string; readonly dates: readonly string[]};
    readonly never: readonly (readonly [number, number])[];
  }
  const data = readData<Ordinal>("days-of-year");
  const scheme = loneScheme(schemeOf([{year: "four figures"}, {text: "-"}, {"day of year": "padded"}]));
  const written = (year: number, ordinal: number) => `${year}-${String(ordinal).padStart(3, "0")}`;

  test.each(data.days)("day $day of $year is $date", ({year, day: ordinal, date}) => {
    expect(printCode(scheme, dayOf(date))).toBe(written(year, ordinal));
    expect(readCode(scheme, written(year, ordinal)).flatMap(({spans}) => spans.map(({from}) => printDay(from)))).toEqual([date]);
  });

  test.each(data.never)("%i has no day %i", (year, ordinal) => expect(readCode(scheme, written(year, ordinal))).toEqual([]));

  test("with one figure for the year a code means the same day of every tenth year, all of them and no other", () => {
    const short = schemeOf([{year: "last figure"}, {"day of year": "padded"}]);
    const [reading, ...more] = readCode(loneScheme(short, {from: month(1930, 1), until: month(1999, 12)}), data.oneFigure.code);
    expect(more).toEqual([]);
    expect(reading!.spans.map(({from}) => printDay(from))).toEqual(data.oneFigure.dates);
  });
});

describe("week 53 (ISO 8601)", () => {
  const scheme = ready(schemeOf([{week: "padded"}, {year: "two figures"}]));
  test("reads in the years that have it and in no other of 1950 to 2049", () => {
    for (let year = 1950; year < 2050; year++) {
      const weeks = Temporal.PlainDate.from({year, month: 12, day: 28}).weekOfYear;
      const spans = readCode(scheme, `53${String(year % 100).padStart(2, "0")}`).flatMap((reading) => reading.spans);
      expect(spans.some(({from}) => Temporal.PlainDate.from(printDay(from)).yearOfWeek === year)).toBe(weeks === 53);
    }
  });
});

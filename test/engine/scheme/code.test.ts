// Law: whatever the parts of a scheme, what it prints on a day reads back as a meaning that holds the day.
import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {dayNumber, month} from "../../../engine/month/month.ts";
import {loneScheme, printCode, readCode} from "../../../engine/scheme/code.ts";
import {dayIndex} from "../../../engine/units.ts";
import {schemeOf, type Written} from "../../helper/small-book.ts";

const axis = {from: month(1935, 1), until: month(2065, 12)};
const settings = {seed: 19680309, numRuns: 3000};

const monthTable = Object.fromEntries([..."ABCDEFGHJKLM"].map((letter, i) => [letter, i + 1]));
const years = fc.constantFrom<Written>({year: "last figure"}, {year: "two figures"}, {year: "four figures"});
const months = fc.constantFrom<Written>({month: "plain"}, {month: "padded"}, {month: monthTable});
const days = fc.constantFrom<Written>({day: "plain"}, {day: "padded"});
const within = fc.oneof(
  months.map((m) => [m]),
  fc.tuple(days, months),
  fc.constantFrom<Written>({week: "plain"}, {week: "padded"}, {quarter: "plain"}, {quarter: "letters"}, {"day of year": "plain"}, {"day of year": "padded"}).map((part) => [part]),
  fc.constant<Written[]>([]),
);
const idle = fc.constantFrom<Written>({text: " "}, {text: "-"}, {text: "X"}, {digits: 2}, {digits: [0, 2]}, {letters: 1});

/** Parts that tell a date and parts that do not, in any order. */
const partLists = fc
  .tuple(years, within, fc.array(idle, {maxLength: 3}))
  .chain(([year, rest, noise]) => fc.shuffledSubarray([year, ...rest, ...noise], {minLength: 1 + rest.length + noise.length}));
const someDay = fc.integer({min: dayNumber(1950, 1, 1), max: dayNumber(2050, 12, 31)}).map(dayIndex);

const holdsDay = (parts: readonly Written[], day: ReturnType<typeof dayIndex>): boolean => {
  const scheme = loneScheme(schemeOf(parts), axis);
  const code = printCode(scheme, day);
  return code !== null && readCode(scheme, code).some(({spans}) => spans.some(({from, until}) => from <= day && day <= until));
};

describe("reading undoes printing", () => {
  test("for any order of parts and any day", () => {
    fc.assert(fc.property(partLists, someDay, holdsDay), settings);
  });

  test("for fiscal years alone and with months and quarters", () => {
    const fiscal = fc.constantFrom<Written>({"fiscal year": "last figure"}, {"fiscal year": "two figures"}, {"fiscal year": "four figures"});
    const rest = fc.oneof(fc.constant<Written[]>([]), months.map((m) => [m]), fc.constantFrom<Written>({quarter: "plain"}, {quarter: "letters"}).map((q) => [q]));
    fc.assert(fc.property(fiscal, rest, someDay, (year, parts, day) => holdsDay([year, ...parts], day)), settings);
  });

  // A week or a day of the year beside a fiscal year is read in the calendar year of that number: 1967-186 of the fiscal year 1967 is
  // 5 July 1966, and reads as 5 July 1967.
  test("for fiscal years with weeks or days of the year", () => {
    expect(holdsDay([{"fiscal year": "four figures"}, {text: "-"}, {"day of year": "padded"}], dayNumber(1966, 7, 5))).toBe(true);
  });

  test("and a letter table that leaves out a month prints nothing in it, rather than something wrong", () => {
    const scheme = loneScheme(schemeOf([{month: {A: 1}}, {year: "last figure"}]), axis);
    expect(printCode(scheme, dayNumber(1968, 1, 31))).toBe("A8");
    expect(printCode(scheme, dayNumber(1968, 2, 1))).toBeNull();
  });
});

describe("reading makes nothing up", () => {
  test("every meaning of any figures prints those figures again on each first and last day of its spans", () => {
    const figures = fc.stringMatching(/^[0-9]{2,6}$/);
    const parts = fc.tuple(years, within, fc.boolean()).map(([year, rest, before]) => (before ? [year, ...rest] : [...rest, year]));
    fc.assert(
      fc.property(parts, figures, (list, text) => {
        const scheme = loneScheme(schemeOf(list), axis);
        for (const {spans} of readCode(scheme, text)) {
          for (const {from, until} of spans) {
            expect(printCode(scheme, from)).toBe(text);
            expect(printCode(scheme, until)).toBe(text);
          }
        }
      }),
      settings,
    );
  });
});

// Source: the published letter tables of the British registered-design diamond, 1842-1867 and 1868-1883, and the worked examples printed
// with them (The National Archives, guide to registered designs 1839-1991; Ornamental Designs Act 1842). Known exceptions are left out.
import {describe, expect, test} from "vitest";
import {loneScheme, printCode, readCode} from "../../engine/scheme/code.ts";
import {daysIn, dayNumber, month, printDay} from "../../engine/month/month.ts";
import {readData, type Sourced} from "../helper/data.ts";
import {dayOf} from "../helper/day.ts";
import {schemeOf} from "../helper/small-book.ts";

interface Diamond extends Sourced {
  readonly firstYears: Readonly<Record<string, number>>;
  readonly secondYears: Readonly<Record<string, number>>;
  readonly months: Readonly<Record<string, number>>;
  readonly examples: readonly {readonly layout: "first" | "second"; readonly corners: string; readonly date: string}[];
}

const data = readData<Diamond>("diamond-marks");
const dash = {text: "-"};
const schemes = {
  first: loneScheme(schemeOf([{year: data.firstYears}, dash, {month: data.months}, dash, {day: "plain"}])),
  second: loneScheme(schemeOf([{day: "plain"}, dash, {year: data.secondYears}, dash, {month: data.months}])),
};
const dates = (layout: "first" | "second", corners: string) =>
  readCode(schemes[layout], corners).flatMap(({spans}) => spans.map(({from, until}) => (from === until ? printDay(from) : `${printDay(from)} to ${printDay(until)}`)));

describe("registered-design diamonds (The National Archives; published letter tables)", () => {
  test.each(data.examples)("$corners in the $layout layout is $date", ({layout, corners, date}) => {
    expect(dates(layout, corners)).toEqual([date]);
    expect(printCode(schemes[layout], dayOf(date))).toBe(corners);
  });

  test("letter X means 1842 at the top and 1868 at the right; D 1852 and 1878; B only 1858", () => {
    expect([dates("first", "X-A-1"), dates("second", "1-X-A")]).toEqual([["1842-12-01"], ["1868-12-01"]]);
    expect([dates("first", "D-A-1"), dates("second", "1-D-A")]).toEqual([["1852-12-01"], ["1878-12-01"]]);
    expect([dates("first", "B-A-1"), dates("second", "1-B-A")]).toEqual([["1858-12-01"], []]);
  });

  test("every month of 1842 to 1883 has letters of its own, which read back", () => {
    const seen = new Set<string>();
    for (let year = 1842; year <= 1883; year++) {
      const layout = year < 1868 ? "first" : "second";
      for (let m = 1; m <= 12; m++) {
        const day = dayNumber(year, m, daysIn(month(year, m)));
        const corners = printCode(schemes[layout], day)!;
        seen.add(`${layout} ${corners.replace(/\d+/, "")}`);
        expect(dates(layout, corners)).toEqual([printDay(day)]);
      }
    }
    expect(seen.size).toBe(42 * 12);
  });

  test.each(["X-T-1", "X-A-32", "X-G-30", "1-X-A", "2-X-A-1"])("%s is no diamond of the first layout", (corners) => expect(dates("first", corners)).toEqual([]));
  test.each(["30-X-G", "31-X-M", "1-B-A", "1-X-T", "X-A-1"])("%s is no diamond of the second layout", (corners) => expect(dates("second", corners)).toEqual([]));
});

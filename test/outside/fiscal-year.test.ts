// Source: 31 U.S.C. 1102 and the Congressional Budget and Impoundment Control Act of 1974: the federal fiscal year of the United States.
// July to September 1976, the transition quarter, belongs to no numbered year; the engine's own convention counts it to 1976.
import {describe, expect, test} from "vitest";
import {fiscalYearOf, monthsOfFiscalYear} from "../../engine/month/fiscal-year.ts";
import {daysIn, firstDayOf, month, monthOf, printDay} from "../../engine/month/month.ts";
import {loneScheme, printCode, readCode} from "../../engine/scheme/code.ts";
import {dayIndex, monthIndex} from "../../engine/units.ts";
import {readData, type Sourced} from "../helper/data.ts";
import {dayOf} from "../helper/day.ts";
import {schemeOf} from "../helper/small-book.ts";

interface FiscalYears extends Sourced {
  readonly days: readonly {readonly date: string; readonly year: string}[];
  readonly ranges: readonly {readonly year: string; readonly from: string; readonly until: string}[];
}

const data = readData<FiscalYears>("fiscal-years");
const numbered = (name: string) => Number(name.slice(2));
const days = (year: number) => {
  const {from, until} = monthsOfFiscalYear(year);
  return [printDay(firstDayOf(from)), printDay(dayIndex(firstDayOf(until) + daysIn(until) - 1))];
};

describe("the federal fiscal year (31 U.S.C. 1102)", () => {
  test.each(data.days)("$date falls in $year", ({date, year}) => expect(fiscalYearOf(monthOf(dayOf(date)))).toBe(numbered(year)));

  test.each(data.ranges.filter(({year}) => year !== "FY1976" && year !== "TQ1976"))("$year runs from $from to $until", ({year, from, until}) => {
    expect(days(numbered(year))).toEqual([from, until]);
  });

  test("1976 is longer by the transition quarter: from the published start of the year to the published end of the quarter", () => {
    const [year, quarter] = ["FY1976", "TQ1976"].map((name) => data.ranges.find((range) => range.year === name)!);
    expect(days(1976)).toEqual([year!.from, quarter!.until]);
  });

  test("each month of 1900 to 2050 belongs to one fiscal year, and that year's months hold it", () => {
    for (let m = month(1900, 1) as number; m <= month(2050, 12); m++) {
      const {from, until} = monthsOfFiscalYear(fiscalYearOf(monthIndex(m)));
      expect(from <= m && m <= until).toBe(true);
    }
    for (let year = 1900; year < 2050; year++) expect(monthsOfFiscalYear(year + 1).from).toBe(monthsOfFiscalYear(year).until + 1);
  });

  test.each(data.days)("a contract number of $date carries the two figures of $year and reads back", ({date, year}) => {
    const scheme = loneScheme(schemeOf([{text: "Q"}, {digits: 3}, {text: "-"}, {"fiscal year": "two figures"}, {text: "-"}, {letters: 1}]));
    const code = printCode(scheme, dayOf(date))!;
    expect(code).toBe(`Q111-${year.slice(4)}-A`);
    const spans = readCode(scheme, code).flatMap((reading) => reading.spans);
    expect(spans.filter(({from, until}) => from <= dayOf(date) && dayOf(date) <= until)).toHaveLength(1);
  });
});

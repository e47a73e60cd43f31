// Source: United States Patent and Trademark Office, first number of each year, and the published days of single patents.
import {describe, expect, test} from "vitest";
import {issueMonth} from "../../engine/mark/serial.ts";
import {month, monthOf, yearOf} from "../../engine/month/month.ts";
import {monthIndex} from "../../engine/units.ts";
import {close} from "../helper/close.ts";
import {readData, type Sourced} from "../helper/data.ts";
import {dayOf} from "../helper/day.ts";

interface Patents extends Sourced {
  readonly firstNumbers: readonly {readonly year: number; readonly number: number; readonly how: string}[];
  readonly known: readonly {readonly number: number; readonly date: string}[];
}

const data = readData<Patents>("patent-numbers");
const mark = {knots: data.firstNumbers.map(({year, number}) => ({month: `${year}-01`, number, how: "read" as const}))};
const last = data.firstNumbers.at(-1)!;

describe("patent numbers (USPTO, table of issue years and patent numbers)", () => {
  test.each(data.known.filter(({number}) => number <= last.number))("number $number was issued within a month of $date", ({number, date}) => {
    const issued = issueMonth(mark, number)!;
    expect(Math.abs(Math.floor(issued) - monthOf(dayOf(date)))).toBeLessThanOrEqual(1);
  });

  test.each(data.known.filter(({number}) => number > last.number))("number $number lies beyond the table and is not read", ({number}) => {
    expect(issueMonth(mark, number)).toBeNull();
  });

  test.each(data.firstNumbers.filter(({how, year}) => how === "seen" && year > 1870))("number $number opens $year, the one before it closes the year before", ({year, number}) => {
    expect(issueMonth(mark, number)).toBe(month(year, 1));
    const before = issueMonth(mark, number - 1)!;
    expect(yearOf(monthIndex(Math.floor(before)))).toBe(year - 1);
  });

  test("the published look-ups hold: 223898 in 1880, 821393 in 1906, 3226728 in 1965, 3226729 in 1966", () => {
    const year = (number: number) => yearOf(monthIndex(Math.floor(issueMonth(mark, number)!)));
    expect([223898, 821393, 3226728, 3226729].map(year)).toEqual([1880, 1906, 1965, 1966]);
  });

  test("month to number to month comes back, in every month of the table", () => {
    for (let i = 1; i < data.firstNumbers.length; i++) {
      const [from, to] = [data.firstNumbers[i - 1]!, data.firstNumbers[i]!];
      for (let m = 0; m < 12; m++) {
        const number = from.number + ((to.number - from.number) * m) / 12;
        close(issueMonth(mark, number)!, month(from.year, 1) + m, {abs: 1e-9, because: "months, numbers of seven figures in double precision"});
      }
    }
  });

  test("numbers only grow with time", () => {
    let before = -Infinity;
    for (let number = data.firstNumbers[0]!.number; number < last.number; number += 9973) {
      const issued = issueMonth(mark, number)!;
      expect(issued).toBeGreaterThan(before);
      before = issued;
    }
  });
});

// The public rule book that comes with the tool, held against the published tables that it draws on.
import {describe, expect, test} from "vitest";
import {makeExaminer} from "../../engine/index.ts";
import {issueMonth} from "../../engine/mark/serial.ts";
import {month, monthOf, parseMonth, printDay, yearOf} from "../../engine/month/month.ts";
import {garmentSchema} from "../../engine/rule/garment.ts";
import type {ChoiceMark, SerialMark} from "../../engine/rule/schema.ts";
import {loneScheme, readCode} from "../../engine/scheme/code.ts";
import {monthIndex} from "../../engine/units.ts";
import {shippedBooks} from "../../rulebooks/load.ts";
import {readData, type Sourced} from "../helper/data.ts";
import {dayOf} from "../helper/day.ts";

const loaded = shippedBooks();
if (!loaded.books) throw new Error(JSON.stringify(loaded.problems, null, 2));
const book = loaded.books.find(({kind}) => kind === "public")!;
const examiner = makeExaminer([book], {today: month(2026, 11)});

/** Probability between two months, both included, after one mark was seen. */
const massOf = (saw: Record<string, string>, from: number, until: number): number => {
  const result = examiner.brief(garmentSchema.parse({garment: "test", saw}));
  if (!result.finding) throw new Error(JSON.stringify(result.problems));
  const {posterior, first} = result.finding;
  return posterior.reduce((sum, p, t) => (first + t >= from && first + t <= until ? sum + p : sum), 0);
};
const scheme = (id: string) => loneScheme(book.schemes[id]!);
const days = (id: string, code: string) => readCode(scheme(id), code).flatMap(({spans}) => spans.map(({from, until}) => [printDay(from), printDay(until)]));

describe("registered-design diamonds (The National Archives; published letter tables)", () => {
  interface Diamond extends Sourced {
    readonly firstYears: Readonly<Record<string, number>>;
    readonly secondYears: Readonly<Record<string, number>>;
    readonly months: Readonly<Record<string, number>>;
    readonly examples: readonly {readonly layout: "first" | "second"; readonly corners: string; readonly date: string}[];
  }
  const data = readData<Diamond>("diamond-marks");
  const layouts = {first: "uk.design.diamond.year-at-top", second: "uk.design.diamond.year-at-right"} as const;

  test.each(data.examples)("$corners was registered on $date", ({layout, corners, date}) => expect(days(layouts[layout], corners)).toEqual([[date, date]]));

  test("every letter of both tables stands in the book, and no other", () => {
    const tables = (id: string) => book.schemes[id]!.parts.flatMap((part) => ("year" in part ? [part.year] : "month" in part ? [part.month] : []));
    expect(tables(layouts.first)).toEqual([data.firstYears, data.months]);
    expect(tables(layouts.second)).toEqual([data.secondYears, data.months]);
  });

  const isDated = ({corners, date}: {corners: string; date: string}) => {
    const registered = monthOf(dayOf(date));
    expect(massOf({"uk.design.diamond.letters": corners}, registered, registered + 96)).toBeGreaterThan(0.9);
  };
  test.each(data.examples)("a garment with $corners is put at $date or up to eight years after, but for strays", isDated);
});

describe("patent numbers (USPTO, table of issue years and patent numbers)", () => {
  interface Patents extends Sourced {
    readonly firstNumbers: readonly {readonly year: number; readonly number: number; readonly how: string}[];
    readonly known: readonly {readonly number: number; readonly date: string}[];
  }
  const data = readData<Patents>("patent-numbers");
  const mark = book.marks["us.patent.number.utility"] as SerialMark;

  test("every first number of a year that was read in the table is a knot of the book", () => {
    const knots = new Map(mark.knots.map((knot) => [knot.month, knot.number]));
    const read = data.firstNumbers.filter(({how}) => how === "seen");
    expect(read.filter(({year, number}) => knots.get(`${year}-01`) !== number)).toEqual([]);
    expect(read.length).toBeGreaterThan(80);
  });

  test.each(data.known)("number $number was granted within the book's fuzz of $date", ({number, date}) => {
    const issued = issueMonth(mark, number)!;
    expect(Math.abs(issued - (monthOf(dayOf(date)) + 0.5))).toBeLessThanOrEqual(mark.fuzz);
  });

  test.each(data.known.filter(({number}) => number >= 1_000_000))("a part with number $number is no older than $date, but for strays", ({number, date}) => {
    expect(massOf({"us.patent.number.utility": String(number)}, -Infinity, monthOf(dayOf(date)) - 1 - mark.fuzz)).toBeLessThan(0.1);
  });
});

// The code goes weeks to years after the state or its name: it lies between the last usual and the last month of the name on labels.
describe("names of former countries (ISO 3166-3, withdrawal dates)", () => {
  interface Former extends Sourced {
    readonly rows: readonly {readonly code: string; readonly name: string; readonly withdrawn: string}[];
  }
  const rows = new Map(readData<Former>("former-countries").rows.map((row) => [row.code, row]));
  const line = book.marks["origin.line.country.line"] as ChoiceMark;
  const cited = Object.entries(line.values).flatMap(([value, {window, source}]) => {
    const row = source?.ref.endsWith("origin-iso-3166-3") ? rows.get(source.at ?? "") : undefined;
    return row ? [{value, window, ...row}] : [];
  });
  /** First and last month of a withdrawal: a day is its month, a year its twelve months. */
  const span = (withdrawn: string) => {
    const year = Number(withdrawn.slice(0, 4));
    const day = parseMonth(withdrawn.slice(0, 7));
    return {from: day ?? month(year, 1), until: day ?? month(year, 12)};
  };

  test("two dozen names of the book cite a withdrawn code", () => expect(cited.length).toBeGreaterThanOrEqual(20));

  test.each(cited.filter(({window}) => window.ends))("$value dies out around the withdrawal of $code, $withdrawn", ({window, withdrawn}) => {
    const [usual, last] = window.ends!.map((text) => parseMonth(text)!);
    expect(usual!).toBeLessThanOrEqual(span(withdrawn).until);
    expect(last!).toBeGreaterThanOrEqual(span(withdrawn).from);
  });

  test.each(cited.filter(({window}) => !window.ends))("$value, the name after $code, sets in before its withdrawal, $withdrawn", ({window, withdrawn}) => {
    expect(parseMonth(window.begins![0])!).toBeLessThanOrEqual(span(withdrawn).until);
  });

  test.each(cited.filter(({window}) => window.ends))("a garment from $value is put before its last month, but for strays and own `outside`", ({value, window}) => {
    const last = parseMonth(window.ends![1])!;
    expect(massOf({"origin.line.country.line": value}, last + 1, Infinity)).toBeLessThan(0.05 + (line.values[value]!.outside > 0 ? 0.2 : 0));
  });
});

describe("contract numbers (31 U.S.C. 1102: the fiscal year of the award)", () => {
  test.each([
    {code: "DSA100-67-C-2010", id: "dsa", from: "1966-07-01", until: "1967-06-30"},
    {code: "DSA100-68-C-0001", id: "dsa", from: "1967-07-01", until: "1968-06-30"},
    {code: "DLA100-85-C-0456", id: "dla", from: "1984-10-01", until: "1985-09-30"},
  ])("$code was given between $from and $until", ({code, id, from, until}) => expect(days(`us.military.contract.${id}`, code)).toEqual([[from, until]]));

  test("a fiscal year outside the office's time does not read", () => {
    expect(days("us.military.contract.dsa", "DSA100-85-C-0001")).toEqual([]);
    expect(days("us.military.contract.dla", "DLA100-67-C-0001")).toEqual([]);
  });
});

describe("stock numbers (eleven figures to thirteen on 30 September 1974)", () => {
  const form = "us.military.stock-number.form";
  test("eleven figures lie before 1977, but for strays", () => expect(massOf({[form]: "eleven-figures"}, month(1977, 1), Infinity)).toBeLessThan(0.06));
  test.each(["thirteen-figures-00", "thirteen-figures-01"])("%s lies after August 1974, but for strays", (value) => {
    expect(massOf({[form]: value}, -Infinity, month(1974, 8))).toBeLessThan(0.03);
  });
});

describe("weeks by the international standard (ISO 8601)", () => {
  interface IsoWeeks extends Sourced {
    readonly days: readonly {readonly date: string; readonly year: number; readonly week: number}[];
    readonly never: readonly string[];
  }
  const data = readData<IsoWeeks>("iso-weeks");
  test.each(data.days.filter(({year}) => year >= 1990))("$year-W$week holds $date", ({date, year, week}) => {
    const [span, ...more] = days("date.iso.calendar.year-week", `${year}-W${String(week).padStart(2, "0")}`);
    expect(more).toEqual([]);
    expect(span![0]! <= date && date <= span![1]!).toBe(true);
  });
  test.each(data.never)("%s does not read", (week) => expect(days("date.iso.calendar.year-week", week)).toEqual([]));
});

// Federal Trade Commission, releases of December 1997 and 18 September 2017: more than 100,000 and more than 140,000 entries, among them
// some 4,000 numbers of the fur series; 13670 as the first number of 1959 is from memory.
describe("registered numbers (Federal Trade Commission)", () => {
  const mark = book.marks["us.numbers.registered-numbers.rn-number"] as SerialMark;
  const year = (number: number) => yearOf(monthIndex(Math.floor(issueMonth(mark, number)!)));
  test("13670 opens 1959", () => expect(year(13670)).toBe(1959));
  test("numbers below 96,000 were out by December 1997, numbers below 136,000 by September 2017", () => {
    expect(issueMonth(mark, 96_000)!).toBeLessThan(month(1997, 12) + 1);
    expect(issueMonth(mark, 136_000)!).toBeLessThan(month(2017, 9) + 1);
  });
  test("numbers only grow, and a month's numbers lie in it", () => {
    for (const [i, knot] of mark.knots.entries()) {
      expect(issueMonth(mark, knot.number)).toBe(parseMonth(knot.month));
      if (i > 0) expect(knot.number).toBeGreaterThan(mark.knots[i - 1]!.number);
    }
  });
});

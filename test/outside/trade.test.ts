// What collectors say when they read the care label of five-pocket trousers: common practice, no source. The book of these rules,
// test/outside/trade-book.yaml, is an example of our own; the tests ask whether the engine concludes from it what a collector would.
import {fileURLToPath} from "node:url";
import {describe, expect, test} from "vitest";
import {month, printMonth} from "../../engine/month/month.ts";
import type {Finding, Reading} from "../../engine/index.ts";
import {loadBook} from "../../rulebooks/load.ts";
import {findingOf} from "../helper/small-book.ts";

const loaded = loadBook(fileURLToPath(new URL("trade-book.yaml", import.meta.url)));
if (!loaded.book) throw new Error(JSON.stringify(loaded.problems, null, 2));
const books = [loaded.book];
const practice = "common practice, no source";

const look = (saw: Record<string, unknown>, market?: string): Finding =>
  findingOf(books, {saw, from: "1960-01", until: "2026-11", maker: "five-pocket", ...(market ? {market} : {})});
const decade = ({decades}: Finding, from: number) => decades.find((d) => d.from === from)!.probability;
const year = ({years}: Finding, from: number) => years.find((y) => y.from === from)!.probability;
const massOf = ({posterior, first}: Finding, from: string, until: string) =>
  posterior.reduce((sum, p, t) => (printMonth((first + t) as typeof first) >= from && printMonth((first + t) as typeof first) <= until ? sum + p : sum), 0);
const readings = (finding: Finding): readonly Reading[] => finding.rows[0]!.readings;
const chance = (finding: Finding, is: (reading: Reading) => boolean) => readings(finding).reduce((sum, r) => (is(r) ? sum + r.probability : sum), 0);

describe(`the kind of label (${practice})`, () => {
  test.each([
    {label: "pocket-stamp", from: "1971-07", until: "1975-01"},
    {label: "plain-rectangle", from: "1974-01", until: "1986-12"},
    {label: "transitional", from: "1984-01", until: "1987-12"},
    {label: "emblem", from: "1987-01", until: "2004-12"},
    {label: "plain-again", from: "2001-01", until: "2026-11"},
    {label: "booklet", from: "2003-01", until: "2026-11"},
  ])("$label means $from to $until, but for strays", ({label, from, until}) => expect(massOf(look({label}), from, until)).toBeGreaterThan(0.95));

  test("trousers without permanent care wording are mostly older than the middle of 1972, unless the label is gone", () => {
    const bare = look({label: "none"});
    expect(bare.best.month).toBeLessThan(month(1972, 6));
    expect(massOf(bare, "1960-01", "1972-12")).toBeGreaterThan(0.5);
  });

  test("a booklet is modern: no date code of it is read before 2000", () => {
    const modern = look({label: "booklet", rows: "0905 4170"});
    expect(massOf(modern, "2003-01", "2026-11")).toBeGreaterThan(0.98);
    expect(readings(modern).every(({probability, months}) => probability < 0.01 || months.every((m) => m >= month(2000, 1)))).toBe(true);
  });
});

describe(`the date code beside the plant code (${practice})`, () => {
  test("a two-figure plant on a plain rectangular label settles the open decade: the 1970s", () => {
    // 04 cannot be a date, so that the row has one sensible order.
    const early = look({label: "plain-rectangle", rows: "35 04"});
    expect(decade(early, 1970)).toBeGreaterThan(0.95);
    expect(printMonth(early.best.month)).toBe("1975-03");
  });

  test("with a three-figure plant the same date leaves both decades open, leaning late", () => {
    const open = look({label: "plain-rectangle", rows: "35 048"});
    const [early, late] = [year(open, 1975), year(open, 1985)];
    expect(late).toBeGreaterThan(early);
    expect(late).toBeGreaterThan(0.6);
    expect(early).toBeGreaterThan(0.03);
    expect(early + late).toBeGreaterThan(0.9);
  });

  test("a date of year 8 on that label can only be 1978: 1968 and 1988 lie outside the label's time", () => {
    const settled = look({label: "plain-rectangle", rows: "3 8 21"});
    expect(printMonth(settled.best.month)).toBe("1978-03");
    for (const other of [1968, 1988]) expect(year(settled, other)).toBeLessThan(0.005);
  });

  test("figures without a sensible month are never the date", () => {
    for (const rows of ["13 9 21", "19 8 21", "00 5 21"]) {
      for (const {date} of readings(look({label: "plain-rectangle", rows}))) expect(date ?? "").not.toMatch(/month (0|13|19)\b/);
    }
  });

  test("a code that falls outside its label's time is never the date", () => {
    const late = look({label: "plain-rectangle", rows: "0996 214"});
    expect(chance(late, ({scheme}) => scheme === "month-and-two-figure-year")).toBe(0);
    expect(year(late, 1996)).toBeLessThan(0.005);
    expect(printMonth(look({label: "emblem", rows: "0996 214"}).best.month)).toBe("1996-09");
  });

  test("a code that no scheme can date is named, with the reason", () => {
    const {unread} = look({label: "emblem", rows: "0000"});
    expect(unread).toHaveLength(1);
    expect(unread[0]!.text).toBe("0000");
    expect(unread[0]!.why).toMatch(/no month 0|no week 0/);
  });

  test("a week code of the early 1990s reads only on goods for Europe", () => {
    const rows = "3692 214";
    const [europe, home] = [look({label: "emblem", rows}, "europe"), look({label: "emblem", rows}, "us")];
    expect(chance(europe, ({scheme}) => scheme === "europe-week")).toBeGreaterThan(0.8);
    expect(massOf(europe, "1992-08", "1992-09")).toBeGreaterThan(0.8);
    expect(chance(home, ({date}) => date?.startsWith("week 36") === true)).toBe(0);
    expect(massOf(home, "1992-08", "1992-09")).toBeLessThan(0.1);
  });

  test("a week code of today reads anywhere", () => expect(massOf(look({label: "plain-again", rows: "3615 4170"}, "us"), "2015-08", "2015-09")).toBeGreaterThan(0.8));
});

describe(`a bunched-up row and the stamp on the button (${practice})`, () => {
  const row = {label: "plain-rectangle", rows: "3821"};
  const asMarch = (reading: Reading) => reading.plant === "21" && reading.date?.startsWith("month 3 ") === true;
  const asFebruary = (reading: Reading) => reading.plant === "38" && reading.date?.startsWith("month 2 ") === true;

  test("month 3, year 8, plant 21 competes with plant 38, month 2, year 1", () => {
    const open = look(row);
    for (const is of [asMarch, asFebruary]) expect(chance(open, is)).toBeGreaterThan(0.05);
  });

  test("the first thing to look at is the back of the top button", () => {
    const [first] = look(row).next;
    expect(first!.id).toBe("button-stamp");
    expect(first!.bits).toBeGreaterThan(0.2);
  });

  test("a button with 21 settles it for March 1978", () => {
    const settled = look({...row, "button-stamp": "21"});
    expect(chance(settled, asMarch)).toBeGreaterThan(0.97);
    expect(printMonth(settled.best.month)).toBe("1978-03");
    expect(settled.best.probability).toBeGreaterThan(0.9);
  });

  test("a button with 38 settles it for February 1981", () => {
    const settled = look({...row, "button-stamp": "38"});
    expect(chance(settled, asFebruary)).toBeGreaterThan(0.9);
    expect(printMonth(settled.best.month)).toBe("1981-02");
  });

  test("a button with another number was probably replaced, and the row stays as open as it was", () => {
    const [before, after] = [look(row), look({...row, "button-stamp": "64"})];
    expect(after.odd.map(({id}) => id)).toContain("buttons");
    expect(chance(after, asMarch)).toBeGreaterThan(0.5 * chance(before, asMarch));
  });
});

describe(`lot and fabric (${practice})`, () => {
  const is = ({lot, fabric}: Reading) => lot === "502" && fabric === "0217";
  test("three and four figures joined by a dash", () => expect(chance(look({label: "emblem", rows: "502-0217"}), is)).toBeGreaterThan(0.9));
  test("two extra figures before the lot are not part of it", () => expect(chance(look({label: "emblem", rows: "04502-0217"}), is)).toBeGreaterThan(0.8));
});

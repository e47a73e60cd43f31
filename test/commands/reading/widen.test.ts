// Rows decoded together with the row grammar.
import {describe, expect, it} from "vitest";
import {propose, widen} from "../../../commands/reading/widen.ts";
import {fieldPrint} from "../../../commands/reading/widen/field-texts.ts";
import {joinRows} from "../../../commands/reading/join-rows.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";
import {madeRow} from "./made-row.ts";

const marrowfield = shippedBooks().books!.find(({book}) => book === "marrowfield")!;
const texts = (best: string, kinds?: string[]) => propose(madeRow({[best]: 0.5}).row, [marrowfield], kinds).map(({text}) => text);

describe("the row grammar", () => {
  it("proposes dates, plants, lots and fabrics of the label kind near what was read", () => {
    expect(texts("3 B 21", ["green-satin"])).toContain("3 8 21");
    expect(texts("412-031B", ["green-satin"])[0]).toBe("412-0318");
    expect(texts("LOT 91O4", ["contract-tape"])).toContain("LOT 9104");
  });
  it("carries both spacings of a date", () => {
    const both = texts("38 21", ["green-satin"]);
    expect(both).toContain("38 21");
    expect(both).toContain("3 8 21");
  });
  it("prints every month of a scheme, with its gap and without it, and none that is none", () => {
    const {texts: dates} = fieldPrint(marrowfield, "date", ["month-and-year-figure"]);
    expect(new Set(dates.map(({text}) => text))).toEqual(new Set(Array.from({length: 12}, (_, m) => Array.from({length: 10}, (_, y) => [`${m + 1} ${y}`, `${m + 1}${y}`])).flat(2)));
  });
  it("prints the weeks that ISO 8601 gives a year and no others", () => {
    const {texts: dates} = fieldPrint(marrowfield, "date", ["week-and-two-figure-year"]);
    const printed = new Set(dates.map(({text}) => text));
    // Years of 53 weeks. Source: ISO 8601; 1998, 2004 and 2009 have them, 1999 has not (from memory).
    expect(["5398", "5304", "5309"].every((text) => printed.has(text))).toBe(true);
    expect(["5399", "5400", "0098", "5397"].some((text) => printed.has(text))).toBe(false);
  });
  it("proposes extra figures before a lot where the book knows them", () => {
    expect(texts("78-012", ["ink-stamp"])).not.toHaveLength(0);
    expect(texts("55412", ["ink-stamp"])).toContain("55412");
  });
  it("leaves words, single characters and endless rows alone", () => {
    expect(texts("MACHINE WASH WARM")).toEqual([]);
    expect(texts("3")).toEqual([]);
    expect(texts("1".repeat(50))).toEqual([]);
  });
  it("gives no text twice and no two blanks in a row", () => {
    const all = texts("214 1 5 9");
    expect(new Set(all).size).toBe(all.length);
    expect(all.some((text) => text.includes("  "))).toBe(false);
  });
});

describe("a widened row", () => {
  it("holds what the label can print with the reader's exact chance, and less is left for none of these", () => {
    const {row, score} = madeRow({"412-031B": 0.3, "412-03IB": 0.1, "412-0318": 0.02});
    const listed = {...row, strings: row.strings.slice(0, 2), mass: 0.4, none: 0.6};
    const wide = widen(listed, score, [marrowfield], {kinds: ["green-satin"]});
    expect(wide.strings.find(({text}) => text === "412-0318")?.p).toBe(0.02);
    expect(wide.mass).toBeCloseTo(0.42, 12);
    expect(wide.none).toBeCloseTo(0.58, 12);
    expect(wide.best).toBe("412-031B");
  });
  it("asks the reader no more often than it was told", () => {
    let asked = 0;
    const {row} = madeRow({"3 8 21": 0.5});
    widen(row, () => (asked++, 0), [marrowfield], {mostAsked: 25});
    expect(asked).toBe(25);
  });
  it("stays as it is without a book, and without a label in the book", () => {
    const {row, score} = madeRow({"412-0318": 0.9});
    expect(widen(row, score, [])).toBe(row);
    const {labels: _, ...bare} = marrowfield;
    expect(widen(row, score, [bare as typeof marrowfield])).toBe(row);
  });
  it("keeps what a label can print although sixty readings that no label prints are likelier", () => {
    const nonsense = Object.fromEntries(Array.from({length: 60}, (_, i) => [`4I2-0${String.fromCharCode(65 + (i % 26))}${Math.floor(i / 26)}B`, 0.01]));
    const {row, score} = madeRow({"412-031B": 0.02, ...nonsense, "412-0318": 0.0005});
    const wide = widen({...row, strings: row.strings.slice(0, 60)}, score, [marrowfield], {kinds: ["green-satin"]});
    expect(wide.strings.length).toBeLessThanOrEqual(60);
    expect(wide.strings.map(({text}) => text)).toContain("412-0318");
  });
});

describe("pieces of one line", () => {
  it("become one row, whose text is as likely as its halves", () => {
    const [a, b] = [madeRow({"4783": 0.8, "4703": 0.1}), madeRow({"662": 0.9}, 48)];
    const [whole, ...others] = joinRows([a, b]);
    expect(others).toEqual([]);
    expect(whole!.row.best).toBe("4783 662");
    expect(whole!.score("4783 662")).toBeCloseTo(0.85 * 0.8 * 0.9, 12);
    expect(whole!.score("4783662")).toBeCloseTo(0.15 * 0.8 * 0.9, 12);
    expect(whole!.row.strings[0]!.p).toBeCloseTo(0.85 * 0.8 * 0.9, 12);
    expect(whole!.row.quad[1]).toEqual(b.row.quad[1]);
  });
  it("stay apart when they stand under each other or far from each other", () => {
    const under = madeRow({"662": 0.9});
    const lower = {...under, row: {...under.row, quad: under.row.quad.map(({x, y}) => ({x, y: y + 30}))}};
    expect(joinRows([madeRow({"4783": 0.8}), lower])).toHaveLength(2);
    expect(joinRows([madeRow({"4783": 0.8}), madeRow({"662": 0.9}, 140)])).toHaveLength(2);
  });
  it("keep the order of the rows", () => {
    const below = madeRow({"100": 1});
    const rows = [madeRow({"21": 1}), {...below, row: {...below.row, quad: below.row.quad.map(({x, y}) => ({x: x - 5, y: y + 40}))}}];
    expect(joinRows(rows)).toEqual(rows);
  });
});

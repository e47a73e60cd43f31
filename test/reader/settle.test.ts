import {expect, test} from "vitest";
import type {ReadRow} from "../../reader/model.ts";
import {rowSeen} from "../../reader/row-seen.ts";
import {settle} from "../../reader/settle.ts";

const quad = [{x: 0, y: 0}, {x: 90, y: 0}, {x: 90, y: 20}, {x: 0, y: 20}];
const row: ReadRow = {
  quad,
  best: "0886",
  places: [[{character: "0", p: 0.95}, {character: "6", p: 0.05}], [{character: "8", p: 0.6}, {character: "3", p: 0.4}], [{character: "8", p: 0.9}, {character: "3", p: 0.1}], [{character: "6", p: 0.99}]],
  strings: [{text: "0886", p: 0.5}, {text: "0386", p: 0.3}, {text: "08 86", p: 0.08}, {text: "886", p: 0.05}],
  none: 0.07,
  mass: 0.95,
};
const nothing = {text: null, places: {}, left: false};

test("nothing settled leaves the row as it was", () => {
  expect(settle(row, null)).toBe(row);
  expect(settle(row, nothing)).toBe(row);
});

test("a settled place throws out the readings that disagree and raises the rest", () => {
  const now = settle(row, {...nothing, places: {1: "3"}});
  expect(now.best).toBe("0386");
  expect(now.strings[0]!.p).toBeGreaterThan(0.5);
  expect(now.strings.every(({text}) => !text.startsWith("088"))).toBe(true);
  expect(now.places[1]).toEqual([{character: "3", p: 1}]);
  expect(now.none).toBeLessThan(row.none);
});

test("settling the likeliest character again makes it surer, and keeps both spacings in proportion", () => {
  const now = settle(row, {...nothing, places: {1: "8"}});
  const p = (text: string) => now.strings.find((one) => one.text === text)?.p ?? 0;
  expect(p("0886")).toBeGreaterThan(0.5);
  expect(p("08 86") / p("0886")).toBeCloseTo(0.08 / 0.5, 6);
});

test("a character that the reader never thought of is put in where the owner sees it", () => {
  const now = settle(row, {...nothing, places: {3: "9"}});
  expect(now.best).toBe("0889");
  expect(now.strings.map(({text}) => text)).toContain("0389");
});

test("a place where nothing stands is taken out of the readings", () => {
  expect(settle(row, {...nothing, places: {0: ""}}).best).toBe("886");
});

test("whatever is settled, weights are chances that sum to 1 and places keep their number", () => {
  for (const places of [{0: "7"}, {1: "3", 2: "3"}, {0: "", 3: ""}, {0: "0", 1: "8", 2: "8", 3: "6"}, {9: "1"}] as Record<string, string>[]) {
    const now = settle(row, {...nothing, places});
    expect(now.strings.reduce((sum, {p}) => sum + p, now.none)).toBeCloseTo(1, 9);
    expect(now.places).toHaveLength(4);
    expect(now.strings.every(({p}) => p >= 0 && p <= 1)).toBe(true);
  }
});

test("with every place settled the row is that text, almost surely", () => {
  const now = settle(row, {...nothing, places: {0: "0", 1: "3", 2: "3", 3: "6"}});
  expect(now.best).toBe("0336");
  expect(now.none).toBeLessThan(0.08);
});

test("a row typed by the owner is certain and goes on as typed, choices and all", () => {
  expect(settle(row, {...nothing, text: "0386"}).strings).toEqual([{text: "0386", p: 1}]);
  expect(rowSeen(row, {...nothing, text: "0(3/8)86"}, "back")).toEqual({text: "0(3/8)86", at: "back"});
});

test("for the engine a row is its readings with weights; a row left out, or with nothing read, is none", () => {
  expect(rowSeen(row, null)).toEqual({readings: row.strings.map(({text, p}) => ({text, weight: p})), none: 0.07});
  expect(rowSeen(row, {...nothing, left: true})).toBeNull();
  expect(rowSeen({...row, strings: [], best: "", places: [], none: 1}, null)).toBeNull();
  expect(rowSeen({...row, strings: [{text: "", p: 0.9}, {text: "7", p: 0.1}], none: 0}, null)).toEqual({readings: [{text: "7", weight: 0.1}], none: 0.9});
});

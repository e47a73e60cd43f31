// Comparing editions: every change in a sentence, and undone by looking from the other side.
import {readFileSync} from "node:fs";
import {expect, test} from "vitest";
import type {Book} from "../../engine/rule/schema.ts";
import {compareBooks, printChanges} from "../../rulebooks/compare.ts";
import {validateBook} from "../../rulebooks/validate.ts";

const text = readFileSync(new URL("../bad/none.yaml", import.meta.url), "utf8");
const bookOf = (written: string): Book => {
  const {book, problems} = validateBook(written, "book.yaml");
  expect(problems).toBeUndefined();
  return book!;
};
const edited = (...edits: [string, string][]) => bookOf(edits.reduce((written, [from, to]) => written.replace(from, to), text));
const before = bookOf(text);

test("an edition does not differ from itself", () => {
  expect(compareBooks(before, structuredClone(before))).toEqual([]);
  expect(printChanges([])).toEqual(["no difference"]);
});

test.each<[string, [string, string][], string]>([
  ["a window", [["ends: [1980-01, 1982-01]", "ends: [1981-01, 1983-01]"]], "~ window of brass of zip ends 1980-01..1982-01 → 1981-01..1983-01 (marks.zip.values.brass.window.ends)"],
  ["an end that is now open", [["until: 1999-12", "until: null"]], "- until of covers 1999-12 → open (covers.until)"],
  ["a share", [["inside: 0.9", "inside: 0.8"]], "~ inside of symbol 0.9 → 0.8 (marks.symbol.inside)"],
  ["a weight", [["us: 3", "us: 4"]], "~ market us 3 → 4 (markets.us)"],
  ["a new plant", [['    "04"', '    "05": { name: New Weir, window: {} }\n    "04"']], "+ plant 05 added: New Weir (plants.codes.05)"],
  ["a value gone", [["      brass: { name: brass teeth, window: { ends: [1980-01, 1982-01] } }\n", ""]], "- value brass of zip removed: brass teeth (marks.zip.values.brass)"],
  ["a number of a serial", [["number: 900", "number: 950"]], "~ number of 1960-01 of number 900 → 950 (marks.number.knots.1960-01.number)"],
  ["a part of a scheme", [["{ year: two figures }", "{ year: last figure }"], ["0368", "038"]], "~ year of no. 2 of parts of month-year two figures → last figure (schemes.month-year.parts #2.year)"],
  ["a width", [['"2": 1 }', '"2": 0.9 }']], "~ 2 of shares of no. 1 of widths of plants 1 → 0.9 (plants.widths #1.shares.2)"],
  ["new wording", [["Find the sewn-in label.", "Find the label."]], "~ look of care-label reworded (places.care-label.look)"],
])("%s is told in a sentence with its path", (_, edits, sentence) => {
  expect(printChanges(compareBooks(before, edited(...edits)))).toContain(sentence);
});

test("looking from the other side, what came has gone", () => {
  const after = edited(["us: 3", "us: 3, japan: 2"], ["ends: [1980-01, 1982-01]", "ends: [1981-01, 1983-01]"], ["    inside: 0.9\n", "    inside: 0.9\n    caution: Often faked.\n"]);
  const opposite = {added: "removed", removed: "added", changed: "changed"} as const;
  const turned = compareBooks(after, before).map(({kind, path, before: was, after: is}) => ({kind: opposite[kind], path, before: is, after: was}));
  const straight = compareBooks(before, after).map(({kind, path, before: was, after: is}) => ({kind, path, before: was, after: is}));
  const sorted = (list: typeof straight) => list.toSorted((a, b) => (a.path.join() < b.path.join() ? -1 : 1));
  expect(sorted(turned)).toEqual(sorted(straight));
  expect(straight).toHaveLength(3);
});

// Rows of which several whole readings are possible: probability is linear in them, so the sum over them can be checked one by one.
import {expect, test} from "vitest";
import {makeExaminer, month, type Garment, type RowText} from "../../../engine/index.ts";
import {garmentSchema} from "../../../engine/rule/garment.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";
import {allClose} from "../../helper/close.ts";

const examiner = makeExaminer(shippedBooks().books!, {today: month(2026, 6)});
const garmentOf = (rows: readonly unknown[], saw: object = {}, maker: unknown = "marrowfield"): Garment => garmentSchema.parse({garment: "1", maker, saw: {...saw, rows}});

/** The joint over the months, maker by maker in one list. */
function jointOf(garment: Garment): number[] {
  const {finding, problems} = examiner.stages(garment);
  if (!finding) throw new Error(problems[0]!.what);
  return finding.evaluations.flatMap(({joint}) => [...joint]);
}

const said = [
  {text: "3 8 21", weight: 0.7},
  {text: "38 21", weight: 0.2},
  {text: "3 3 21", weight: 0.08},
  {text: "3 8 2", weight: 0.02},
];
/** One version alone: what reads only so. */
const only = (text: string): RowText => ({readings: [{text, weight: 1}], none: 0});
/** docs/model.md, section 4: a reading counts by its weight and by 10 a character. */
const counted = said.map(({text, weight}) => weight * 10 ** text.replaceAll(" ", "").length);
const all = counted.reduce((sum, weight) => sum + weight, 0);
const summed = (make: (row: RowText) => Garment): number[] => {
  const parts = said.map(({text}, i) => jointOf(make(only(text))).map((p) => (p * counted[i]!) / all));
  return parts[0]!.map((_, t) => parts.reduce((sum, part) => sum + part[t]!, 0));
};
/** Arrangements below a part of the best are left out, at other depths for other rows. */
const trifles = (joint: readonly number[]) => ({abs: Math.max(...joint) * 1e-9, because: "arrangements of rows that hold next to nothing are left out"});

// Law: P(rows) = sum over the readings of their weight x P(rows with that reading), whatever else was seen.
test.each([
  ["alone on the label", [], {}, "marrowfield"],
  ["beside another row", ["412-0318"], {}, "marrowfield"],
  ["beside a button that repeats the plant", ["412-0318"], {"button-stamp": "21"}, "marrowfield"],
  ["with two possible makers", ["412-0318"], {}, ["marrowfield", "hollin-and-thrale", "unlisted"]],
] as const)("a row with several readings weighs what they weigh together: %s", (_, others, saw, maker) => {
  const make = (row: RowText) => garmentOf([...others, row], saw, maker);
  const together = jointOf(make({readings: said, none: 0}));
  const expected = summed(make);
  allClose(together, expected, trifles(expected));
});

test("weights count by their ratios, and their order does not matter", () => {
  const plain = jointOf(garmentOf([{readings: said, none: 0.1}]));
  const other = jointOf(garmentOf([{readings: [...said].reverse().map(({text, weight}) => ({text, weight: weight * 40})), none: 4}]));
  allClose(other, plain, trifles(plain));
});

test("weights of any size count", () => {
  const long = "3 8 21 ".repeat(6);
  for (const [weight, none] of [[1e-300, 1e300], [1e300, 0], [1e-300, 1e-300]]) {
    const joint = jointOf(garmentOf([{readings: [{text: "3 8 21", weight}, {text: long, weight}], none}]));
    expect(joint.every((p) => p >= 0 && Number.isFinite(p)) && joint.some((p) => p > 0)).toBe(true);
  }
});

test("what is none of the readings is a row of that many unreadable characters", () => {
  const none = jointOf(garmentOf([{readings: [{text: "3 8 21", weight: 1e-12}], none: 1}]));
  const worn = jointOf(garmentOf(["????"]));
  allClose(none, worn, trifles(worn));
});

test("a reading is told with the row as it takes it, and its fields count those characters", () => {
  const {finding} = examiner.examine(garmentOf(["412-0318", {readings: [{text: "3 8 21", weight: 0.6}, {text: "13 8 21", weight: 0.4}], none: 0}]));
  const readings = finding!.rows[1]!.readings;
  expect(new Set(readings.map(({row}) => row.text))).toContain("3 8 21");
  for (const {row, brackets} of readings) for (const {until} of brackets) expect(until).toBeLessThanOrEqual(row.cells.length);
});

test("a reading longer than any row says nothing beside shorter ones, and is a problem alone", () => {
  const long = {text: "8".repeat(41), weight: 1};
  const joint = jointOf(garmentOf([{readings: [{text: "3 8 21", weight: 1}, long], none: 0}]));
  expect(joint).toEqual(jointOf(garmentOf([only("3 8 21")])));
  expect(examiner.examine(garmentOf([{readings: [long], none: 0}])).problems![0]!.what).toContain("longer than any");
});

test.each([
  [[{text: "3 8", weight: 0}], "weight"],
  [[{text: "3 (", weight: 1}], "choice"],
])("readings that cannot be weighed are a problem: %j", (readings, word) => {
  const {problems} = examiner.examine(garmentOf([{readings, none: 0}]));
  expect(problems![0]!.what).toContain(word);
  expect(problems![0]!.at).toBe("saw.rows[0]");
});

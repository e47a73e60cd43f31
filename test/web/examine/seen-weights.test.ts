// What was seen is written no more elaborately than it needs to be, and read back the same.
import {expect, test} from "vitest";
import {garmentSchema} from "../../../engine/rule/garment.ts";
import {averageOf, weightsOf, writtenOf} from "../../../web/examine/seen-weights.ts";

test.each([
  ["one value", [["green", 3]], "green"],
  ["two alike", [["green", 2], ["blue", 2]], ["green", "blue"]],
  ["rather one than the other", [["green", 3], ["blue", 1]], {either: {green: 75, blue: 25}}],
  ["nothing", [], undefined],
] as const)("%s", (_, weights, written) => expect(writtenOf(weights)).toEqual(written));

test("weights survive being written and read, in parts of a hundred", () => {
  const weights = [["green", 0.7], ["blue", 0.2], ["grey", 0.1]] as const;
  expect(weightsOf(writtenOf(weights))).toEqual([["green", 70], ["blue", 20], ["grey", 10]]);
});

test("what is written is a garment that the engine takes", () => {
  for (const written of [writtenOf([["a", 1]]), writtenOf([["a", 1], ["b", 1]]), writtenOf([["a", 2], ["b", 1]])]) {
    expect(garmentSchema.safeParse({garment: "1", saw: {label: written}}).success).toBe(true);
  }
});

test("one more value is as likely as the others on average", () => {
  expect(averageOf([])).toBe(1);
  expect(averageOf([["a", 30], ["b", 10]])).toBe(20);
});

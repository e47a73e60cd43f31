// Source: check entry E05 of the project's outside values: rounding by ASTM E29 and ISO 80000-1 annex B (rules from memory, numbers recomputed in Python's decimal).
import {expect, test} from "vitest";
import {plus, ratio, ratioOf, roundTo, times, toNumber} from "../../state/ratio.ts";

const one = ratio(1n);

test("halves go to the even number, or away from 0", () => {
  expect([0.5, 1.5, 2.5, -2.5].map((value) => toNumber(roundTo(ratioOf(value), one, "even")))).toEqual([0, 2, 2, -2]);
  expect([0.5, 1.5, 2.5, -2.5].map((value) => toNumber(roundTo(ratioOf(value), one, "away")))).toEqual([1, 2, 3, -3]);
});

test("2.675 is what is written, not what a binary number makes of it", () => {
  expect(toNumber(roundTo(ratioOf(2.675), ratio(1n, 100n), "even"))).toBe(2.68);
});

test("steps of half an inch and half a centimetre", () => {
  expect(toNumber(roundTo(ratioOf(29.37), ratio(1n, 2n), "away"))).toBe(29.5);
  expect(toNumber(roundTo(ratioOf(74.93), ratio(1n, 2n), "away"))).toBe(75);
});

test("thirds added three times are exactly one", () => {
  const third = ratio(1n, 3n);
  expect(plus(plus(third, third), third)).toEqual(one);
  expect(times(third, ratio(3n))).toEqual(one);
});

test("numbers too small or too large for plain digits are read, and none are made of what is no number", () => {
  expect(toNumber(ratioOf(1e-9))).toBe(1e-9);
  expect(toNumber(ratioOf(1e21))).toBe(1e21);
  expect(() => ratioOf(Number.NaN)).toThrow(RangeError);
  expect(() => ratio(1n, 0n)).toThrow(RangeError);
});

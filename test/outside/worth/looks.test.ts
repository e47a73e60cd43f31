// What an observation is worth. Source: H. Raiffa, Decision Analysis, 1968, the oil wildcatter with seismic soundings; from memory, recomputed by hand below.
import {expect, test} from "vitest";
import {worthOfKnowing, worthOfLooking} from "../../../worth/offer/looks.ts";
import {close} from "../../helper/close.ts";

/** Dry, wet, soaking; drilling costs 70,000 and brings nothing, 120,000 or 270,000. */
const chances = [0.5, 0.3, 0.2];
const earns = [-70_000, 50_000, 200_000];
/** By what the soundings show (no structure, open, closed): chance in each state. */
const soundings = [[0.6, 0.3, 0.1], [0.3, 0.4, 0.4], [0.1, 0.3, 0.5]];

test("the soundings are worth 12,500 and certainty 35,000, as in the book", () => {
  const outcomes = soundings.map((given) => {
    const joint = given.map((p, s) => p * chances[s]!);
    const chance = joint.reduce((sum, p) => sum + p, 0);
    return {chance, states: joint.map((p) => p / chance)};
  });
  const {worth, turns} = worthOfLooking({chances, earns}, outcomes);
  close(worth, 12_500, {rel: 1e-12});
  // Only "no structure", 41 in 100, leads to not drilling.
  close(turns, 0.41, {rel: 1e-12});
  close(worthOfKnowing({chances, earns}), 35_000, {rel: 1e-12});
});

test("a look that cannot turn the decision is worth nothing, and none is worth more than knowing", () => {
  const sure = {chances, earns: [10, 20, 30]};
  expect(worthOfLooking(sure, [{chance: 0.5, states: [1, 0, 0]}, {chance: 0.5, states: [0, 0.6, 0.4]}])).toEqual({worth: 0, turns: 0});
  expect(worthOfKnowing(sure)).toBe(0);
});

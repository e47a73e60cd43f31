// Any bytes end in an answer or in a list of problems: 2,000 spoiled inputs, and 100,000 with TICKING_LONG=1.
// An input that fails is told by way in, seed and number; `node scripts/run.mjs test/fuzz/show-input.ts garment 1 360` writes it out.
import {expect, test} from "vitest";
import type {Target} from "./targets.ts";
import {watchInputs} from "./watch.ts";

const long = process.env.TICKING_LONG === "1";
const inputs = long ? 100_000 : 2_000;
const seed = Number(process.env.TICKING_SEED ?? 1);

const parts: readonly (readonly [Target, number])[] = [["garment", 0.35], ["table", 0.25], ["list", 0.25], ["book", 0.15]];

test.each(parts)("any bytes as a %s end in an answer or in problems", {timeout: long ? 6 * 3600_000 : 600_000}, async (target, part) => {
  const {outcomes, slowest, failures} = await watchInputs(target, seed, Math.round(inputs * part));
  console.log(`${target}: ${JSON.stringify(outcomes)}, slowest ${Math.round(slowest.ms)} ms (number ${slowest.number})`);
  expect(failures).toEqual([]);
});

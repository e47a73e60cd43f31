// Ranges from held-out sales. Sources: Vovk, Gammerman, Shafer 2005; Lei and others 2018 (the rank); Tibshirani and others 2019 (weights).
import {expect, test} from "vitest";
import {conformalBound} from "../../../worth/num/conformal.ts";
import {readData, type Sourced} from "../../helper/data.ts";
import {seeded} from "../../simulate/random.ts";

interface Ranks extends Sourced {
  readonly cases: readonly (readonly [string, number])[];
  readonly residuals: readonly number[];
  readonly halfWidths: Readonly<Record<string, number>>;
  readonly infinite: readonly string[];
}

const data = readData<Ranks>("held-out-ranks");
const parse = (text: string) => /n=(\d+),alpha=([\d.]+)/.exec(text)!.slice(1).map(Number) as [number, number];

/** The scores 1 to n: the bound is its own rank. */
const rankOf = (n: number, share: number) => conformalBound(Float64Array.from({length: n}, (_, i) => i + 1), new Float64Array(n).fill(1), 1, share);

test("the rank is that of the rule, not one too high from rounding", () => {
  for (const [text, rank] of data.cases) {
    const [n, alpha] = parse(text);
    expect(rankOf(n, 1 - alpha), text).toBe(rank);
  }
  for (const text of data.infinite) {
    const [n, alpha] = parse(text);
    expect(rankOf(n, 1 - alpha), text).toBe(Infinity);
  }
});

test("with equal weights the bound is the score of that rank, and infinite when the scores are too few", () => {
  const scores = data.residuals.map(Math.abs).sort((a, b) => a - b);
  const ones = scores.map(() => 1);
  for (const [alpha, width] of Object.entries(data.halfWidths)) expect(conformalBound(scores, ones, 1, 1 - Number(alpha))).toBe(width);
  expect(conformalBound(scores.slice(0, 8), ones.slice(0, 8), 1, 0.9)).toBe(Infinity);
  expect(conformalBound(scores.slice(0, 9), ones.slice(0, 9), 1, 0.9)).toBe(scores[8]);
});

// The published mean coverage is k / (n + 1): 18 / 20 for 19 scores at nine in ten.
test("over many sets of held-out scores the bound holds as often as published", () => {
  const {next} = seeded(11);
  let held = 0;
  const sets = 20_000;
  for (let set = 0; set < sets; set++) {
    const scores = Float64Array.from({length: 19}, next).sort();
    if (next() <= conformalBound(scores, new Float64Array(19).fill(1), 1, 0.9)) held++;
  }
  // Standard error 0.002.
  expect(Math.abs(held / sets - 0.9)).toBeLessThan(0.008);
});

// Whether things said with a probability come true as often: by decile, and a histogram that must be flat.
import type {Said} from "./score.ts";

export interface Bin {
  /** Lower end of the decile. */
  readonly from: number;
  readonly count: number;
  /** What was said, on average. */
  readonly said: number;
  /** The share that was so. */
  readonly so: number;
  /** Standard errors between the two, the spread as the probabilities themselves say it. */
  readonly errors: number;
}

/**
 * The deciles of probability in which anything was said.
 * @source a reliability table: Murphy and Winkler 1977, Applied Statistics 26:41-47; the spread as in Spiegelhalter 1986, Statistics in Medicine 5:421-433; both from memory
 */
export function byDecile(all: readonly Said[]): Bin[] {
  return Array.from({length: 10}, (_, d) => binOf(all.filter(({probability}) => Math.min(9, Math.floor(probability * 10)) === d), d / 10)).filter(({count}) => count > 0);
}

/** All together: what was said on average, and how much of it was so. */
export function binOf(said: readonly Said[], from = 0): Bin {
  const count = said.length;
  const expected = said.reduce((sum, {probability}) => sum + probability, 0);
  const found = said.reduce((sum, {so}) => sum + Number(so), 0);
  const spread = Math.sqrt(said.reduce((sum, {probability: p}) => sum + p * (1 - p), 0));
  return {from, count, said: expected / count, so: found / count, errors: found === expected ? 0 : (found - expected) / Math.max(spread, 1e-9)};
}

/** Chi-square of a histogram of numbers in [0, 1) against a flat one. */
export function flatness(values: readonly number[], bins = 20): number {
  const counts = new Array<number>(bins).fill(0);
  for (const value of values) counts[Math.min(bins - 1, Math.max(0, Math.floor(value * bins)))]!++;
  const each = values.length / bins;
  return counts.reduce((sum, count) => sum + (count - each) ** 2 / each, 0);
}

// The spread of a sum of prices, by seeded draws.
import type {PriceRange} from "../answer.ts";
import {quantile} from "../num/hyndman-fan.ts";

/** One garment that was looked at: equally likely prices, and whether it stands for those that were not. */
export interface Drawn {
  readonly steps: readonly number[];
  readonly sampled: boolean;
}

const rounds = 4000;

/**
 * Sums one price of each garment, and of `unexamined` more.
 *
 * The unexamined are drawn as from an urn that holds the sampled garments and takes in each one drawn: what a small sample says of the rest is
 * itself unsure, and the sum of the rest spreads by that, too. One place in the urn stands for something unlike all in it.
 * @param others  equally likely prices of something unlike those drawn; without any, the urn holds the sampled garments alone
 * @source  D. Blackwell, J. B. MacQueen, "Ferguson distributions via Pólya urn schemes", Annals of Statistics 1 (1973), 353
 */
export function sumOfDraws(examined: readonly Drawn[], unexamined: number, random: () => number, others: readonly number[] = []): {range: PriceRange; below(cents: number): number} {
  const urn = examined.flatMap(({sampled}, i) => (sampled ? [i] : []));
  // Below 0 it is one of the others, counted from -1.
  const one = (i: number) => {
    if (i < 0) return others[-1 - i]!;
    const {steps} = examined[i]!;
    return steps[Math.floor(random() * steps.length)]!;
  };
  const unlike = others.length > 0 ? 1 : 0;
  const sums = new Float64Array(rounds);
  const filled = new Int32Array(urn.length + unexamined);
  for (let round = 0; round < rounds; round++) {
    let sum = 0;
    for (let i = 0; i < examined.length; i++) sum += one(i);
    filled.set(urn);
    for (let k = urn.length; k < filled.length; k++) {
      const from = Math.floor(random() * (k + unlike));
      filled[k] = from < k ? filled[from]! : -1 - Math.floor(random() * others.length);
      sum += one(filled[k]!);
    }
    sums[round] = sum;
  }
  sums.sort();
  const at = (p: number) => Math.round(quantile(sums, p));
  const ranges = [0.5, 0.8, 0.9].map((share) => ({share, low: at((1 - share) / 2), high: at((1 + share) / 2)}));
  const middle = sums.subarray(rounds / 100, rounds - rounds / 100);
  return {
    range: {typical: at(0.5), mean: Math.round(middle.reduce((all, v) => all + v, 0) / middle.length), low: ranges[1]!.low, high: ranges[1]!.high, ranges, steps: Array.from({length: 19}, (_, j) => at(0.05 * (j + 1)))},
    below: (cents) => countBelow(sums, cents) / rounds,
  };
}

function countBelow(sorted: Float64Array, value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

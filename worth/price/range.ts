// From bells to amounts: ranges that hold as often as they say, and the chance to bring at least so much.
import type {PriceRange} from "../answer.ts";
import {conformalBound} from "../num/conformal.ts";
import {below, quantileOf, type Bell} from "./bell.ts";
import {reachOf, type Check} from "./kind-model.ts";

/** Ranges that an answer names. */
const shares = [0.5, 0.8, 0.9] as const;
/** A range reaches no further than this into the ends of the bells. */
const farthest = 0.4995;

/** What sales are like when checked bells are taken at their word corrected. */
export interface Spread {
  /** The amount (in cents, not rounded) that has p below. */
  at(p: number): number;
  /** Chance to bring less than so many cents. */
  below(cents: number): number;
  /** Average of the middle 98 in 100. */
  readonly mean: number;
}

/** With fewer than three checked sales the bells are taken as they are. */
const leastChecked = 3;

export function spreadOf(bells: readonly Bell[], check: Check): Spread {
  const checked = check.scores.length >= leastChecked;
  // No weight for the one to come: a promise is kept by the ranges; this is the likeliest shape.
  const reach = (share: number) => (checked ? Math.min(farthest, conformalBound(check.scores, check.weights, 0, share)) : share / 2);
  const total = check.weights.reduce((sum, w) => sum + w, 0);
  const shareWithin = (distance: number) => {
    if (!checked) return 2 * distance;
    let sum = 0;
    let low = 0;
    for (let i = 0; i < check.scores.length; i++) {
      const share = (sum + check.weights[i]! / 2) / total;
      if (check.scores[i]! >= distance) {
        const before = i === 0 ? {score: 0, share: 0} : {score: check.scores[i - 1]!, share: low};
        return check.scores[i]! > before.score ? before.share + ((share - before.share) * (distance - before.score)) / (check.scores[i]! - before.score) : share;
      }
      low = share;
      sum += check.weights[i]!;
    }
    const last = check.scores.at(-1)!;
    return low + ((1 - low) * (distance - last)) / Math.max(1e-9, 0.5 - last);
  };
  const at = (p: number) => Math.exp(quantileOf(bells, p < 0.5 ? 0.5 - reach(1 - 2 * p) : p > 0.5 ? 0.5 + reach(2 * p - 1) : 0.5));
  let mean: number | null = null;
  return {
    at,
    below(cents) {
      if (!(cents > 0)) return 0;
      const p = below(bells, Math.log(cents));
      const share = Math.min(1, Math.max(0, shareWithin(Math.abs(p - 0.5))));
      return p < 0.5 ? 0.5 - share / 2 : 0.5 + share / 2;
    },
    get mean() {
      return (mean ??= Array.from({length: 49}, (_, j) => at(0.02 * (j + 1))).reduce((sum, v) => sum + v, 0) / 49);
    },
  };
}

/** As an answer says it, in whole cents. */
export function rangeOf(bells: readonly Bell[], check: Check): PriceRange {
  const spread = spreadOf(bells, check);
  const ranges = shares.flatMap((share) => {
    const reach = reachOf(check, share);
    return reach === Infinity ? [] : [{share, low: Math.round(Math.exp(quantileOf(bells, 0.5 - Math.min(farthest, reach)))), high: Math.round(Math.exp(quantileOf(bells, 0.5 + Math.min(farthest, reach))))}];
  });
  const steps = Array.from({length: 19}, (_, j) => Math.round(spread.at(0.05 * (j + 1))));
  const eight = ranges.find(({share}) => share === 0.8);
  return {typical: steps[9]!, mean: Math.round(spread.mean), low: eight?.low ?? steps[1]!, high: eight?.high ?? steps[17]!, ranges, steps};
}

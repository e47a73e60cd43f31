// Huber's robust regression: far-off prices are pulled in instead of pulling the fit.
import {leastSquares, residualsOf} from "./least-squares.ts";
import {weightedQuantile} from "./weighted.ts";

export interface HuberFit {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  /** Robust standard deviation: the (weighted) median size of a residual over 0.6745. */
  readonly scale: number;
  /** By row: 1 for what lies near, less for what lies far. */
  readonly pulls: Float64Array;
  readonly rounds: number;
}

export interface HuberOptions {
  /** How much each row counts; left out: all alike. */
  readonly weights?: Float64Array;
  /** By column: how far from 0 its coefficient is expected to lie (standard deviation); Infinity or left out: anywhere. */
  readonly expected?: readonly number[];
  /** Residuals further than this many scales are pulled in: 1.345 is 95 in 100 as efficient as least squares on normal data. */
  readonly cut?: number;
  /** Stops when residuals change by less than this part of their length. */
  readonly tolerance?: number;
  readonly mostRounds?: number;
}

/**
 * Fits by reweighted least squares, the scale estimated anew in each round.
 * @returns null when the columns depend on each other
 * @source  P. J. Huber, Robust Statistics, 1981; the rounds and the scale are those of rlm in R's MASS (Venables and Ripley, Modern Applied Statistics with S, 2002, 6.5)
 */
export function huberRegression(columns: readonly Float64Array[], y: Float64Array, options: HuberOptions = {}): HuberFit | null {
  const {weights, expected, cut = 1.345, tolerance = 1e-4, mostRounds = 20} = options;
  const n = y.length;
  const own = weights ?? new Float64Array(n).fill(1);
  const held = (expected ?? []).flatMap((sd, column) => (Number.isFinite(sd) ? [{column, sd}] : []));
  const longer = held.length === 0 ? columns : columns.map((column, k) => lengthened(column, held.map((h) => (h.column === k ? 1 : 0))));
  const target = held.length === 0 ? y : lengthened(y, held.map(() => 0));
  const all = lengthened(own, held.map(() => 0));
  const solve = (scale: number) => {
    held.forEach(({sd}, j) => (all[n + j] = (scale / sd) ** 2));
    return leastSquares(longer, target, all);
  };
  let fit = solve(held.length === 0 ? 1 : scaleOf(y.map((v, _, values) => v - values[0]!), own));
  if (!fit) return null;
  let residuals = residualsOf(columns, y, fit.coefficients);
  let scale = 0;
  const pulls = new Float64Array(n).fill(1);
  let rounds = 0;
  while (rounds < mostRounds) {
    rounds++;
    scale = scaleOf(residuals, own);
    if (!(scale > 0)) break;
    for (let i = 0; i < n; i++) {
      pulls[i] = Math.min(1, (cut * scale) / Math.abs(residuals[i]!));
      all[i] = own[i]! * pulls[i]!;
    }
    fit = solve(scale);
    if (!fit) return null;
    const before = residuals;
    residuals = residualsOf(columns, y, fit.coefficients);
    if (change(before, residuals) <= tolerance) break;
  }
  return {coefficients: fit.coefficients, residuals, scale, pulls, rounds};
}

function lengthened(values: Float64Array, more: readonly number[]): Float64Array {
  const longer = new Float64Array(values.length + more.length);
  longer.set(values);
  longer.set(more, values.length);
  return longer;
}

function scaleOf(residuals: Float64Array, weights: Float64Array): number {
  const order = Uint32Array.from(residuals, (_, i) => i);
  const sizes = residuals.map(Math.abs);
  order.sort((i, j) => sizes[i]! - sizes[j]!);
  return weightedQuantile(Float64Array.from(order, (i) => sizes[i]!), Float64Array.from(order, (i) => weights[i]!), 0.5) / 0.6745;
}

function change(before: Float64Array, after: Float64Array): number {
  let difference = 0;
  let length = 0;
  for (let i = 0; i < before.length; i++) {
    difference += (before[i]! - after[i]!) ** 2;
    length += before[i]! ** 2;
  }
  return Math.sqrt(difference / Math.max(1e-20, length));
}

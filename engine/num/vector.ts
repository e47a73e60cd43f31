// Small dense-vector helpers for probabilities over months.
import {bits, type Bits} from "../units.ts";

/** Sum with Neumaier's compensation, so that a thousand small months add up to 1. Source: Neumaier 1974, ZAMM 54:39-51. */
export function sum(values: ArrayLike<number>): number {
  let total = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}

/** Plain average; 0 for an empty vector. */
export function mean(values: ArrayLike<number>): number {
  return values.length === 0 ? 0 : sum(values) / values.length;
}

/** A new vector that sums to 1. A vector without mass becomes flat: no evidence is left, and the answer says so by its width. */
export function normalized(values: Float64Array): Float64Array {
  const total = sum(values);
  const result = new Float64Array(values.length);
  if (!(total > 0) || !Number.isFinite(total)) return result.fill(1 / values.length);
  for (let i = 0; i < values.length; i++) result[i] = values[i]! / total;
  return result;
}

/** Multiplies `into` by `by`, place by place. */
export function multiplyInto(into: Float64Array, by: ArrayLike<number>): void {
  for (let i = 0; i < into.length; i++) into[i]! *= by[i]!;
}

// Plain loops: a typed array's own `map` calls a closure for every month and costs several times as much.

/** A new vector: `factor` times each value, `plus` added. */
export function affine(values: Float64Array, factor: number, plus = 0): Float64Array {
  const result = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) result[i] = factor * values[i]! + plus;
  return result;
}

/** A new vector: the product of two, place by place, times a factor. */
export function times(a: Float64Array, b: Float64Array, factor = 1): Float64Array {
  const result = new Float64Array(a.length);
  for (let i = 0; i < a.length; i++) result[i] = factor * a[i]! * b[i]!;
  return result;
}

/** Adds `factor` times a vector to another. */
export function addInto(into: Float64Array, values: Float64Array, factor = 1): void {
  for (let i = 0; i < into.length; i++) into[i]! += factor * values[i]!;
}

/** Entropy of a distribution in bits; 0 log 0 is 0. */
export function entropyBits(p: ArrayLike<number>): Bits {
  let total = 0;
  for (let i = 0; i < p.length; i++) {
    const x = p[i]!;
    if (x > 0) total -= x * Math.log2(x);
  }
  return bits(Math.max(0, total));
}

/**
 * How far `p` is from `q`: Kullback-Leibler divergence in bits.
 * @edge months with p = 0 count nothing; q = 0 where p > 0 cannot occur for posteriors with stray rates, and gives Infinity
 */
export function divergenceBits(p: ArrayLike<number>, q: ArrayLike<number>): Bits {
  let total = 0;
  for (let i = 0; i < p.length; i++) {
    const x = p[i]!;
    if (x > 0) total += x * Math.log2(x / q[i]!);
  }
  return bits(Math.max(0, total));
}

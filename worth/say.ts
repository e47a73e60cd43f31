// Sentences of an answer, plain as a dealer would say them.
import type {PriceRange} from "./answer.ts";
import {digitsOf} from "./money/currencies.ts";
import {printMoney} from "./money/money.ts";

/** Two or three figures are all that a price by comparison can carry: 1,237.40 is said as 1,240. */
export function roughly(cents: number, currency: string): string {
  if (cents === 0) return printMoney(0, currency);
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.abs(cents))) - 2);
  const whole = 10 ** (digitsOf(currency) ?? 2);
  const unit = Math.abs(cents) >= 20 * whole ? Math.max(step, whole) : step;
  return printMoney(Math.round(cents / unit) * unit, currency);
}

/** "USD 220, and eight in ten between USD 110 and USD 300" */
export function sayRange(range: PriceRange, currency: string): string {
  const eight = range.ranges.find(({share}) => share === 0.8);
  const typical = roughly(range.typical, currency);
  return eight ? `${typical}, and eight in ten between ${roughly(eight.low, currency)} and ${roughly(eight.high, currency)}` : `${typical}, with too few sales to say how far it may be off`;
}

/** 0.664 is "66 in 100". */
export function sayShare(share: number): string {
  const whole = Math.round(100 * share);
  return whole === 0 ? "less than 1 in 100" : whole >= 100 ? "more than 99 in 100" : `${whole} in 100`;
}

export const sayYears = (from: number, until: number): string => (from === until ? String(from) : `${from} to ${until}`);

/** How many good comparisons: the figures that matter. */
export const sayLike = (like: number): string => (like >= 10 ? String(Math.round(like)) : String(Math.round(10 * like) / 10));

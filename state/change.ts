// How much cloth changed in the wash, as ISO 5077 and AATCC 135 count it.
import {ratio, ratioOf, roundTo, toNumber} from "./ratio.ts";

/**
 * Dimensional change in percent; shrinkage is negative. Source: ISO 5077:2007, AATCC TM135: 100 (after - before) / before.
 * @throws when there was nothing before
 * @example
 * dimensionalChange(500, 485) // -> -3
 */
export function dimensionalChange(before: number, after: number): number {
  if (!(before > 0)) throw new RangeError("nothing can change that had no length");
  return (100 * (after - before)) / before;
}

/** The length before a change: 34 left at -10 % were 37.8, not 37.4. */
export const beforeChange = (after: number, percent: number) => after / (1 + percent / 100);

/** Several washes one after the other, in percent: they multiply. */
export const changesTogether = (percents: readonly number[]) => (percents.reduce((left, percent) => left * (1 + percent / 100), 1) - 1) * 100;

/**
 * To the nearest 0.1 %, halves to the even one (AATCC TM135 reports averages so).
 * @example
 * sayChange(-3.0183727) // -> "-3.0 %"
 */
export function sayChange(percent: number): string {
  const rounded = toNumber(roundTo(ratioOf(percent), ratio(1n, 10n), "even"));
  return `${rounded > 0 ? "+" : ""}${rounded.toFixed(1)} %`;
}

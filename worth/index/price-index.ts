// What money of one month is worth in another, by a published price index.
import type {MonthIndex} from "../../engine/index.ts";

/** A published index as data: the owner may bring another currency's. */
export interface PriceIndex {
  readonly name: string;
  readonly currency: string;
  readonly source: string;
  /** Who read it, and what it was checked against. */
  readonly status: string;
  /** January to December of each year; the last year may be short, a month never published is null. */
  readonly years: Readonly<Record<number, readonly (number | null)[]>>;
}

/**
 * The index of a month. A gap takes the value between its neighbours; months before the first and after the last known one take that one's.
 */
export function indexAt({years}: PriceIndex, m: MonthIndex): number {
  const known = (at: number) => years[1900 + Math.floor(at / 12)]?.[((at % 12) + 12) % 12] ?? null;
  const exact = known(m);
  if (exact !== null) return exact;
  const {first, last} = monthsKnown(years);
  if (m <= first) return known(first)!;
  if (m >= last) return known(last)!;
  let [before, after] = [m - 1, m + 1];
  while (known(before) === null) before--;
  while (known(after) === null) after++;
  return known(before)! + ((known(after)! - known(before)!) * (m - before)) / (after - before);
}

/** The last month that an index knows. */
export const indexUntil = ({years}: PriceIndex): MonthIndex => monthsKnown(years).last;

function monthsKnown(years: PriceIndex["years"]): {first: MonthIndex; last: MonthIndex} {
  const months = Object.entries(years).flatMap(([year, values]) => values.flatMap((value, i) => (value === null ? [] : [(Number(year) - 1900) * 12 + i])));
  return {first: Math.min(...months) as MonthIndex, last: Math.max(...months) as MonthIndex};
}

/**
 * An amount in the money of another time, not rounded: the index now over the index then.
 * @example
 * Math.round(inMoneyOf(100, 82.4, 304.702)) // -> 370
 */
export const inMoneyOf = (amount: number, then: number, now: number): number => (amount * now) / then;

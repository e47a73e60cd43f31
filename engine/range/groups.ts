// Months summed up into years and decades.
import type {MonthIndex} from "../units.ts";

export interface Share {
  readonly from: number;
  readonly probability: number;
}

/** Probability by year, for years of the axis, in order. */
export function byYear(posterior: Float64Array, first: MonthIndex): Share[] {
  return grouped(posterior, (t) => 1900 + Math.floor((first + t) / 12));
}

/** Probability by decade: 1960 stands for 1960 to 1969. */
export function byDecade(posterior: Float64Array, first: MonthIndex): Share[] {
  return grouped(posterior, (t) => 1900 + Math.floor((first + t) / 120) * 10);
}

function grouped(posterior: Float64Array, key: (t: number) => number): Share[] {
  const totals = new Map<number, number>();
  for (let t = 0; t < posterior.length; t++) totals.set(key(t), (totals.get(key(t)) ?? 0) + posterior[t]!);
  return [...totals].map(([from, probability]) => ({from, probability}));
}

// The arithmetic of the months plot: how tall money stands above and below its line, and which months carry a name.

export interface MonthScale {
  /** Pixels from the top to an amount; what came in stands above the line, what went out hangs below it. */
  readonly y: (cents: number) => number;
  readonly zero: number;
  /** Width of one month, pixels. */
  readonly step: number;
  readonly x: (index: number) => number;
  /** Amounts that carry a figure at the edge. */
  readonly figures: readonly number[];
  readonly named: (index: number) => boolean;
}

export interface MonthSums {
  readonly month: string;
  readonly taken: number;
  readonly spent: number;
  readonly laidOut: number;
  readonly profit: number;
}

export const gutter = 58;
const room = 44;

export function monthScale(months: readonly MonthSums[], width: number, height: number): MonthScale {
  const most = Math.max(1, ...months.map(({taken, profit}) => Math.max(taken, profit)));
  const least = Math.min(0, ...months.map(({spent, laidOut, profit}) => Math.min(-spent - laidOut, profit)));
  const tall = (height - 8) / (most - least);
  const y = (cents: number) => 4 + (most - cents) * tall;
  const step = Math.min(64, (width - gutter) / Math.max(1, months.length));
  const mark = niceDown((most - least) / Math.max(2, height / room));
  const figures: number[] = [];
  for (let cents = Math.ceil(least / mark) * mark; cents <= most; cents += mark) figures.push(cents === 0 ? 0 : cents);
  // As many months as have room for a name; the Januaries first.
  const every = [1, 3, 6, 12].find((one) => one * step >= 34) ?? 12 * Math.ceil(34 / (12 * step));
  const january = Number(months[0]?.month.slice(5) ?? 1) - 1;
  return {y, zero: y(0), step, x: (index) => gutter + index * step, figures, named: (index) => (index + january) % every === 0};
}

/** The most of 1, 2, 5, 10, 20 ... that is not above, at least 1. */
function niceDown(most: number): number {
  const ten = 10 ** Math.floor(Math.log10(Math.max(1, most)));
  return [5, 2, 1].map((times) => times * ten).find((step) => step <= Math.max(1, most)) ?? 1;
}

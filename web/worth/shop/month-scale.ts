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

/** Months together: one, a quarter, or a year. */
export interface Stretch extends MonthSums {
  /** The last month; the same as `month` for one alone. */
  readonly until: string;
}

export const gutter = 58;
/** Narrower than that, a month can no longer be told from the next. */
const narrowest = 9;
const room = 44;
const nameRoom = 34;

/** Months as they are, or summed by quarters or years where they are too many for the room. */
export function stretches(months: readonly MonthSums[], width: number): readonly Stretch[] {
  const size = [1, 3, 12].find((one) => (months.length / one) * narrowest <= width - gutter) ?? 12;
  const all = new Map<string, Stretch>();
  for (const {month, taken, spent, laidOut, profit} of months) {
    const [year, number] = month.split("-") as [string, string];
    const key = `${year} ${Math.floor((Number(number) - 1) / size)}`;
    const so = all.get(key) ?? {month, until: month, taken: 0, spent: 0, laidOut: 0, profit: 0};
    all.set(key, {month: so.month, until: month, taken: so.taken + taken, spent: so.spent + spent, laidOut: so.laidOut + laidOut, profit: so.profit + profit});
  }
  return [...all.values()];
}

export function monthScale(months: readonly Stretch[], width: number, height: number): MonthScale {
  const most = Math.max(1, ...months.map(({taken, profit}) => Math.max(taken, profit)));
  const least = Math.min(0, ...months.map(({spent, laidOut, profit}) => Math.min(-spent - laidOut, profit)));
  const tall = (height - 8) / (most - least);
  const y = (cents: number) => 4 + (most - cents) * tall;
  const step = Math.min(64, (width - gutter) / Math.max(1, months.length));
  const mark = niceDown((most - least) / Math.max(2, height / room));
  const figures: number[] = [];
  for (let cents = Math.ceil(least / mark) * mark; cents <= most; cents += mark) figures.push(cents === 0 ? 0 : cents);
  // As many as have room for a name; those that begin a year first.
  const begins = months.flatMap(({month}, i) => (month.endsWith("-01") ? [i] : []));
  const apart = begins.length > 1 ? begins[1]! - begins[0]! : Math.max(1, months.length);
  const every = [1, 3, 6, 12].find((one) => one < apart && apart % one === 0 && one * step >= nameRoom) ?? apart * Math.ceil(nameRoom / (apart * step));
  const first = begins[0] ?? 0;
  return {y, zero: y(0), step, x: (index) => gutter + index * step, figures, named: (index) => (((index - first) % every) + every) % every === 0};
}

/** The most of 1, 2, 5, 10, 20 ... that is not above, at least 1. */
function niceDown(most: number): number {
  const ten = 10 ** Math.floor(Math.log10(Math.max(1, most)));
  return [5, 2, 1].map((times) => times * ten).find((step) => step <= Math.max(1, most)) ?? 1;
}

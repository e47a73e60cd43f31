// The arithmetic of the year plot: which years it shows, where they stand, and which a pointer or a key means.

export interface YearScale {
  readonly first: number;
  readonly last: number;
  /** Pixels from the left edge to a year's own left edge. */
  readonly x: (year: number) => number;
  /** Width of one year, pixels. */
  readonly step: number;
  /** The year under a pixel, always one of those shown. */
  readonly yearAt: (x: number) => number;
  /** Years that carry a figure below the axis. */
  readonly figures: readonly number[];
}

/**
 * @param years  as the rack sums them: the first year, and how many garments of each year are expected
 * @param range  years that must be in sight whatever is there, because the range is set to them
 */
export function yearScale(years: {readonly first: number; readonly garments: readonly number[]}, range: readonly (number | null)[], width: number): YearScale {
  // The thin tails of open dates would draw the plot out over a century in which next to nothing was made.
  const least = Math.max(0.005, Math.max(0, ...years.garments) / 120);
  const worth = years.garments.flatMap((count, i) => (count >= least ? [years.first + i] : []));
  const asked = range.filter((year) => year !== null);
  const sight = [...worth, ...asked];
  const [low, high] = sight.length > 0 ? [Math.min(...sight), Math.max(...sight)] : [1930, 2010];
  // At least twenty years, so that one garment does not make a wall.
  const missing = Math.max(0, 19 - (high - low));
  const [first, last] = [low - Math.floor(missing / 2) - 1, high + Math.ceil(missing / 2) + 1];
  const step = width / (last - first + 1);
  const every = [1, 2, 5, 10, 20, 50].find((one) => one * step >= 34) ?? 100;
  return {
    first, last, step,
    x: (year) => (year - first) * step,
    yearAt: (x) => Math.min(last, Math.max(first, first + Math.floor(x / step))),
    // A figure at the very edge would be cut off.
    figures: Array.from({length: last - first + 1}, (_, i) => first + i).filter((year) => year % every === 0 && (year - first + 0.5) * step > 14 && (last - year + 0.5) * step > 14),
  };
}

/** Two years in their order, as a range. */
export const inOrder = (a: number, b: number): {readonly from: number; readonly until: number} => (a <= b ? {from: a, until: b} : {from: b, until: a});

/** Where a key moves one end of the range; null for keys that mean nothing here. */
export function moveByKey(key: string, year: number, {first, last}: Pick<YearScale, "first" | "last">): number | null {
  const to = {ArrowLeft: year - 1, ArrowDown: year - 1, ArrowRight: year + 1, ArrowUp: year + 1, PageDown: year - 10, PageUp: year + 10, Home: first, End: last}[key];
  return to === undefined ? null : Math.min(last, Math.max(first, to));
}

// Times of things compared: taken in turn, so that whatever else the machine does falls on all of them alike.

/** Middle value; the mean of the two middle ones of an even number. */
export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

/** The value below which this part of the values lies, by straight lines between neighbours. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = part * (sorted.length - 1);
  const below = Math.floor(place);
  return sorted[below]! + (place - below) * ((sorted[below + 1] ?? sorted[below]!) - sorted[below]!);
}

/** Milliseconds of one run. */
export function timeOf(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/**
 * Runs several things in turn, A B A B.
 * @returns medians of their milliseconds, in their order
 */
export function inTurn(rounds: number, ...runs: readonly (() => void)[]): number[] {
  const times = runs.map((): number[] => []);
  for (let round = 0; round < rounds; round++) runs.forEach((run, i) => times[i]!.push(timeOf(run)));
  return times.map(median);
}

// Finds the known name that a mistyped one was probably meant to be.

/**
 * The known name nearest to a mistyped one.
 * @returns null when none is near: more than a third of the longer name would have to change
 * @edge    upper and lower case count as the same; names above 80 characters are not compared
 * @example
 * nearest("strey", ["stray", "lost"]) // -> "stray"
 */
export function nearest(given: string, known: Iterable<string>): string | null {
  let best: string | null = null;
  let least = Infinity;
  for (const name of known) {
    if (Math.max(name.length, given.length) > 80) continue;
    const steps = distance(given.toLowerCase(), name.toLowerCase());
    if (steps < least && steps <= Math.max(1, Math.max(name.length, given.length) / 3)) [best, least] = [name, steps];
  }
  return best;
}

/** Letters to add, drop, change or swap with their neighbour. Source: optimal string alignment distance (Damerau 1964; Levenshtein 1966). */
export function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({length: b.length + 1}, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let steps = Math.min(row[j - 1]! + 1, last[j]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (!same && i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) steps = Math.min(steps, before[j - 2]! + 1);
      row.push(steps);
    }
    [before, last] = [last, row];
  }
  return last[b.length]!;
}

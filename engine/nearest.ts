// The known name that is closest to a mistyped one.

/**
 * The nearest of some names, by the fewest single-character edits.
 * @returns null when none is close: more than a third of the name, or more than four edits
 * @source Levenshtein distance, two-row form of Wagner & Fischer 1974, Journal of the ACM 21:168-173
 */
export function nearest(name: string, names: Iterable<string>): string | null {
  const wanted = name.slice(0, 80).toLowerCase();
  let best: string | null = null;
  let fewest = Math.min(5, Math.max(2, wanted.length / 3 + 1));
  for (const candidate of names) {
    if (Math.abs(candidate.length - wanted.length) >= fewest) continue;
    const edits = distance(wanted, candidate.toLowerCase());
    if (edits < fewest) {
      fewest = edits;
      best = candidate;
    }
  }
  return best;
}

function distance(a: string, b: string): number {
  let above = Array.from({length: b.length + 1}, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      row.push(Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    above = row;
  }
  return above[b.length]!;
}

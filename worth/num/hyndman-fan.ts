// Quantiles of a sample in the nine ways of Hyndman and Fan.

export type QuantileType = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9;

/** How far beyond an integer counts as rounding noise. */
const fuzz = 4 * Number.EPSILON;

/** Where between two neighbours a continuous type stands: the place of p is n p + a + p (1 - a - b). */
const continuous: Readonly<Record<4 | 5 | 6 | 7 | 8 | 9, readonly [number, number]>> = {4: [0, 1], 5: [0.5, 0.5], 6: [0, 0], 7: [1, 1], 8: [1 / 3, 1 / 3], 9: [3 / 8, 3 / 8]};

/**
 * A quantile of ascending values; type 7 unless said otherwise.
 * @param sorted  ascending, at least one
 * @source  R. J. Hyndman, Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996), 361
 * @example
 * quantile(Float64Array.of(1, 2, 3, 4), 0.5) // -> 2.5
 */
export function quantile(sorted: ArrayLike<number>, p: number, type: QuantileType = 7): number {
  const n = sorted.length;
  if (n === 0 || !(p >= 0 && p <= 1)) throw new RangeError(`no quantile at ${p} of ${n} values`);
  const at = (place: number) => sorted[Math.min(n, Math.max(1, place)) - 1]!;
  if (type <= 3) {
    const place = type === 3 ? n * p - 0.5 : n * p;
    const below = Math.floor(place + fuzz * Math.max(1, place));
    const exact = Math.abs(place - below) <= fuzz * Math.max(1, n);
    if (!exact) return at(below + 1);
    if (type === 2) return (at(below) + at(below + 1)) / 2;
    return type === 3 && below % 2 !== 0 ? at(below + 1) : at(below);
  }
  const [a, b] = continuous[type as 4];
  const place = a + p * (n + 1 - a - b);
  const below = Math.floor(place + fuzz * Math.max(1, place));
  const beyond = place - below;
  return Math.abs(beyond) <= fuzz * n ? at(below) : at(below) + beyond * (at(below + 1) - at(below));
}

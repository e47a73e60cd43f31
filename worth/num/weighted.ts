// Quantiles and effective numbers of values that count unequally.

/**
 * The weighted quantile of values in ascending order: where the sum of weights reaches p of the whole, halfway to the next value when it does so exactly.
 * With whole weights it is the quantile of type 2 of the list in which each value stands as often as it weighs.
 * @param weights  not negative, same order as the values
 * @returns NaN when nothing weighs anything
 * @source  standard definition; F. Y. Edgeworth 1888 for the median
 */
export function weightedQuantile(sorted: ArrayLike<number>, weights: ArrayLike<number>, p: number): number {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i]!;
  if (!(total > 0)) return Number.NaN;
  const aim = p * total;
  const noise = 1e-12 * total;
  let sum = 0;
  for (let i = 0; i < sorted.length; i++) {
    if (!(weights[i]! > 0)) continue;
    sum += weights[i]!;
    if (sum < aim - noise) continue;
    if (sum > aim + noise) return sorted[i]!;
    for (let next = i + 1; next < sorted.length; next++) if (weights[next]! > 0) return (sorted[i]! + sorted[next]!) / 2;
    return sorted[i]!;
  }
  return Number.NaN;
}

/** How many equal weights would spread a mean as little. Source: L. Kish, Survey Sampling, 1965. */
export function effectiveNumber(weights: ArrayLike<number>): number {
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < weights.length; i++) {
    sum += weights[i]!;
    squares += weights[i]! ** 2;
  }
  return squares > 0 ? (sum * sum) / squares : 0;
}

/** What a sale of some age still counts for when it loses half in every half-life. */
export const decay = (age: number, halfLife: number): number => 0.5 ** (age / halfLife);

/** Median of any values. */
export function median(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length >> 1;
  return sorted.length === 0 ? Number.NaN : sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

/** Median distance from a centre, scaled so that it is the standard deviation of a normal sample. The constant is R's. */
export function medianSpread(values: ArrayLike<number>, centre = median(values)): number {
  return 1.4826 * median(Float64Array.from(values, (x) => Math.abs(x - centre)));
}

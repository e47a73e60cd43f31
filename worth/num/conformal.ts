// Ranges that hold as often as they say: taken from how far sales were off that were priced without themselves.

/**
 * Which of n held-out scores in ascending order, from 1, bounds a range that holds `share` of new ones: ceil((n + 1) share). Beyond n no score is enough.
 * @source  V. Vovk, A. Gammerman, G. Shafer, Algorithmic Learning in a Random World, 2005
 */
export function conformalRank(n: number, share: number): number {
  // (19 + 1) * 0.95 is a trifle more than 19 in floating point.
  return Math.ceil((n + 1) * share - 1e-9);
}

/**
 * The bound that a new score stays under with chance `share`, when scores count unequally.
 * @param scores   ascending
 * @param weights  same order; with equal weights this is the score of `conformalRank`
 * @param own      what the new one would weigh
 * @returns Infinity when the scores are too few to promise it
 * @source  R. J. Tibshirani, R. F. Barber, E. J. Candès, A. Ramdas, "Conformal prediction under covariate shift", 2019, with the new one's weight at infinity
 */
export function conformalBound(scores: ArrayLike<number>, weights: ArrayLike<number>, own: number, share: number): number {
  let total = own;
  for (let i = 0; i < weights.length; i++) total += weights[i]!;
  let sum = 0;
  for (let i = 0; i < scores.length; i++) {
    sum += weights[i]!;
    if (sum >= share * total - 1e-9 * total) return scores[i]!;
  }
  return Infinity;
}

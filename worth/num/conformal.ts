// Ranges that hold as often as they say: taken from how far sales were off that were priced without themselves.

/**
 * The bound that a new score stays under with chance `share`, when scores count unequally.
 * @param scores   ascending
 * @param weights  same order; with equal weights and own 1 the bound is the score of rank ceil((n + 1) share)
 * @param own      what the new one would weigh
 * @returns Infinity when the scores are too few to promise it
 * @source  V. Vovk, A. Gammerman, G. Shafer, Algorithmic Learning in a Random World, 2005; weights after R. J. Tibshirani, R. F. Barber, E. J. Candès, A. Ramdas, "Conformal prediction under covariate shift", 2019, with the new one's weight at infinity
 */
export function conformalBound(scores: ArrayLike<number>, weights: ArrayLike<number>, own: number, share: number): number {
  let total = own;
  for (let i = 0; i < weights.length; i++) total += weights[i]!;
  let sum = 0;
  for (let i = 0; i < scores.length; i++) {
    sum += weights[i]!;
    // (19 + 1) * 0.95 is a trifle more than 19 in floating point.
    if (sum >= share * total - 1e-9 * total) return scores[i]!;
  }
  return Infinity;
}

// A probability as a dealer says it, the small ones too.

/**
 * @example
 * sayShare(0.774) // -> "77 in 100"
 * sayShare(0.003) // -> "1 in 333"
 */
export function sayShare(p: number): string {
  if (p > 0.995) return "more than 99 in 100";
  if (p >= 0.0995) return `${Math.round(p * 100)} in 100`;
  return p < 1e-4 ? "less than 1 in 10,000" : `1 in ${Math.round(1 / p).toLocaleString("en")}`;
}

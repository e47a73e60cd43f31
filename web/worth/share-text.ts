// Parts of a hundred as they are typed: "12.5" or "12,5 %" is an eighth.

/** What stands in the field. */
export const typeShare = (share: number): string => String(Number((share * 100).toFixed(2)));

/**
 * @param most  the largest part that can be, 0.95 is 95 in a hundred
 * @example
 * readShare("12,5 %", 0.9) // -> {share: 0.125, wrong: null}
 */
export function readShare(text: string, most: number): {readonly share: number; readonly wrong: null} | {readonly share: null; readonly wrong: string} {
  const bare = text.replace(/\s|%/g, "").replace(",", ".");
  if (bare === "") return {share: 0, wrong: null};
  if (!/^\d{1,3}(\.\d{0,2})?$/.test(bare)) return {share: null, wrong: "Parts of a hundred, like 12 or 12.5"};
  const share = Math.round(Number(bare) * 100) / 1e4;
  return share > most ? {share: null, wrong: `At most ${typeShare(most)} in a hundred`} : {share, wrong: null};
}

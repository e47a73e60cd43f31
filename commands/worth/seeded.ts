// Chance that comes out the same for the same question, so that an answer asked for twice is one answer.

/**
 * Numbers from 0 to below 1.
 * @source  the seed by FNV-1a (Fowler, Noll, Vo 1991), the numbers by the 32-bit mixer “mulberry32” (public domain), both from memory; good enough for drawing from a spread, not for secrets
 */
export function seeded(text: string): () => number {
  let state = [...text].reduce((hash, letter) => Math.imul(hash ^ letter.codePointAt(0)!, 16_777_619) >>> 0, 2_166_136_261);
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

// Seeded chance for simulations: the same seed gives the same garments on every machine.

export interface Random {
  /** Uniform in [0, 1). */
  next(): number;
  /** Whether something of this chance happens. */
  happens(chance: number): boolean;
  /** An integer from `least` to `most`, both included, evenly. */
  whole(least: number, most: number): number;
  /** One of the items, evenly. */
  pick<T>(items: readonly T[]): T;
  /** Place of one of the weights, by weight; null when there is no weight at all. */
  place(weights: ArrayLike<number>): number | null;
  /** The items in random order. */
  shuffled<T>(items: readonly T[]): T[];
}

/**
 * Makes a generator.
 * @param seed  any integer; neighbouring seeds give unrelated streams
 * @source      mulberry32, a public-domain 32-bit generator; from memory
 */
export function seeded(seed: number): Random {
  let state = Math.imul(seed, 0x9e3779b1);
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let x = Math.imul(state ^ (state >>> 15), 1 | state);
    x = (x + Math.imul(x ^ (x >>> 7), 61 | x)) ^ x;
    return ((x ^ (x >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    happens: (chance) => next() < chance,
    whole,
    pick: (items) => items[whole(0, items.length - 1)]!,
    place(weights) {
      let total = 0;
      for (let i = 0; i < weights.length; i++) total += weights[i]!;
      if (!(total > 0)) return null;
      let left = next() * total;
      for (let i = 0; i < weights.length; i++) {
        left -= weights[i]!;
        if (left < 0) return i;
      }
      return weights.length - 1;
    },
    shuffled(items) {
      const rest = [...items];
      return items.map(() => rest.splice(whole(0, rest.length - 1), 1)[0]!);
    },
  };
}

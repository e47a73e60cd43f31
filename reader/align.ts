// Two readings laid side by side with the fewest changes, so that places of one can be told in the other.

/** A pair of places; null: the other has nothing there. */
export interface Pair {
  readonly from: number | null;
  readonly to: number | null;
}

/**
 * Lays one text beside another with the fewest replaced, lost and added characters; replacing is preferred.
 * @cost   length × length
 * @source edit distance by the table method, Wagner and Fischer 1974; from memory
 */
export function align(from: string, to: string): Pair[] {
  const width = to.length + 1;
  const cost = new Uint16Array((from.length + 1) * width);
  for (let i = 0; i <= from.length; i++) {
    for (let j = 0; j <= to.length; j++) {
      const same = i > 0 && j > 0 ? cost[(i - 1) * width + j - 1]! + Number(from[i - 1] !== to[j - 1]) : Infinity;
      const lost = i > 0 ? cost[(i - 1) * width + j]! + 1 : Infinity;
      const added = j > 0 ? cost[i * width + j - 1]! + 1 : Infinity;
      cost[i * width + j] = i + j === 0 ? 0 : Math.min(same, lost, added);
    }
  }
  const pairs: Pair[] = [];
  let [i, j] = [from.length, to.length];
  while (i > 0 || j > 0) {
    const here = cost[i * width + j]!;
    if (i > 0 && j > 0 && here === cost[(i - 1) * width + j - 1]! + Number(from[i - 1] !== to[j - 1])) pairs.push({from: --i, to: --j});
    else if (i > 0 && here === cost[(i - 1) * width + j]! + 1) pairs.push({from: --i, to: null});
    else pairs.push({from: null, to: --j});
  }
  return pairs.reverse();
}

/** What stands in `to` at each place of `from`; "" where nothing does. */
export function standing(from: string, to: string): string[] {
  const at = Array.from({length: from.length}, () => "");
  for (const pair of align(from, to)) if (pair.from !== null && pair.to !== null) at[pair.from] = to[pair.to]!;
  return at;
}

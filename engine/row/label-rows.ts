// All rows of a label together: which row is which line of the layout, extra rows, and each hidden code counted once.
import type {LayoutRow} from "../rule/schema.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import {multiplyInto} from "../num/vector.ts";
import {tiedNames, type RowChance, type RowContext} from "./weigh.ts";

/** Which layout row each seen row is (null: an extra row), and the chance of that arrangement. */
export interface Arrangement {
  readonly lines: readonly (number | null)[];
  readonly chance: number;
}

const orderly = 0.9;
const wrongPlace = 0.05;

/**
 * Every arrangement of the seen rows on the layout's lines. Chances follow docs/model.md, section 5.
 * @param possible  whether row o can be line l at all
 */
export function arrangements(rows: readonly PrintedRow[], layout: readonly LayoutRow[], extra: number, possible: (o: number, l: number) => boolean): Arrangement[] {
  const count = rows.length;
  if (layout.length === 0) return [{lines: rows.map(() => null), chance: (1 - extra) * extra ** count}];
  const result: Arrangement[] = [];
  const used = new Set<number>();
  const lines: (number | null)[] = [];
  const walk = (o: number, product: number): void => {
    if (o === count) {
      let chance = product;
      layout.forEach((line, l) => (chance *= used.has(l) ? line.share : 1 - line.share));
      const extras = count - used.size;
      chance *= (1 - extra) * extra ** extras * orderChance(lines, extras);
      if (chance > 0) result.push({lines: [...lines], chance});
      return;
    }
    lines.push(null);
    walk(o + 1, product);
    lines.pop();
    layout.forEach((line, l) => {
      if (used.has(l) || !possible(o, l)) return;
      used.add(l);
      lines.push(l);
      const place = rows[o]!.at && line.at && rows[o]!.at !== line.at ? wrongPlace : 1;
      walk(o + 1, product * place);
      lines.pop();
      used.delete(l);
    });
  };
  walk(0, 1);
  return result;
}

function orderChance(lines: readonly (number | null)[], extras: number): number {
  const matched = lines.filter((line) => line !== null);
  const inOrder = matched.every((line, i) => i === 0 || line > matched[i - 1]!);
  return (inOrder ? orderly / choose(lines.length, extras) : 0) + ((1 - orderly) * factorial(extras)) / factorial(lines.length);
}

const factorial = (k: number): number => (k <= 1 ? 1 : k * factorial(k - 1));
const choose = (n: number, k: number) => factorial(n) / (factorial(k) * factorial(n - k));

/** The chance by month of rows taken in order, each hidden code tied to the first row that shows it. */
export function joinRows(rows: readonly RowChance[], context: RowContext): Float64Array {
  const tied = tiedNames(context);
  let states = new Map<number, Float64Array>([[0, new Float64Array(context.n).fill(1)]]);
  for (const row of rows) {
    const next = new Map<number, Float64Array>();
    for (const [mask, state] of states) {
      for (const [key, chance] of row) {
        const to = tieStep(mask, key);
        if (to === null) continue;
        let total = next.get(to);
        if (!total) next.set(to, (total = new Float64Array(context.n)));
        for (let t = 0; t < context.n; t++) total[t]! += state[t]! * chance[t]!;
      }
    }
    states = next;
  }
  const result = new Float64Array(context.n);
  for (const [mask, state] of states) {
    tied.forEach((name, i) => {
      if (!(mask & (1 << i))) multiplyInto(state, context.ties[name]!.alone);
    });
    for (let t = 0; t < context.n; t++) result[t]! += state[t]!;
  }
  return result;
}

function tieStep(mask: number, key: string): number | null {
  let to = mask;
  for (let i = 0; i < key.length; i++) {
    const bit = 1 << i;
    if (key[i] === "1") {
      if (mask & bit) return null;
      to |= bit;
    } else if (key[i] === "2" && !(mask & bit)) return null;
  }
  return to;
}

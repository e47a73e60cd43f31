// All rows of a label together: which row is which line of the layout, extra rows, and each hidden code counted once.
import type {LayoutRow} from "../rule/schema.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import {tieDigit, type RowChance, type RowContext, type TieKey} from "./weigh.ts";

/** Which layout row each seen row is (null: an extra row), and the chance of that arrangement. */
export interface Arrangement {
  readonly lines: readonly (number | null)[];
  readonly chance: number;
}

const orderly = 0.9;
const wrongPlace = 0.05;

/** With more than five rows only the two that fit lines best may stand on any line; the others are taken as extra rows. */
export const mostPlaced = (rows: number): number => (rows <= 5 ? rows : 2);

const skeletons = new WeakMap<readonly LayoutRow[], Map<string, readonly Arrangement[]>>();

/** Every arrangement of rows on the layout's lines. Chances follow docs/model.md, section 5. Remembered for each layout. */
export function arrangements(rows: readonly PrintedRow[], layout: readonly LayoutRow[], extra: number, placed: readonly boolean[]): readonly Arrangement[] {
  if (layout.length === 0) return [{lines: rows.map(() => null), chance: (1 - extra) * extra ** rows.length}];
  let known = skeletons.get(layout);
  if (!known) skeletons.set(layout, (known = new Map()));
  const key = `${extra}|${rows.map(({at}, o) => (placed[o] ? (at ?? "") : "-")).join("|")}`;
  let found = known.get(key);
  if (!found) {
    found = everyArrangement(rows, layout, extra, placed);
    if (known.size < 64) known.set(key, found);
  }
  return found;
}

function everyArrangement(rows: readonly PrintedRow[], layout: readonly LayoutRow[], extra: number, placed: readonly boolean[]): Arrangement[] {
  const count = rows.length;
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
    if (!placed[o]) return;
    layout.forEach((line, l) => {
      if (used.has(l)) return;
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

/** The chance by month of rows taken in order, each hidden code tied to the first row that shows it, times a factor, added to `into`. */
export function addJoined(into: Float64Array, rows: readonly RowChance[], factor: number, context: RowContext): void {
  if (context.tied.length > 0 && !loneShowers(rows, context)) return addWalked(into, rows, factor, context);
  let product = factor;
  const vectors: Float64Array[] = [];
  let shown = 0;
  for (const row of rows) {
    const mask = shownBy(row, context);
    shown |= mask;
    const chance = folded(row, mask, context);
    if (typeof chance === "number") product *= chance;
    else vectors.push(chance);
  }
  context.tied.forEach((name, i) => {
    if (!(shown & (1 << i))) vectors.push(context.ties[name]!.alone);
  });
  if (product > 0) addProduct(into, product, vectors, context);
}

const masks = new WeakMap<RowChance, number>();

/** Which tied codes a row can show, as bits. */
export function shownBy(row: RowChance, context: RowContext): number {
  let mask = masks.get(row);
  if (mask === undefined) {
    mask = 0;
    for (const key of row.keys()) for (let i = 0; i < context.tied.length; i++) if (tieDigit(key, i) !== 0) mask |= 1 << i;
    masks.set(row, mask);
  }
  return mask;
}

/** Whether no tied code can be shown by two rows: then each row settles its codes by itself. */
function loneShowers(rows: readonly RowChance[], context: RowContext): boolean {
  let shown = 0;
  for (const row of rows) {
    const mask = shownBy(row, context);
    if (mask & shown) return false;
    shown |= mask;
  }
  return true;
}

const folds = new WeakMap<RowChance, Map<RowContext["ties"], Float64Array | number>>();

/** The chance of the one row that can show its tied codes: shown as the garment's own, or not shown and known from elsewhere alone. */
function folded(row: RowChance, mask: number, context: RowContext): Float64Array | number {
  if (mask === 0) return row.get(0) ?? 0;
  let known = folds.get(row);
  if (!known) folds.set(row, (known = new Map()));
  let found = known.get(context.ties);
  if (found === undefined) {
    found = new Float64Array(context.n);
    for (const [key, chance] of row) {
      const digits = context.tied.map((_, i) => tieDigit(key, i));
      if (digits.includes(2)) continue;
      const alone = context.tied.flatMap((name, i) => (mask & (1 << i) && digits[i] === 0 ? [context.ties[name]!.alone] : []));
      addProduct(found, typeof chance === "number" ? chance : 1, typeof chance === "number" ? alone : [chance, ...alone], context);
    }
    known.set(context.ties, found);
  }
  return found;
}

/** Row by row, keeping apart which codes are tied so far: several rows can show the same code. */
function addWalked(into: Float64Array, rows: readonly RowChance[], factor: number, context: RowContext): void {
  const {from, until, n} = context;
  let states = new Map<number, Float64Array | number>([[0, factor]]);
  for (const row of rows) {
    const next = new Map<number, Float64Array | number>();
    for (const [mask, state] of states) {
      for (const [key, chance] of row) {
        const to = tieStep(mask, key, context.tied.length);
        if (to === null) continue;
        const sum = next.get(to) ?? 0;
        if (typeof state === "number" && typeof chance === "number" && typeof sum === "number") {
          next.set(to, sum + state * chance);
          continue;
        }
        let total = sum;
        if (typeof total === "number") {
          const before = total;
          next.set(to, (total = new Float64Array(n)));
          if (before > 0) total.fill(before, from, until);
        }
        if (typeof state === "number" && typeof chance === "number") for (let t = from; t < until; t++) total[t]! += state * chance;
        else if (typeof chance === "number") for (let t = from; t < until; t++) total[t]! += (state as Float64Array)[t]! * chance;
        else if (typeof state === "number") for (let t = from; t < until; t++) total[t]! += state * chance[t]!;
        else for (let t = from; t < until; t++) total[t]! += state[t]! * chance[t]!;
      }
    }
    states = next;
  }
  for (const [mask, state] of states) {
    const alone = context.tied.flatMap((name, i) => (mask & (1 << i) ? [] : [context.ties[name]!.alone]));
    if (typeof state === "number") addProduct(into, state, alone, context);
    else addProduct(into, 1, [state, ...alone], context);
  }
}

/** Adds a product of vectors times a factor, in the months that count. */
function addProduct(into: Float64Array, factor: number, vectors: readonly Float64Array[], {from, until}: RowContext): void {
  const [a, b, c, ...rest] = vectors;
  if (!a) for (let t = from; t < until; t++) into[t]! += factor;
  else if (!b) for (let t = from; t < until; t++) into[t]! += factor * a[t]!;
  else if (!c) for (let t = from; t < until; t++) into[t]! += factor * a[t]! * b[t]!;
  else if (rest.length === 0) for (let t = from; t < until; t++) into[t]! += factor * a[t]! * b[t]! * c[t]!;
  else {
    const product = new Float64Array(into.length);
    for (let t = from; t < until; t++) product[t] = factor * a[t]! * b[t]! * c[t]!;
    for (const vector of rest) for (let t = from; t < until; t++) product[t]! *= vector[t]!;
    for (let t = from; t < until; t++) into[t]! += product[t]!;
  }
}

/** Which codes are tied after a row; null when the row cannot stand there. */
function tieStep(mask: number, key: TieKey, count: number): number | null {
  let to = mask;
  for (let i = 0; i < count; i++) {
    const digit = tieDigit(key, i);
    const bit = 1 << i;
    if (digit === 1) {
      if (mask & bit) return null;
      to |= bit;
    } else if (digit === 2 && !(mask & bit)) return null;
  }
  return to;
}

// What a garment may bring, from sales weighed by how like it they are and corrected for how they differ.
import {t4At80, type Bell} from "./bell.ts";
import type {Columns} from "./columns.ts";
import type {Effects} from "./effects.ts";
import {gradeLikeness, lotLikeness, makerLikeness, monthLikeness, sizesLikeness, timeLikeness} from "./likeness.ts";
import type {Possible, Query} from "./query.ts";

/** Sales of one kind with what sets them apart taken off. */
export interface Rest {
  readonly effects: Effects;
  /** By row of the kind, from its first row: the log price less what the effects expect, as far as they are trusted. */
  readonly left: Float64Array;
  /** Places of `left` from the least to the most. */
  readonly order: Int32Array;
  /** Usual spread of `left` (half of the middle 60 in 100, in bells of t4). */
  readonly spread: number;
}

/** One possibility, what it would bring, and what that rests on. */
export interface Branching extends Bell {
  readonly possible: Possible;
  /** How many good comparisons the sales amount to. */
  readonly like: number;
}

export interface Prediction {
  readonly bells: readonly Branching[];
  readonly like: number;
  /** Rows that counted, with their shares of all weight, from the least price to the most. */
  readonly rows: Int32Array;
  readonly shares: Float64Array;
}

/** Only so many sales are looked at closely. */
const mostClose = 1500;
/** How many sales' worth the usual spread of the kind counts beside the spread seen, and a bell's least width. */
const spreadWorth = 8;
const leastWidth = 0.03;

/**
 * @param skip    rows that do not count: the garment's own sales
 * @param stride  2: every second sale only, and so on; a part of tens of thousands says the same, sooner
 */
export function predict(columns: Columns, {effects, left, order, spread}: Rest, query: Query, skip: ReadonlySet<number>, stride = 1): Prediction {
  const {start, end} = columns.kindRows[query.kind]!;
  const {maker, lot, size, grade, fresh, from, until} = columns;
  const possible = query.possible;
  const makers = [...new Set(possible.map((p) => p.maker))];
  const makerTables = new Map(makers.map((m) => [m, makerLikeness(columns, m)]));
  const ofLot = lotLikeness(columns, query.lot);
  const ofGrade = gradeLikeness(query.grade);
  const ofSize = sizesLikeness(columns, query.size);
  const shareOfMaker = (m: number) => possible.reduce((sum, p) => sum + (p.maker === m ? p.chance : 0), 0);
  const ofMaker = columns.makers.list.map((_, other) => makers.reduce((sum, m) => sum + shareOfMaker(m) * makerTables.get(m)![other]!, 0));
  const months = [...new Set(possible.map((p) => p.month))];
  const ofTime = timeLikeness(months, months.map((m) => possible.reduce((sum, p) => sum + (p.month === m ? p.chance : 0), 0)));
  const weights = new Float64Array(end - start);
  for (let i = start; i < end; i += stride) weights[i - start] = fresh[i]! * ofLot[lot[i]!]! * ofGrade[grade[i]!]! * ofSize[size[i]!]! * ofMaker[maker[i]!]! * ofTime.of(from[i]!, until[i]!);
  for (const i of skip) if (i >= start && i < end) weights[i - start] = 0;
  const close = heaviest(weights, order, mostClose);
  const count = close.length;
  const [plain, value] = [new Float64Array(count), new Float64Array(count)];
  for (let k = 0; k < count; k++) {
    const i = start + close[k]!;
    plain[k] = fresh[i]! * ofLot[lot[i]!]! * ofGrade[grade[i]!]! * ofSize[size[i]!]!;
    value[k] = left[close[k]!]!;
  }
  const gradeEffect = effects.grade(query.grade);
  const timeOf = new Map(months.map((month) => {
    const table = monthLikeness(month);
    const near = new Float64Array(count);
    for (let k = 0; k < count; k++) near[k] = table.of(from[start + close[k]!]!, until[start + close[k]!]!);
    return [month, {effect: effects.made(month, month), weights: near}];
  }));
  const own = new Float64Array(count);
  const all = new Float64Array(count);
  const bells = possible.map((p): Branching => {
    const time = timeOf.get(p.month)!;
    const table = makerTables.get(p.maker)!;
    for (let k = 0; k < own.length; k++) own[k] = plain[k]! * table[maker[start + close[k]!]!]! * time.weights[k]!;
    const {like, effective, low, middle, high} = quantilesOf(value, own);
    for (let k = 0; k < own.length; k++) all[k]! += p.chance * own[k]!;
    const width = (seen: number) => Math.max(leastWidth, Math.sqrt(((effective * (seen / t4At80) ** 2 + spreadWorth * spread ** 2) / (effective + spreadWorth)) * (1 + 1.5 / Math.max(1, effective))));
    const at = middle + effects.trust * (effects.maker(p.maker) + time.effect + gradeEffect);
    return {possible: p, share: p.chance, at, left: width(middle - low), right: width(high - middle), like};
  });
  const {sum, like} = quantilesOf(value, all);
  return {bells, like, rows: close.map((j) => start + j), shares: all.map((w) => w / sum)};
}

/**
 * Sum of weights, how many good comparisons they amount to (no more than their effective number, nor than the sum of their roots: a sale that counts a quarter
 * is half a comparison, since it is corrected for its differences), and the quantiles at 20, 50 and 80 in 100 of ascending values, each half way into its own weight.
 */
function quantilesOf(values: Float64Array, weights: Float64Array): {sum: number; like: number; effective: number; low: number; middle: number; high: number} {
  let [sum, squares, roots] = [0, 0, 0];
  for (let k = 0; k < weights.length; k++) {
    sum += weights[k]!;
    squares += weights[k]! ** 2;
    roots += Math.sqrt(weights[k]!);
  }
  const effective = squares > 0 ? (sum * sum) / squares : 0;
  const found: number[] = [];
  let upTo = 0;
  let before = -1;
  let beforeAt = 0;
  for (let k = 0; k < weights.length && found.length < 3; k++) {
    if (!(weights[k]! > 0)) continue;
    const at = (upTo + weights[k]! / 2) / sum;
    while (found.length < 3 && at >= aims[found.length]!) {
      const aim = aims[found.length]!;
      found.push(before < 0 ? values[k]! : values[before]! + ((values[k]! - values[before]!) * (aim - beforeAt)) / (at - beforeAt));
    }
    upTo += weights[k]!;
    before = k;
    beforeAt = at;
  }
  while (found.length < 3) found.push(before < 0 ? 0 : values[before]!);
  return {sum, like: Math.min(effective, roots), effective, low: found[0]!, middle: found[1]!, high: found[2]!};
}

const aims = [0.2, 0.5, 0.8] as const;

/** Places of the heaviest weights in the order given, nothing of weight 0; a few more than asked for, as ties fall. */
function heaviest(weights: Float64Array, order: Int32Array, count: number): Int32Array {
  let most = 0;
  let some = 0;
  for (let j = 0; j < weights.length; j++) {
    if (weights[j]! > most) most = weights[j]!;
    if (weights[j]! > 0) some++;
  }
  const kept = (least: number) => {
    const places = new Int32Array(weights.length);
    let n = 0;
    for (const j of order) if (weights[j]! > 0 && weights[j]! >= least) places[n++] = j;
    return places.slice(0, n);
  };
  if (some <= count) return kept(0);
  const bins = new Int32Array(2048);
  const binOf = (w: number) => Math.min(2047, Math.floor((w / most) * 2048));
  for (let j = 0; j < weights.length; j++) if (weights[j]! > 0) bins[binOf(weights[j]!)]!++;
  let bin = 2047;
  for (let n = bins[bin]!; bin > 0 && n < count; n += bins[--bin]!);
  return kept((bin / 2048) * most).slice(0, 4 * count);
}

/** Places of the heaviest shares, heaviest first. */
export function heaviestPlaces(shares: Float64Array, count: number): number[] {
  const found: number[] = [];
  shares.forEach((share, k) => {
    if (!(share > 0) || (found.length === count && share <= shares[found.at(-1)!]!)) return;
    let place = found.length;
    while (place > 0 && shares[found[place - 1]!]! < share) place--;
    found.splice(place, 0, k);
    if (found.length > count) found.pop();
  });
  return found;
}

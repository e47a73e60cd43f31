// What sets prices apart, learned from many sales at once: kind, maker, time of making, grade, channel and the drift of prices.
import {huberRegression} from "../num/huber.ts";
import {effectiveNumber} from "../num/weighted.ts";
import {noMonth, type Columns} from "./columns.ts";
import {planOf, type Part} from "./effect-plan.ts";
import type {Query} from "./query.ts";

/** What a price is made up of, in logarithms; each is a difference from the average sale. */
export interface Effects {
  /** How far sales are corrected by them: 0 with few sales, towards 1 with many. */
  readonly trust: number;
  maker(maker: number): number;
  made(from: number, until: number): number;
  grade(grade: number): number;
  /** A year's drift of prices beyond the index. */
  readonly drift: number;
  /** The whole of what a row is expected to differ from the average sale of its kind, drift and channel included. */
  row(i: number): number;
}

const mostRows = 3000;
/** Effective sales from which on corrections are made at all, and how many more it takes to trust them half. */
const leastSales = 12;
const halfTrust = 10;
const otherKindWeight = 0.3;

/** Learns from sales of a kind, newest first, and from other kinds where those are few; `skip` leaves rows out. */
export function learnEffects(columns: Columns, kind: number, skip?: (i: number) => boolean): Effects {
  const rows = rowsFor(columns, kind, skip);
  const weights = Float64Array.from(rows, (i) => columns.fresh[i]! * (columns.kind[i] === kind ? 1 : otherKindWeight));
  const sales = effectiveNumber(weights);
  const trust = sales > leastSales ? (sales - leastSales) / (sales - leastSales + halfTrust) : 0;
  if (trust === 0) return nothing;
  const plan = planOf(columns, rows, kind);
  const design = Array.from({length: plan.width}, () => new Float64Array(rows.length));
  const means = new Float64Array(plan.width);
  const known = new Float64Array(plan.width);
  rows.forEach((row, i) =>
    plan.fill(row, (k, value) => {
      design[k]![i] = value;
    }),
  );
  // What is unknown of a sale stands at the average of the sales in which it is known.
  rows.forEach((row, i) => {
    for (const [start, end] of plan.knownParts(row)) for (let k = start; k < end; k++) {
      means[k]! += weights[i]! * design[k]![i]!;
      known[k]! += weights[i]!;
    }
  });
  for (let k = 0; k < plan.width; k++) means[k] = known[k]! > 0 ? means[k]! / known[k]! : 0;
  rows.forEach((row, i) => {
    const parts = plan.knownParts(row);
    for (let k = 0; k < plan.width; k++) design[k]![i] = parts.some(([start, end]) => k >= start && k < end) ? design[k]![i]! - means[k]! : 0;
  });
  const ones = new Float64Array(rows.length).fill(1);
  const fit = huberRegression([ones, ...design], Float64Array.from(rows, (i) => columns.log[i]!), {weights, expected: [Infinity, ...plan.expected], tolerance: 1e-3, mostRounds: 8});
  if (!fit) return nothing;
  const coefficients = fit.coefficients.subarray(1);
  const part = (fill: (add: (k: number, value: number) => void) => void, [start, end]: Part) => {
    let sum = 0;
    for (let k = start; k < end; k++) sum -= coefficients[k]! * means[k]!;
    fill((k, value) => (sum += coefficients[k]! * value));
    return sum;
  };
  const drift = -coefficients[plan.parts.drift[0]]!;
  const maker = remembered((m) => part((add) => plan.maker(m, add), plan.parts.maker));
  const spans = remembered((key) => part((add) => plan.made(key % keySpan, Math.floor(key / keySpan) + (key % keySpan), add), plan.parts.made));
  const made = (from: number, until: number) => (from === noMonth ? 0 : from < 0 ? part((add) => plan.made(from, until, add), plan.parts.made) : spans((until - from) * keySpan + from));
  const grade = remembered((g) => (g === 0 ? 0 : part((add) => plan.grade(g, add), plan.parts.grade)));
  const channel = remembered((c) => (c === 0 ? 0 : part((add) => plan.channel(c, add), plan.parts.channel)));
  return {
    trust, maker, made, grade, drift,
    row: (i) => maker(columns.maker[i]!) + made(columns.from[i]!, columns.until[i]!) + grade(columns.grade[i]!) + channel(columns.channel[i]!) - drift * columns.age[i]!,
  };
}

/** What a garment's maker and time are expected to differ by, over all it may be. */
export function expectedEffects(effects: Effects, {possible}: Query): {maker: number; made: number} {
  let [maker, made] = [0, 0];
  for (const p of possible) {
    maker += p.chance * effects.maker(p.maker);
    made += p.chance * effects.made(p.month, p.month);
  }
  return {maker, made};
}

/** All that a garment is expected to differ from the average sale by. */
export function sumOver(effects: Effects, query: Query): number {
  const {maker, made} = expectedEffects(effects, query);
  return maker + made + effects.grade(query.grade);
}

const nothing: Effects = {trust: 0, maker: () => 0, made: () => 0, grade: () => 0, drift: 0, row: () => 0};

/** Months of an axis from 1900 on, with room. */
const keySpan = 65_536;

/** Asked a hundred thousand times for a few answers. */
function remembered(of: (key: number) => number): (key: number) => number {
  const known = new Map<number, number>();
  return (key) => {
    let value = known.get(key);
    if (value === undefined) known.set(key, (value = of(key)));
    return value;
  };
}

function rowsFor({kind, kindRows, age}: Columns, wanted: number, skip?: (i: number) => boolean): number[] {
  const newest = (rows: number[]) => rows.filter((i) => !skip?.(i)).sort((a, b) => age[a]! - age[b]! || a - b);
  const span = kindRows[wanted]!;
  const own = newest(Array.from({length: span.end - span.start}, (_, j) => span.start + j)).slice(0, mostRows);
  const room = mostRows - own.length;
  if (room === 0) return own;
  return [...own, ...newest(Array.from(kind.keys()).filter((i) => kind[i] !== wanted)).slice(0, room)];
}

// What sets prices apart, learned from many sales at once: kind, maker, time of making, grade, channel and the drift of prices.
import {huberRegression} from "../num/huber.ts";
import {effectiveNumber} from "../num/weighted.ts";
import {noMonth, type Columns} from "./columns.ts";

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

/** Own choices, docs/decisions/0021-worth.md: how far effects are expected to lie from the average (standard deviations of the logarithm). */
const expected = {kind: 0.8, maker: 0.6, madeLine: 0.5, made: 0.4, gradeLine: 0.3, grade: 0.15, channel: 0.3, drift: 0.08};
const mostRows = 3000;
const most = {kind: 10, maker: 24, channel: 6};
/** Effective sales from which on corrections are made at all, and how many more it takes to trust them half. */
const leastSales = 12;
const halfTrust = 10;
const otherKindWeight = 0.3;
/** Years between the bends of the curve over the time of making. */
const bend = 8;

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

type Part = readonly [start: number, end: number];
type Add = (k: number, value: number) => void;

function rowsFor({kind, kindRows, age}: Columns, wanted: number, skip?: (i: number) => boolean): number[] {
  const newest = (rows: number[]) => rows.filter((i) => !skip?.(i)).sort((a, b) => age[a]! - age[b]! || a - b);
  const span = kindRows[wanted]!;
  const own = newest(Array.from({length: span.end - span.start}, (_, j) => span.start + j)).slice(0, mostRows);
  const room = mostRows - own.length;
  if (room === 0) return own;
  return [...own, ...newest(Array.from(kind.keys()).filter((i) => kind[i] !== wanted)).slice(0, room)];
}

/** Which column means what. */
function planOf(columns: Columns, rows: readonly number[], kind: number) {
  const kinds = commonest(rows.map((i) => columns.kind[i]!).filter((k) => k !== kind), most.kind, false);
  const makers = commonest(rows.map((i) => columns.maker[i]!), most.maker, true);
  const channels = commonest(rows.map((i) => columns.channel[i]!).filter((c) => c !== 0), most.channel, false);
  const years = rows.filter((i) => columns.from[i] !== noMonth).map((i) => yearAt((columns.from[i]! + columns.until[i]!) / 2));
  const firstBend = years.length === 0 ? 0 : Math.floor(Math.min(...years) / bend);
  const bends = years.length === 0 ? 0 : Math.ceil(Math.max(...years) / bend) - firstBend + 1;
  let width = 0;
  const next = (count: number): Part => [width, (width += count)];
  const parts = {kind: next(kinds.size), maker: next(makers.size + 1), made: next(1 + bends), grade: next(7), channel: next(channels.size), drift: next(1)};
  const middleYear = years.length === 0 ? 0 : years.reduce((sum, year) => sum + year, 0) / years.length;
  const maker = (m: number, add: Add) => add(parts.maker[0] + (makers.get(m) ?? makers.size), 1);
  const made = (from: number, until: number, add: Add) => {
    const bent = new Map<number, number>();
    // A range of making counts as its months do on average; five of them are near enough.
    for (let j = 0; j < 5; j++) {
      const year = yearAt(from + ((until - from) * (j + 0.5)) / 5);
      const place = Math.min(bends - 1, Math.max(0, year / bend - firstBend));
      const low = Math.min(bends - 2, Math.floor(place));
      if (bends > 1) {
        bent.set(low, (bent.get(low) ?? 0) + (low + 1 - place) / 5);
        bent.set(low + 1, (bent.get(low + 1) ?? 0) + (place - low) / 5);
      }
    }
    add(parts.made[0], (yearAt((from + until) / 2) - middleYear) / 10);
    for (const [at, value] of bent) add(parts.made[0] + 1 + at, value);
  };
  const grade = (g: number, add: Add) => {
    add(parts.grade[0], 3.5 - g);
    add(parts.grade[0] + g, 1);
  };
  const channel = (c: number, add: Add) => {
    const at = channels.get(c);
    if (at !== undefined) add(parts.channel[0] + at, 1);
  };
  return {
    width, parts, maker, made, grade, channel,
    expected: [
      ...fill(kinds.size, expected.kind), ...fill(makers.size + 1, expected.maker), expected.madeLine, ...fill(bends, expected.made), expected.gradeLine, ...fill(6, expected.grade), ...fill(channels.size, expected.channel), expected.drift,
    ],
    fill(i: number, add: Add) {
      const other = kinds.get(columns.kind[i]!);
      if (other !== undefined) add(parts.kind[0] + other, 1);
      maker(columns.maker[i]!, add);
      if (columns.from[i] !== noMonth) made(columns.from[i]!, columns.until[i]!, add);
      if (columns.grade[i] !== 0) grade(columns.grade[i]!, add);
      if (columns.channel[i] !== 0) channel(columns.channel[i]!, add);
      add(parts.drift[0], columns.age[i]!);
    },
    knownParts(i: number): Part[] {
      return [parts.kind, parts.maker, parts.drift, ...(columns.from[i] === noMonth ? [] : [parts.made]), ...(columns.grade[i] === 0 ? [] : [parts.grade]), ...(columns.channel[i] === 0 ? [] : [parts.channel])];
    },
  };
}

const fill = (count: number, value: number) => new Array<number>(count).fill(value);
const yearAt = (month: number) => 1900 + month / 12;

/** The commonest values with their places, those that occur twice at least unless all are wanted. */
function commonest(values: readonly number[], count: number, all: boolean): Map<number, number> {
  const times = new Map<number, number>();
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1);
  const sorted = [...times].filter(([, n]) => all || n > 1).sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  return new Map(sorted.slice(0, count).map(([value], place) => [value, place]));
}

// Which column of the fit means what: kinds, makers, a bent line over the time of making, grades, channels, and the drift.
import {noMonth, type Columns} from "./columns.ts";

/** First column of a part, and one past its last. */
export type Part = readonly [start: number, end: number];
type Add = (k: number, value: number) => void;

/** Own choices, docs/decisions/0021-worth.md: how far effects are expected to lie from the average (standard deviations of the logarithm). */
const expected = {kind: 0.8, maker: 0.6, madeLine: 0.5, made: 0.4, gradeLine: 0.3, grade: 0.15, channel: 0.3, drift: 0.08};
const most = {kind: 10, maker: 24, channel: 6};
/** Years between the bends of the curve over the time of making. */
const bend = 8;

/** Which column means what. */
export function planOf(columns: Columns, rows: readonly number[], kind: number) {
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

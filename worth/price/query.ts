// A garment as the sales are asked for it: codes instead of names, and the times and makers it may be of.
import {grades} from "../../state/model.ts";
import type {Subject, YearOdds} from "../subject.ts";
import {noMonth, type Columns} from "./columns.ts";

/** One thing the garment may be. */
export interface Possible {
  readonly chance: number;
  /** Month in the middle of its years. */
  readonly month: number;
  readonly years: readonly [first: number, last: number];
  /** Code of a maker; 0 unknown, -1 never sold. */
  readonly maker: number;
  /** As the subject names it. */
  readonly makerName: string | null;
}

export interface Query {
  readonly kind: number;
  readonly lot: number;
  readonly grade: number;
  readonly size: string;
  readonly possible: readonly Possible[];
  /** True when nothing is known of the time and the sales' own times stand in. */
  readonly timeUnknown: boolean;
}

const mostTimes = 24;
const mostMakers = 3;
const trifle = 1e-4;

/** Null when no sale of the kind is kept. */
export function queryOf(columns: Columns, subject: Subject): Query | null {
  const kind = columns.kinds.find(subject.kind);
  if (kind < 0 || columns.kindRows[kind]!.end === 0) return null;
  const known = subject.years?.shares.some((share) => share > 0) ? subject.years : null;
  const times = known ? timesOf(known) : usualTimes(columns, kind);
  const makers = makersOf(subject);
  return {
    kind,
    lot: columns.lots.find(subject.lot),
    grade: subject.grade === null ? 0 : grades.indexOf(subject.grade) + 1,
    size: subject.size,
    possible: times.flatMap(({chance, years}) => makers.map(({maker, probability}) => ({chance: chance * probability, years, month: middleOf(years), maker: columns.makers.find(maker), makerName: maker}))),
    timeUnknown: known === null,
  };
}

/** Stretches of years with their chances, for a garment of a kind whose time is not known: as the kind's sales are. */
export const usualTimes = (columns: Columns, kind: number): Time[] => timesOf(timesOfSales(columns, kind));

export const middleOf = ([first, last]: readonly [number, number]): number => Math.round(((first + last) / 2 - 1900) * 12) + 6;

export interface Time {
  readonly chance: number;
  readonly years: readonly [first: number, last: number];
}

/** Makers with their probabilities, the likeliest three; the rest is shared out among them. */
function makersOf({makers}: Subject): {maker: string | null; probability: number}[] {
  const some = makers.filter(({probability}) => probability > 0).sort((a, b) => b.probability - a.probability).slice(0, mostMakers);
  const total = some.reduce((sum, {probability}) => sum + probability, 0);
  return some.length === 0 ? [{maker: null, probability: 1}] : some.map(({maker, probability}) => ({maker, probability: probability / total}));
}

/** Stretches of years with their chances: single years, or as few years together as leave no more than two dozen. */
function timesOf({first, shares}: YearOdds): Time[] {
  const total = shares.reduce((sum, share) => sum + share, 0);
  const years = shares.flatMap((share, i) => (share > trifle * total ? [{year: first + i, share}] : []));
  for (let width = 1; ; width++) {
    const stretches = new Map<number, {share: number; years: [number, number]}>();
    for (const {year, share} of years) {
      const key = Math.floor(year / width);
      const known = stretches.get(key);
      stretches.set(key, known ? {share: known.share + share, years: [known.years[0], year]} : {share, years: [year, year]});
    }
    if (stretches.size > mostTimes) continue;
    const kept = [...stretches.values()];
    const sum = kept.reduce((all, {share}) => all + share, 0);
    return kept.map(({share, years: span}) => ({chance: share / sum, years: span}));
  }
}

function timesOfSales({kindRows, from, until, fresh}: Columns, kind: number): YearOdds {
  const sums = new Map<number, number>();
  for (let i = kindRows[kind]!.start; i < kindRows[kind]!.end; i++) {
    if (from[i] === noMonth) continue;
    const year = 1900 + Math.floor((from[i]! + until[i]!) / 24);
    sums.set(year, (sums.get(year) ?? 0) + fresh[i]!);
  }
  // No sale has a time: any one year will do, since time then sets nothing apart.
  if (sums.size === 0) return {first: 1960, shares: [1]};
  const first = Math.min(...sums.keys());
  return {first, shares: Array.from({length: Math.max(...sums.keys()) - first + 1}, (_, i) => sums.get(first + i) ?? 0)};
}

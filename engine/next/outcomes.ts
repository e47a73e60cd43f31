// What a look at a mark could show, by month: strays counted, cases that no seen mark told apart averaged out.
import {codeOutcomes} from "../mark/coded.ts";
import {outcome, type Outcome, type ReadyMark} from "../mark/ready-mark.ts";
import {affine, sum} from "../num/vector.ts";
import type {ReadyBook} from "../infer/ready-book.ts";
import {anyOther, type Case, type CircumstanceName} from "../rule/when.ts";
import {prepared, type Prepared} from "./information.ts";

interface Known {
  /** The circumstances that rules of the mark ask for, and the markets they tell apart. */
  readonly asked: readonly CircumstanceName[];
  readonly markets: readonly string[];
  readonly byCase: Map<string, Prepared>;
}

const byMark = new WeakMap<ReadyMark, Known>();

function knownOf(mark: ReadyMark): Known {
  let known = byMark.get(mark);
  if (!known) {
    byMark.set(mark, (known = {asked: mark.told.names(), markets: mark.told.values("market"), byCase: new Map()}));
  }
  return known;
}

/** Where garments were sold, as far as a case leaves it open. */
export interface OpenMarkets {
  readonly weights: Readonly<Record<string, number>>;
  /** Markets that seen marks told apart: "any other" is none of them. */
  readonly apart: readonly string[];
}

/**
 * The outcomes of a mark in a case; remembered.
 * @param pieceStray  chance that the mark's piece is stray, when nothing on it was seen; else 0
 */
export function outcomesOf(mark: ReadyMark, in_: Case, markets: OpenMarkets, pieceStray: number): Prepared {
  const {asked, markets: told, byCase} = knownOf(mark);
  const open = told.length > 0 && (in_.market === undefined || in_.market === anyOther);
  const circumstances = asked.map((name) => (name === "market" && open ? `${Object.entries(markets.weights).join()} but ${markets.apart.join()}` : (in_[name] ?? "")));
  const key = `${pieceStray}|${circumstances.join("|")}`;
  let found = byCase.get(key);
  if (!found) {
    const n = mark.axis.until - mark.axis.from + 1;
    const spread = open ? openMarkets(told, in_, markets) : [{case: in_, weight: 1}];
    const outcomes = averaged(spread.map(({case: each, weight}) => ({outcomes: mark.outcomes(each), weight})));
    const stray = 1 - (1 - mark.mark.stray) * (1 - pieceStray);
    byCase.set(key, (found = prepared(mixStrays(outcomes, stray, n), n)));
  }
  return found;
}

function openMarkets(named: readonly string[], in_: Case, {weights, apart}: OpenMarkets): {case: Case; weight: number}[] {
  const left = Object.entries(weights).filter(([market]) => in_.market === undefined || !apart.includes(market));
  const all = left.reduce((sum, [, w]) => sum + w, 0);
  if (!(all > 0)) return [{case: {...in_, market: anyOther}, weight: 1}];
  const told = left.filter(([market]) => named.includes(market)).map(([market, w]) => ({case: {...in_, market}, weight: w / all}));
  const rest = Math.max(0, 1 - told.reduce((sum, {weight}) => sum + weight, 0));
  return [...told, {case: {...in_, market: anyOther}, weight: rest}].filter(({weight}) => weight > 1e-15);
}

function averaged(spread: readonly {outcomes: readonly Outcome[]; weight: number}[]): readonly Outcome[] {
  if (spread.length === 1) return spread[0]!.outcomes;
  const sums = new Map<string, Float64Array>();
  for (const {outcomes, weight} of spread) {
    for (const {name, at, chance} of outcomes) {
      let sum = sums.get(name);
      if (!sum) sums.set(name, (sum = new Float64Array(at ? Math.max(...at) + 1 : chance.length)));
      for (let i = 0; i < chance.length; i++) sum[at ? at[i]! : i]! += weight * chance[i]!;
    }
  }
  return [...sums].map(([name, chance]) => outcome(name, chance));
}

/** Counts a stray rate in: a stray mark shows each outcome as often as it is seen on average. */
export function mixStrays(outcomes: readonly Outcome[], stray: number, n: number): Outcome[] {
  return outcomes.map(({name, at, chance}) => outcome(name, affine(chance, 1 - stray), at, (stray * sum(chance)) / n));
}

const dates = new WeakMap<ReadyBook, Map<string, Prepared>>();

/** The dates that the rows of a label kind could show. */
export function dateOutcomes(book: ReadyBook, kind: string, in_: Case): Prepared {
  let known = dates.get(book);
  if (!known) dates.set(book, (known = new Map()));
  const dating = book.label!.dating(kind, in_);
  const key = `${kind}|${dating.key}`;
  let found = known.get(key);
  if (!found) {
    const layout = book.label!.kinds.get(kind)?.layout ?? [];
    const unreadable = layout.filter(({fields}) => fields.includes("date")).reduce((miss, {share}) => miss * (1 - share), 1);
    const kept = (share: Float64Array) => affine(share, 1 - unreadable);
    const outcomes = [
      ...[...dating.schemes].flatMap(([scheme, share]) => codeOutcomes(scheme, kept(share))),
      outcome("no date", affine(dating.unknown, 1 - unreadable, unreadable)),
    ];
    known.set(key, (found = prepared(outcomes, book.n)));
  }
  return found;
}

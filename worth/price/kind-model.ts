// Everything about the sales of one kind that does not depend on the garment: effects, what they leave, and how far off prices are when checked.
import {month, yearOf} from "../../engine/month/month.ts";
import {monthIndex} from "../../engine/units.ts";
import {conformalBound} from "../num/conformal.ts";
import {medianSpread} from "../num/weighted.ts";
import {below} from "./bell.ts";
import {noMonth, type Columns} from "./columns.ts";
import {learnEffects, type Effects} from "./effects.ts";
import {predict, type Rest} from "./predict.ts";
import {middleOf, usualTimes, type Query} from "./query.ts";

/** How far off the middle sales lay that were priced without themselves: |chance below - 1/2|, ascending, with weights. */
export interface Check {
  readonly scores: Float64Array;
  readonly weights: Float64Array;
}

export interface KindModel extends Rest {
  readonly check: Check;
}

/** So many of the newest sales of a kind are priced without themselves; half as many, from a part of the others, where a kind has tens of thousands: the first price must not take seconds. */
const mostChecked = 400;
const manySales = 10_000;
/** With fewer sales than this the effects are learned anew without each fifth that is checked: a sale would have a hand in its own price. */
const fewSales = 700;
const folds = 5;
/** A vague sale is priced over so many years or stretches of years. */
const mostYears = 12;

export function kindModel(columns: Columns, kind: number): KindModel {
  const rest = restOf(columns, kind, learnEffects(columns, kind));
  return {...rest, check: checkKind(columns, kind, rest)};
}

function restOf(columns: Columns, kind: number, effects: Effects): Rest {
  const {start, end} = columns.kindRows[kind]!;
  const left = Float64Array.from({length: end - start}, (_, j) => columns.log[start + j]! - effects.trust * effects.row(start + j));
  const order = Int32Array.from(left.keys()).sort((a, b) => left[a]! - left[b]!);
  return {effects, left, order, spread: Math.max(0.05, medianSpread(left))};
}

function checkKind(columns: Columns, kind: number, rest: Rest): Check {
  const {start, end} = columns.kindRows[kind]!;
  const rows = Array.from({length: end - start}, (_, j) => start + j).sort((a, b) => columns.age[a]! - columns.age[b]! || a - b).slice(0, end - start > manySales ? mostChecked / 2 : mostChecked);
  const stride = Math.ceil((end - start) / manySales);
  const few = end - start < fewSales;
  const withoutFold = few ? Array.from({length: folds}, (_, fold) => restOf(columns, kind, learnEffects(columns, kind, (i) => i % folds === fold))) : [];
  const usual = usualTimes(columns, kind).map(({chance, years}) => ({chance, month: middleOf(years)}));
  const scored = rows.map((i) => {
    const used = withoutFold[i % folds] ?? rest;
    const {bells} = predict(columns, used, asSubject(columns, i, usual), new Set([i]), stride);
    return {score: Math.abs(below(bells, columns.log[i]! + used.effects.trust * used.effects.drift * columns.age[i]!) - 0.5), weight: columns.fresh[i]!};
  });
  const known = scored.filter(({score}) => Number.isFinite(score)).sort((a, b) => a.score - b.score);
  return {scores: Float64Array.from(known, ({score}) => score), weights: Float64Array.from(known, ({weight}) => weight)};
}

/** A sale as if it were still to be sold. */
function asSubject(columns: Columns, i: number, usual: readonly {chance: number; month: number}[]): Query {
  const {from, until, maker, kind, lot, grade, size} = columns;
  const times = from[i] === noMonth ? usual : yearsBetween(from[i]!, until[i]!);
  return {
    kind: kind[i]!, lot: lot[i]!, grade: grade[i]!, size: columns.sizes.list[size[i]!]!, timeUnknown: from[i] === noMonth,
    possible: times.map((time) => ({...time, years: [0, 0], maker: maker[i]!, makerName: null})),
  };
}

/** Year by year, as a garment's own time is known, however exactly the sale's is. */
function yearsBetween(from: number, until: number): {chance: number; month: number}[] {
  const [first, last] = [yearOf(monthIndex(from)), yearOf(monthIndex(until))];
  const step = Math.ceil((last - first + 1) / mostYears);
  const found: {chance: number; month: number}[] = [];
  for (let year = first; year <= last; year += step) {
    const [start, end] = [Math.max(from, month(year, 1)), Math.min(until, month(year + step - 1, 12))];
    found.push({chance: (end - start + 1) / (until - from + 1), month: middleOf([year, year + step - 1])});
  }
  return found;
}

/** How far from the middle (in chance) a range must reach to hold `share` of sales; Infinity when the checked sales are too few to promise it. */
export const reachOf = ({scores, weights}: Check, share: number): number => conformalBound(scores, weights, 1, share);

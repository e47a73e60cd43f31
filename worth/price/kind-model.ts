// Everything about the sales of one kind that does not depend on the garment: effects, what they leave, and how far off prices are when checked.
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

/** So many of the newest sales of a kind are priced without themselves. */
const mostChecked = 240;
/** With fewer sales than this the effects are learned anew without each fifth that is checked: a sale would have a hand in its own price. */
const fewSales = 700;
const folds = 5;

export function kindModel(columns: Columns, kind: number): KindModel {
  const rest = restOf(columns, kind, learnEffects(columns, kind));
  return {...rest, check: checkKind(columns, kind, rest)};
}

function restOf(columns: Columns, kind: number, effects: Effects): Rest {
  const {start, end} = columns.kindRows[kind]!;
  const left = Float64Array.from({length: end - start}, (_, j) => columns.log[start + j]! - effects.trust * effects.row(start + j));
  return {effects, left, spread: Math.max(0.05, medianSpread(left))};
}

function checkKind(columns: Columns, kind: number, rest: Rest): Check {
  const {start, end} = columns.kindRows[kind]!;
  const rows = Array.from({length: end - start}, (_, j) => start + j).sort((a, b) => columns.age[a]! - columns.age[b]! || a - b).slice(0, mostChecked);
  const few = end - start < fewSales;
  const withoutFold = few ? Array.from({length: folds}, (_, fold) => restOf(columns, kind, learnEffects(columns, kind, (i) => i % folds === fold))) : [];
  const usual = usualTimes(columns, kind).map(({chance, years}) => ({chance, month: middleOf(years)}));
  const scored = rows.map((i) => {
    const used = withoutFold[i % folds] ?? rest;
    const {bells} = predict(columns, used, asSubject(columns, i, usual), new Set([i]));
    return {score: Math.abs(below(bells, columns.log[i]! + used.effects.trust * used.effects.drift * columns.age[i]!) - 0.5), weight: columns.fresh[i]!};
  });
  const known = scored.filter(({score}) => Number.isFinite(score)).sort((a, b) => a.score - b.score);
  return {scores: Float64Array.from(known, ({score}) => score), weights: Float64Array.from(known, ({weight}) => weight)};
}

/** A sale as if it were still to be sold. */
function asSubject(columns: Columns, i: number, usual: readonly {chance: number; month: number}[]): Query {
  const {from, until, maker, kind, lot, grade, size} = columns;
  const times = from[i] === noMonth ? usual : monthsBetween(from[i]!, until[i]!);
  return {
    kind: kind[i]!, lot: lot[i]!, grade: grade[i]!, size: columns.sizes.list[size[i]!]!, timeUnknown: from[i] === noMonth,
    possible: times.map((time) => ({...time, years: [0, 0], maker: maker[i]!, makerName: null})),
  };
}

function monthsBetween(from: number, until: number): {chance: number; month: number}[] {
  const count = Math.min(12, 1 + Math.floor((until - from) / 12));
  return Array.from({length: count}, (_, j) => ({chance: 1 / count, month: Math.round(from + ((until - from) * (j + 0.5)) / count)}));
}

/** How far from the middle (in chance) a range must reach to hold `share` of sales; Infinity when the checked sales are too few to promise it. */
export const reachOf = ({scores, weights}: Check, share: number): number => conformalBound(scores, weights, 1, share);

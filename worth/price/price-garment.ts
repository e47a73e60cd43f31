// The price of one garment as an answer: with its ranges, times, reasons, offer, and what looking further is worth.
import type {LooksWorth, WorthAnswer} from "../answer.ts";
import {cautionsFor} from "../caution.ts";
import {indexUntil} from "../index/price-index.ts";
import type {Terms} from "../model.ts";
import {shareOf} from "../money/money.ts";
import {worthOfKnowing, worthOfLooking} from "../offer/looks.ts";
import {offerFor, profitOf} from "../offer/offer.ts";
import {roughly, sayLike, sayRange, sayShare} from "../say.ts";
import type {Look, Subject, YearOdds} from "../subject.ts";
import {printMonth} from "../../engine/index.ts";
import {quantileOf} from "./bell.ts";
import {branchesOf} from "./branches.ts";
import type {Comparables} from "./comparables.ts";
import type {KindModel} from "./kind-model.ts";
import {predict, type Branching, type Prediction} from "./predict.ts";
import {queryOf, type Query} from "./query.ts";
import {rangeOf, spreadOf} from "./range.ts";
import {driversOf, usedSales} from "./reasons.ts";
import {trendOf} from "./trend.ts";

export interface PriceOptions {
  readonly terms: Terms;
  /** Cents asked of the buyer; null or left out: none. */
  readonly asked?: number | null;
  /** Cents paid already. */
  readonly paid?: number | null;
  readonly looks?: readonly Look[];
  /** ISO 3166 letters of the owner's country, for the cautions. */
  readonly country?: string | null;
}

/** Sales must amount to so many good comparisons before a price is named. Own choice, docs/decisions/0021-worth.md. */
export const neededLike = 3;

/**
 * Prices a garment from sales, over all the times it may be from.
 * @param options.terms  their currency must be the sales' own
 * @returns  an answer without a price, with the reason, when the sales amount to too little
 * @cost  at most 30 ms from 100,000 sales, once the first garment of its kind was priced
 */
export function priceGarment(comparables: Comparables, subject: Subject, options: PriceOptions): WorthAnswer {
  if (options.terms.currency !== comparables.currency) throw new RangeError(`terms in ${options.terms.currency}, sales in ${comparables.currency}`);
  const found = findPrice(comparables, subject);
  if (!found || found.prediction.like < neededLike) return tooFew(comparables, subject, found?.prediction.like ?? 0, options);
  const {query, model, prediction} = found;
  const {terms, asked = null, paid = null, looks = []} = options;
  const {bells} = prediction;
  const price = rangeOf(bells, model.check);
  const branches = branchesOf(bells, model.check, terms, neededLike / 2);
  const spread = spreadOf(bells, model.check);
  return {
    ...headOf(comparables, subject, prediction.like, options),
    enough: true,
    words: sayPrice(price, branches, terms.currency),
    price, branches,
    years: yearsOf(bells),
    drivers: driversOf(model.effects, query, subject),
    used: usedSales(comparables.columns, model.effects, model.left, query, prediction),
    method: methodOf(comparables, model, query),
    trend: trendOf(comparables.columns, model.effects, model.left, query, prediction),
    offer: offerFor({typical: price.typical, mean: price.mean, below: spread.below}, terms, asked, paid),
    looks: asked === null || query.timeUnknown ? null : worthOfLooks(bells, model, subject.years!, looks, terms, asked),
  };
}

/** What is known of the price of a garment; null when no sale of its kind is kept. */
export function findPrice(comparables: Comparables, subject: Subject): {query: Query; model: KindModel; prediction: Prediction} | null {
  const {columns} = comparables;
  const query = queryOf(columns, subject);
  if (!query) return null;
  const model = comparables.model(query.kind);
  const own = subject.garment === null ? [] : comparables.rowsOf(subject.garment);
  return {query, model, prediction: predict(columns, model, query, new Set(own))};
}

function headOf({currency, today, size, columns, leftOut}: Comparables, subject: Subject, like: number, {country = null}: PriceOptions): Pick<WorthAnswer, "currency" | "on" | "sales" | "cautions"> {
  const kind = columns.kinds.find(subject.kind);
  const rows = kind < 0 ? {start: 0, end: 0} : columns.kindRows[kind]!;
  return {currency, on: today, sales: {total: size, kind: rows.end - rows.start, like, needed: neededLike, leftOut: leftOut.map((out) => ({...out}))}, cautions: cautionsFor(country)};
}

function tooFew(comparables: Comparables, subject: Subject, like: number, options: PriceOptions): WorthAnswer {
  const head = headOf(comparables, subject, like, options);
  const kind = subject.kind.trim() === "" ? "its kind (none is named)" : subject.kind;
  const words = head.sales.kind === 0 ? [`No sales of ${kind} are kept, so there is no price to name.`] : [`Too few sales: those of ${kind} amount to ${sayLike(like)} good comparisons, and it takes ${neededLike} at least.`];
  return {
    ...head, enough: false, words: [...words, "Write down more sales of such things, or name what is still open: maker, state, size."], price: null, branches: [], years: [], drivers: [], used: [],
    method: {way: "sales side by side", corrected: 0, checked: 0, index: indexOf(comparables), words: []}, trend: null, offer: null, looks: null,
  };
}

function sayPrice(price: NonNullable<WorthAnswer["price"]>, branches: WorthAnswer["branches"], currency: string): string[] {
  const each = branches.length < 2 ? [] : branches.map(({words, share, price: own}) => `If it is from ${words} (${sayShare(share)}): ${own ? sayRange(own, currency) : "too few sales to say"}.`);
  return [`As it stands: ${sayRange(price, currency)}.`, ...each];
}

function yearsOf(bells: readonly Branching[]): WorthAnswer["years"] {
  const stretches = byStretch(bells);
  return stretches.flatMap(({years: [first, last], bells: own}) => {
    const share = own.reduce((sum, bell) => sum + bell.share, 0) / (last - first + 1);
    const typical = own.some(({like}) => like >= neededLike / 2) ? Math.round(Math.exp(quantileOf(own, 0.5))) : null;
    return Array.from({length: last - first + 1}, (_, i) => ({year: first + i, share, typical}));
  });
}

function byStretch(bells: readonly Branching[]): {years: readonly [number, number]; bells: Branching[]}[] {
  const found = new Map<number, {years: readonly [number, number]; bells: Branching[]}>();
  for (const bell of bells) {
    const known = found.get(bell.possible.month);
    if (known) known.bells.push(bell);
    else found.set(bell.possible.month, {years: bell.possible.years, bells: [bell]});
  }
  return [...found.values()].sort((a, b) => a.years[0] - b.years[0]);
}

function indexOf({index}: Comparables): WorthAnswer["method"]["index"] {
  return index && {name: index.name, source: index.source, status: index.status, until: printMonth(indexUntil(index))};
}

function methodOf(comparables: Comparables, {effects, check}: KindModel, {timeUnknown}: Query): WorthAnswer["method"] {
  const {index, currency} = comparables;
  return {
    way: effects.trust > 0 ? "sales corrected for their differences" : "sales side by side",
    corrected: effects.trust,
    checked: check.scores.length,
    index: indexOf(comparables),
    words: [
      effects.trust > 0 ? "Each sale counts by how like it is, in money of today, corrected for maker, time of making and state as far as the sales teach it." : "Each sale counts by how like it is, in money of today; there are too few to correct them for their differences.",
      `The ranges are as wide as they had to be for ${check.scores.length} sales that were priced as if they had not been sold.`,
      ...(index ? [] : [`No price index is at hand for ${currency}: prices count as they were paid.`]),
      ...(timeUnknown ? ["Nothing is known of when it was made: it counts as being of the times that such sales are from."] : []),
    ],
  };
}

/** What buying earns beyond the wanted margin, year by year, and what looks make of it. */
function worthOfLooks(bells: readonly Branching[], {check}: KindModel, {first, shares}: YearOdds, looks: readonly Look[], terms: Terms, asked: number): LooksWorth {
  const stretches = byStretch(bells).map(({years, bells: own}) => {
    const mean = Math.round(spreadOf(own, check).mean);
    return {years, earns: profitOf(mean, asked, terms) - shareOf(mean - shareOf(mean, terms.taxShare), terms.margin)};
  });
  const stretchOf = (year: number) => stretches.reduce((best, s, i) => (distance(s.years, year) < distance(stretches[best]!.years, year) ? i : best), 0);
  const inStretches = (odds: YearOdds) => {
    const states = new Float64Array(stretches.length);
    odds.shares.forEach((share, i) => {
      if (share > 0) states[stretchOf(odds.first + i)]! += share;
    });
    return states;
  };
  const decision = {chances: inStretches({first, shares}), earns: stretches.map(({earns}) => earns)};
  const worths = looks.map(({mark, name, effort, opensSeam, outcomes}) => {
    const {worth, turns} = worthOfLooking(decision, outcomes.map(({probability, years}) => ({chance: probability, states: inStretches(years)})));
    return {mark, name, effort, opensSeam, turns: Math.min(1, turns), worth: Math.round(worth)};
  });
  worths.sort((a, b) => b.worth - a.worth || a.effort - b.effort || (a.mark < b.mark ? -1 : 1));
  const knowing = Math.round(worthOfKnowing(decision));
  const [best] = worths;
  const words =
    knowing === 0
      ? `Whatever year it is from, the choice at ${roughly(asked, terms.currency)} stays the same: looking further earns nothing.`
      : best && best.worth > 0
        ? `Look at ${best.name} first: on average that is worth ${roughly(best.worth, terms.currency)} before you pay ${roughly(asked, terms.currency)}.`
        : `Knowing the year for certain would be worth ${roughly(knowing, terms.currency)} at most.`;
  return {asked, knowing, looks: worths, words};
}

const distance = ([first, last]: readonly [number, number], year: number) => Math.max(0, first - year, year - last);

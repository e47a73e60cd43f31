// The price of a rail or a bag: the sum over garments looked at, and over those that are not, taken to be like the ones that were drawn.
import type {LotAnswer} from "../answer.ts";
import {cautionsFor} from "../caution.ts";
import type {Terms} from "../model.ts";
import {split} from "../money/money.ts";
import {quantile} from "../num/hyndman-fan.ts";
import {offerFor} from "../offer/offer.ts";
import type {Comparables} from "../price/comparables.ts";
import {findPrice, neededLike} from "../price/price-garment.ts";
import {rangeOf, spreadOf} from "../price/range.ts";
import type {Subject} from "../subject.ts";
import {sayRange} from "../say.ts";
import {sumOfDraws, type Drawn} from "./sum.ts";

export interface LotOptions {
  readonly terms: Terms;
  /** Garments in the lot that nobody looked at. */
  readonly unexamined: number;
  /** Ids of the garments that were drawn blindly and stand for the unexamined ones; empty: all of them. */
  readonly sampled: readonly string[];
  readonly asked?: number | null;
  /** Uniform in [0, 1); a seeded generator gives the same answer again. */
  readonly random: () => number;
  readonly country?: string | null;
}

/** Prices a lot. Garments without enough sales count as nothing, and are counted. */
export function priceLot(comparables: Comparables, garments: readonly {readonly id: string; readonly subject: Subject}[], options: LotOptions): LotAnswer {
  const {terms, unexamined, sampled, asked = null, random, country = null} = options;
  const priced = garments.map(({id, subject}) => {
    const found = findPrice(comparables, subject);
    const like = found?.prediction.like ?? 0;
    if (!found || like < neededLike) return {id, like, range: null, steps: null};
    const {bells} = found.prediction;
    const spread = spreadOf(bells, found.model.check);
    return {id, like, range: rangeOf(bells, found.model.check), steps: Array.from({length: 50}, (_, j) => spread.at(0.02 * (j + 0.5)))};
  });
  const drawn = priced.map(({id, steps}): Drawn => ({steps: steps ?? [0], sampled: sampled.length === 0 || sampled.includes(id)}));
  const unpriced = priced.filter(({range}) => range === null).length;
  const nothing = unpriced === garments.length;
  const examinedTotal = nothing ? null : sumOfDraws(drawn, 0, random);
  const total = nothing || (unexamined > 0 && !drawn.some((one) => one.sampled)) ? null : unexamined === 0 ? examinedTotal : sumOfDraws(drawn, unexamined, random, pricesOf(comparables, garments.filter((_, i) => drawn[i]!.sampled).map(({subject}) => subject.kind)));
  const count = garments.length - unpriced + unexamined;
  const parts = partsOf(asked, [...priced.map(({range}) => range?.typical ?? 0), total && examinedTotal ? Math.max(0, total.range.mean - examinedTotal.range.mean) : 0]);
  return {
    currency: comparables.currency,
    on: comparables.today,
    garments: priced.map(({id, like, range}, i) => ({id, like, typical: range?.typical ?? null, low: range?.low ?? null, high: range?.high ?? null, part: parts?.[i] ?? null})),
    unexaminedPart: parts?.at(-1) ?? null,
    unexamined, unpriced,
    total: total?.range ?? null,
    examinedTotal: examinedTotal?.range ?? null,
    offer: total ? offerFor({typical: total.range.typical, mean: total.range.mean, below: total.below}, terms, asked, null, count) : null,
    way: "4,000 seeded draws: each garment brings one of its fifty steps; one not looked at is like one of those drawn blindly, like one not looked at that came before it, or, with one place among all these, like any sale of their kinds",
    words: wordsOf(garments.length, unexamined, unpriced, total && sayRange(total.range, comparables.currency)),
    cautions: [...cautionsFor(country), ...(unexamined > 0 ? ["What nobody looked at is taken to be like what was drawn blindly. Pieces picked from the top of a bag are not drawn blindly, and few say little of many."] : [])],
  };
}

/** Fifty equally likely prices of all sales of some kinds, in money of today. */
function pricesOf({columns: {kinds, kindRows, log}}: Comparables, wanted: readonly string[]): number[] {
  const logs = [...new Set(wanted.map((kind) => kinds.find(kind)))].flatMap((kind) => {
    const rows = kindRows[kind];
    return rows ? [...log.subarray(rows.start, rows.end)] : [];
  });
  const sorted = Float64Array.from(logs).sort();
  return sorted.length === 0 ? [] : Array.from({length: 50}, (_, j) => Math.round(Math.exp(quantile(sorted, 0.02 * (j + 0.5)))));
}

/** The asked price, shared out to the cent by what each part is likely to bring; null without an asked price or anything to go by. */
const partsOf = (asked: number | null, worths: readonly number[]): number[] | null => (asked === null || !worths.some((worth) => worth > 0) ? null : split(asked, worths));

function wordsOf(examined: number, unexamined: number, unpriced: number, total: string | null): string[] {
  const all = `${examined + unexamined} garments, ${examined} of them looked at`;
  return [
    total === null ? `${all}: there are too few sales to price them.` : `${all}: ${total} for the whole lot, sold one by one.`,
    ...(unpriced > 0 && total !== null ? [`${unpriced} of those looked at ${unpriced === 1 ? "has" : "have"} too few sales and ${unpriced === 1 ? "counts" : "count"} as nothing.`] : []),
  ];
}

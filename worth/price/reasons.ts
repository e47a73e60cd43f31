// What drove a price, and which sales it rests on.
import type {Driver, UsedSale} from "../answer.ts";
import {parseMonth, sayMonth} from "../../engine/index.ts";
import type {Sale} from "../model.ts";
import {sayYears} from "../say.ts";
import type {Subject} from "../subject.ts";
import type {Columns} from "./columns.ts";
import {expectedEffects, sumOver, type Effects} from "./effects.ts";
import {heaviestPlaces, type Prediction} from "./predict.ts";
import type {Query} from "./query.ts";

/** Differences from the average sale of its kind that are too small to name. */
const trifle = 0.02;
const mostUsed = 12;

/** What sets the garment apart from the average sale of its kind, strongest first. */
export function driversOf(effects: Effects, query: Query, subject: Subject): Driver[] {
  const {maker, made} = expectedEffects(effects, query);
  const likeliest = query.possible.reduce((best, p) => (p.chance > best.chance ? p : best));
  const times = query.possible.map(({years}) => years);
  const span = sayYears(Math.min(...times.map(([first]) => first)), Math.max(...times.map(([, last]) => last)));
  const drivers: Driver[] = [
    {what: "maker", words: likeliest.makerName === null ? "maker unknown" : `by ${likeliest.makerName}`, factor: factorOf(maker, effects)},
    ...(query.timeUnknown ? [] : [{what: "made" as const, words: `made ${span}`, factor: factorOf(made, effects)}]),
    ...(subject.grade === null ? [] : [{what: "grade" as const, words: `state: ${subject.grade}`, factor: factorOf(effects.grade(query.grade), effects)}]),
    {what: "sold", words: "a year's drift of such prices, inflation apart", factor: factorOf(effects.drift, effects)},
  ];
  return drivers.filter(({factor}) => Math.abs(Math.log(factor)) >= trifle).sort((a, b) => Math.abs(Math.log(b.factor)) - Math.abs(Math.log(a.factor)));
}

const factorOf = (effect: number, {trust}: Effects) => Math.exp(trust * effect);

/** The heaviest sales, with what each says this garment would bring. */
export function usedSales(columns: Columns, effects: Effects, left: Float64Array, query: Query, {rows, shares}: Prediction): UsedSale[] {
  const own = effects.trust * sumOver(effects, query);
  const {start} = columns.kindRows[query.kind]!;
  return heaviestPlaces(shares, mostUsed).map((k) => {
    const row = rows[k]!;
    const {id, sale} = columns.sales[row]!;
    return {id, share: shares[k]!, soldOn: sale.soldOn, price: sale.price, adjusted: Math.round(Math.exp(left[row - start]! + own)), words: saySale(sale)};
  });
}

/** "trousers, marrowfield, March 1968 to May 1970, very good, W 34 L 32, market stall" */
function saySale({kind, maker, lot, madeFrom, madeUntil, grade, size, channel}: Sale): string {
  const month = (text: string) => sayMonth(parseMonth(text)!);
  const made = madeFrom && madeUntil ? (madeFrom === madeUntil ? month(madeFrom) : `${month(madeFrom)} to ${month(madeUntil)}`) : madeFrom ? `from ${month(madeFrom)} on` : madeUntil ? `until ${month(madeUntil)}` : "time unknown";
  return [kind, maker ?? "maker unknown", lot ? `lot ${lot}` : "", made, grade ?? "state unknown", size, channel].filter((word) => word !== "").join(", ");
}

// A sale as it is typed, and read back: every slip told beside its field, and nothing of it kept until all can stand.
import {grades, type Grade} from "../../../state/model.ts";
import type {Sale} from "../../../worth/model.ts";
import {digitsOf} from "../../../worth/money/currencies.ts";
import {readAmount, typeAmount} from "../money.ts";
import {readMonth, typeMonth} from "./month-text.ts";

export interface SaleEntry {
  readonly soldOn: string;
  readonly price: string;
  readonly currency: string;
  readonly fees: string;
  readonly kind: string;
  /** As people say it. */
  readonly maker: string;
  readonly lot: string;
  readonly madeFrom: string;
  readonly madeUntil: string;
  readonly size: string;
  readonly grade: string;
  readonly channel: string;
  readonly note: string;
}

export type SaleSlips = Readonly<Partial<Record<keyof SaleEntry, string>>>;

/** Makers by the ids of their books, as people say them. */
export type Makers = ReadonlyMap<string, string>;

export const blankSale = (currency: string, today: string, kind = ""): SaleEntry => ({soldOn: today, price: "", currency, fees: "", kind, maker: "", lot: "", madeFrom: "", madeUntil: "", size: "", grade: "", channel: "", note: ""});

export function typeSale(sale: Sale, makers: Makers): SaleEntry {
  const {soldOn, price, fees, kind, maker, lot, size, grade, channel, note} = sale;
  return {
    soldOn, kind, size, channel, note,
    price: typeAmount(price),
    currency: price.currency,
    fees: fees ? typeAmount(fees) : "",
    maker: maker === null ? "" : (makers.get(maker) ?? maker),
    lot: lot ?? "",
    madeFrom: typeMonth(sale.madeFrom, "from"),
    madeUntil: typeMonth(sale.madeUntil, "until"),
    grade: grade ?? "",
  };
}

/**
 * @param today  no sale lies ahead of it
 * @returns      sale null when something cannot stand
 */
export function readSale(entry: SaleEntry, makers: Makers, today: string): {readonly sale: Sale | null; readonly slips: SaleSlips} {
  const slips: Partial<Record<keyof SaleEntry, string>> = {};
  const {currency} = entry;
  if (!/^\d{4}-\d{2}-\d{2}$/.test(entry.soldOn)) slips.soldOn = "The day it was sold";
  else if (entry.soldOn > today) slips.soldOn = "That day lies ahead";
  if (digitsOf(currency) === null) slips.currency = "Three letters of a currency, like USD, EUR or JPY";
  const price = readAmount(entry.price, currency);
  if (price.wrong) slips.price = price.wrong;
  else if (!price.cents) slips.price = "What the buyer paid for it";
  const fees = readAmount(entry.fees, currency);
  if (fees.wrong) slips.fees = fees.wrong;
  else if (fees.cents !== null && price.cents !== null && fees.cents > price.cents) slips.fees = "More than was paid for it";
  if (entry.kind.trim() === "") slips.kind = "What kind of garment it was";
  const [from, until] = [readMonth(entry.madeFrom, "from"), readMonth(entry.madeUntil, "until")];
  if (from.wrong) slips.madeFrom = from.wrong;
  if (until.wrong) slips.madeUntil = until.wrong;
  if (from.month && until.month && from.month > until.month) slips.madeUntil = "Before the time it is made from";
  else if (from.month && entry.soldOn !== "" && from.month > entry.soldOn.slice(0, 7)) slips.madeFrom = "After it was sold";
  if (Object.keys(slips).length > 0) return {sale: null, slips};
  const sale: Sale = {
    soldOn: entry.soldOn,
    price: {cents: price.cents!, currency},
    fees: fees.cents === null ? null : {cents: fees.cents, currency},
    kind: entry.kind.trim(),
    maker: makerOf(entry.maker, makers),
    lot: entry.lot.trim() || null,
    madeFrom: from.month,
    madeUntil: until.month,
    size: entry.size.trim(),
    grade: grades.find((grade): grade is Grade => grade === entry.grade) ?? null,
    channel: entry.channel.trim(),
    note: entry.note.trim(),
  };
  return {sale, slips};
}

/** The book of the maker that was named; any other name stays as it is. */
function makerOf(said: string, makers: Makers): string | null {
  const name = said.trim();
  if (name === "") return null;
  return [...makers].find(([id, title]) => [id, title].some((one) => one.toLowerCase() === name.toLowerCase()))?.[0] ?? name;
}

// The whole public face of the arithmetic of prices.
import type {LotAnswer, ShopBooks, WorthAnswer} from "./answer.ts";
import type {SaleRecord, Sale, Terms} from "./model.ts";
import type {Look, ShopGarment, Subject} from "./subject.ts";
import type {Problem} from "../engine/index.ts";

export * from "./answer.ts";
export type {Look, ShopGarment, Subject, YearOdds} from "./subject.ts";

/** Sales made ready once for pricing many garments: columns, what sets prices apart, and the check that sets the ranges. Keep it until a sale changes; made for one day and currency. */
export interface Comparables {
  readonly currency: string;
  readonly today: string;
  readonly size: number;
}

/** makeComparables(sales, {currency, today: "2026-11-25"}) */
export type MakeComparables = (sales: readonly Pick<SaleRecord, "id" | "garment" | "removed" | "sale">[], options: {readonly currency: string; readonly today: string}) => Comparables;

/** priceGarment(comparables, subject, {terms, asked, paid, looks, country}); amounts in cents of terms.currency. */
export type PriceGarment = (
  comparables: Comparables,
  subject: Subject,
  options: {readonly terms: Terms; readonly asked?: number | null; readonly paid?: number | null; readonly looks?: readonly Look[]; readonly country?: string | null},
) => WorthAnswer;

/** priceLot(comparables, subjects with their ids, {terms, unexamined, sampled, asked, random}); `sampled`: ids drawn blindly that stand for the unexamined ones, empty: all. */
export type PriceLot = (
  comparables: Comparables,
  garments: readonly {readonly id: string; readonly subject: Subject}[],
  options: {readonly terms: Terms; readonly unexamined: number; readonly sampled: readonly string[]; readonly asked?: number | null; readonly random: () => number; readonly country?: string | null},
) => LotAnswer;

/** bookTheShop(garments, {today, from, until}) */
export type BookTheShop = (garments: readonly ShopGarment[], options: {readonly today: string; readonly from: string | null; readonly until: string | null}) => ShopBooks;

/** checkSale(sale, "sale", today): everything about a sale that cannot be, at once. */
export type CheckSale = (sale: Sale, at: string, today: string) => Problem[];

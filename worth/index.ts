// The whole public face of the arithmetic of prices.
export * from "./answer.ts";
export {checkSale} from "./check-sale.ts";
export {indexAt, inMoneyOf, type PriceIndex} from "./index/price-index.ts";
export {priceLot, type LotOptions} from "./lot/price-lot.ts";
export {currencies, digitsOf} from "./money/currencies.ts";
export {parseMoney, printMoney, shareOf, split} from "./money/money.ts";
export type {KeptSale} from "./price/columns.ts";
export {makeComparables, type Comparables, type ComparablesOptions} from "./price/comparables.ts";
export {neededLike, priceGarment, type PriceOptions} from "./price/price-garment.ts";
export {bookTheShop, type BooksOptions} from "./shop/books.ts";
export type {Look, ShopGarment, Subject, YearOdds} from "./subject.ts";

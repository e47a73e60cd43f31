// Everything about a sale that cannot be, all at once, before it is kept.
import type {Problem} from "../engine/index.ts";
import type {Sale} from "./model.ts";
import {digitsOf} from "./money/currencies.ts";
import {printMoney} from "./money/money.ts";
import {absurdPrice, feesAbovePrice, madeAfterSold, madeReversed, mixedCurrencies, negativeFees, noKind, noPrice, soldLater, soldLongAgo, unknownCurrency} from "./problems.ts";

/** In whole units of the currency with two digits; ten times as much where a currency has none. Own choice. */
const absurd = 10_000_000;

/**
 * What is wrong with a sale.
 * @param at     where it stands: "sale", "line 12"
 * @param today  2026-11-25
 */
export function checkSale(sale: Sale, at: string, today: string): Problem[] {
  const {price, fees, soldOn, madeFrom, madeUntil, kind} = sale;
  const problems: Problem[] = [];
  const field = (name: string) => `${at}.${name}`;
  const digits = digitsOf(price.currency);
  if (digits === null) problems.push(unknownCurrency(field("price"), price.currency));
  else {
    const say = (cents: number) => printMoney(cents, price.currency);
    if (price.cents <= 0) problems.push(noPrice(field("price"), say(price.cents)));
    if (price.cents > absurd * (digits === 0 ? 100 : 10 ** digits)) problems.push(absurdPrice(field("price"), say(price.cents)));
    if (fees && fees.currency === price.currency) {
      if (fees.cents < 0) problems.push(negativeFees(field("fees"), say(fees.cents)));
      else if (fees.cents > price.cents && price.cents > 0) problems.push(feesAbovePrice(field("fees"), say(fees.cents), say(price.cents)));
    }
  }
  if (fees && fees.currency !== price.currency) problems.push(mixedCurrencies(field("fees"), price.currency, fees.currency));
  if (soldOn > today) problems.push(soldLater(field("soldOn"), soldOn, today));
  if (soldOn < "1900-01-01") problems.push(soldLongAgo(field("soldOn"), soldOn));
  if (madeFrom !== null && madeUntil !== null && madeFrom > madeUntil) problems.push(madeReversed(field("madeUntil"), madeFrom, madeUntil));
  if (madeFrom !== null && madeFrom > soldOn.slice(0, 7)) problems.push(madeAfterSold(field("madeFrom"), madeFrom, soldOn));
  if (kind.trim() === "") problems.push(noKind(field("kind")));
  return problems;
}

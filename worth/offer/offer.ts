// From what a garment may bring to what to pay and what to ask.
import type {Offer} from "../answer.ts";
import type {Terms} from "../model.ts";
import {dividedBy, printMoney, shareOf} from "../money/money.ts";

/** What is known of the price that a thing may bring. */
export interface Bringing {
  readonly typical: number;
  readonly mean: number;
  below(cents: number): number;
}

/** Parts of money tied up: a year's cost for the days until sold, on every cent laid out. */
const tiedShare = ({yearlyCost, daysToSell}: Terms) => (yearlyCost * daysToSell) / 365;

/** What of a selling price is left after tax, fees and postage. `count`: garments sold one by one. */
export function leftOf(price: number, terms: Terms, count = 1): number {
  return price - shareOf(price, terms.taxShare) - shareOf(price, terms.feeShare) - count * (terms.feeFixed + terms.postage);
}

/** What is earned when a thing bought for `paid` brings `price`: what is left of the price, less what was laid out and what that cost meanwhile. */
export function profitOf(price: number, paid: number, terms: Terms, count = 1): number {
  const laidOut = paid + count * terms.cleaning;
  return leftOf(price, terms, count) - laidOut - shareOf(laidOut, tiedShare(terms));
}

/**
 * The highest price to pay so that a thing that brings `price` leaves the margin: a part of the selling price without the tax in it.
 * @param margin  0: nothing earned and nothing lost
 * @returns whole cents, rounded down so that the margin is kept; never below 0
 */
export function highestToPay(price: number, margin: number, terms: Terms, count = 1): number {
  const wanted = shareOf(price - shareOf(price, terms.taxShare), margin);
  const laidOut = dividedBy(leftOf(price, terms, count) - wanted, 1 + tiedShare(terms));
  let paid = Math.max(0, laidOut - count * terms.cleaning);
  while (paid > 0 && profitOf(price, paid, terms, count) < wanted) paid--;
  return paid;
}

/** The lowest selling price that covers everything when so much was paid. */
export function lowestToSell(paid: number, terms: Terms, count = 1): number {
  let low = 0;
  let high = 1;
  while (profitOf(high, paid, terms, count) < 0) {
    // Tax and fees that eat the whole price leave nothing to cover costs with.
    if (high > 1e14) return high;
    high *= 2;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (profitOf(middle, paid, terms, count) < 0) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * The offer.
 * @param asked  price asked of the buyer; null: none
 * @param paid   paid already; null: not bought yet
 */
export function offerFor(bringing: Bringing, terms: Terms, asked: number | null, paid: number | null, count = 1): Offer {
  const {typical} = bringing;
  const most = highestToPay(typical, terms.margin, terms, count);
  const bought = paid ?? asked ?? most;
  const wanted = shareOf(typical - shareOf(typical, terms.taxShare), terms.margin);
  const laidOut = most + count * terms.cleaning;
  const lines = [
    {what: "what such a thing typically brings", cents: typical},
    {what: "tax inside the price", cents: -shareOf(typical, terms.taxShare)},
    {what: "fees", cents: -(shareOf(typical, terms.feeShare) + count * terms.feeFixed)},
    {what: "postage", cents: -count * terms.postage},
    {what: "cleaning and mending", cents: -count * terms.cleaning},
    {what: "money tied up until sold", cents: -shareOf(laidOut, tiedShare(terms))},
    {what: "the margin you want", cents: -wanted},
  ].filter(({cents}, i) => i === 0 || cents !== 0);
  return {
    most, breakEven: highestToPay(typical, 0, terms, count), list: dividedBy(typical, 1 - terms.room), walkAway: lowestToSell(bought, terms, count), bought: paid ?? asked ?? null, lines,
    atAsked: asked === null ? null : atAsked(bringing, terms, asked, most, count),
  };
}

function atAsked(bringing: Bringing, terms: Terms, asked: number, most: number, count: number): NonNullable<Offer["atAsked"]> {
  const money = (cents: number) => printMoney(cents, terms.currency);
  const buy = asked <= most;
  return {
    asked, buy,
    profit: profitOf(Math.round(bringing.mean), asked, terms, count),
    earns: 1 - bringing.below(priceThatLeaves(asked, terms, count)),
    loses: bringing.below(lowestToSell(asked, terms, count)),
    words: buy ? `At ${money(asked)} it leaves the margin you want: you could go up to ${money(most)}.` : `At ${money(asked)} it does not leave the margin you want: offer ${money(most)} at most.`,
  };
}

/** The selling price that leaves the wanted margin when so much was paid. */
function priceThatLeaves(paid: number, terms: Terms, count: number): number {
  let low = 0;
  let high = 1;
  while (highestToPay(high, terms.margin, terms, count) < paid || (paid === 0 && profitOf(high, 0, terms, count) < shareOf(high - shareOf(high, terms.taxShare), terms.margin))) {
    if (high > 1e14) return Infinity;
    low = high;
    high *= 2;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const reached = profitOf(middle, paid, terms, count) >= shareOf(middle - shareOf(middle, terms.taxShare), terms.margin);
    if (reached) high = middle;
    else low = middle;
  }
  return high;
}

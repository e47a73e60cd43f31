// What can be wrong with a sale, in words; one function each, so that they can be read in a row.
import type {Problem} from "../engine/index.ts";

export const unknownCurrency = (at: string, currency: string): Problem => ({
  code: "sale/currency", at, what: `${currency} is no currency`, why: "money is kept by the three letters of ISO 4217", fix: "write three letters like USD, EUR or JPY",
});

export const noPrice = (at: string, price: string): Problem => ({
  code: "sale/price", at, what: `the price is ${price}`, why: "a thing that was sold brought something", fix: "write what the buyer paid for it, or leave the sale out",
});

export const absurdPrice = (at: string, price: string): Problem => ({
  code: "sale/absurd-price", at, what: `${price} is more than any old garment brings`, why: "a slip of the pen would pull every price with it", fix: "look whether the decimal point or the currency slipped",
});

export const negativeFees = (at: string, fees: string): Problem => ({
  code: "sale/negative-fees", at, what: `the fees are ${fees}`, why: "fees are what the channel kept, so they are nothing or more", fix: "write them without the minus; what was paid out belongs to the price",
});

export const feesAbovePrice = (at: string, fees: string, price: string): Problem => ({
  code: "sale/fees-above-price", at, what: `fees of ${fees} are more than the price of ${price}`, why: "a channel keeps a part of the price", fix: "look whether price and fees changed places",
});

export const mixedCurrencies = (at: string, one: string, other: string): Problem => ({
  code: "sale/mixed-currencies", at, what: `the price is in ${one} and the fees are in ${other}`, why: "amounts of two currencies cannot be set against each other", fix: `write both in ${one}`,
});

export const soldLater = (at: string, soldOn: string, today: string): Problem => ({
  code: "sale/later", at, what: `sold on ${soldOn}, and today is ${today}`, why: "a sale to come teaches nothing", fix: "look at the date",
});

export const soldLongAgo = (at: string, soldOn: string): Problem => ({
  code: "sale/long-ago", at, what: `sold on ${soldOn}`, why: "prices of before 1900 say nothing of today's", fix: "look at the year",
});

export const madeReversed = (at: string, from: string, until: string): Problem => ({
  code: "sale/made-reversed", at, what: `made until ${until}, which comes before made from ${from}`, why: "no month lies between", fix: "let them change places",
});

export const madeAfterSold = (at: string, made: string, soldOn: string): Problem => ({
  code: "sale/made-after-sold", at, what: `made in ${made} or later, and sold on ${soldOn}`, why: "nothing is sold before it is made", fix: "look at both dates",
});

export const noKind = (at: string): Problem => ({
  code: "sale/no-kind", at, what: "no kind is named", why: "a sale is set beside sales of its kind", fix: "write trousers, jacket, shirt ...",
});

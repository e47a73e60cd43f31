// The wordings of what can be wrong with a wish about sales and prices, to be read in a row.
import type {Problem} from "../../engine/index.ts";

export const noSale = (id: string): Problem => ({
  code: "sale/none", at: "id", what: `no sale with the id ${id} is kept`, why: "there is nothing to show or to change", fix: "look for it in the list of sales",
});

export const ofGarment = (number: string): Problem => ({
  code: "sale/of-garment", at: "id", what: `this is the sale of the garment ${number} on the rack`, why: "it is told by the garment, and is nowhere written down a second time", fix: "change what it was sold for, or where it stands, on the garment itself",
});

export const saleSavedBetween = (who: string, at: string): Problem => ({
  code: "sale/saved-between", at: "base", what: `the sale was saved by ${who} at ${at} after you opened it`, why: "saving now would wipe out that change without a word", fix: "compare the two, take over what you want to keep, and save again",
});

export const keptAlready = (at: string, words: string): Problem => ({
  code: "sale/kept-already", at, what: `the same sale is kept already (${words})`, why: "it would count twice in every price", fix: "take it out; if two like things were sold, say in the note what tells them apart",
});

export const standsTwice = (at: string, first: string): Problem => ({
  code: "sale/stands-twice", at, what: `the same sale stands at ${first} already`, why: "it would count twice in every price", fix: "take one out; if two like things were sold, say in the note what tells them apart",
});

export const onTheRack = (at: string, number: string): Problem => ({
  code: "sale/on-the-rack", at, what: `this looks like the sale of the garment ${number} on the rack: same day, price and kind`, why: "it counts already, and would count twice", fix: "leave it out; if another one like it was sold, say so in the note",
});

export const noColumn = (target: string, words: string): Problem => ({
  code: "sale/no-column", at: "mapping", what: `no column is taken as ${words} (${target})`, why: "a sale without it tells nothing about prices", fix: "say which column holds it",
});

export const noSuchEntry = (column: string, target: string): Problem => ({
  code: "sale/no-such-entry", at: `mapping ${column}`, what: `“${target}” is no entry of a sale`, why: "what stands in the column would be lost", fix: "choose one of the entries offered, or leave the column out",
});

export const notDay = (at: string, text: string): Problem => ({
  code: "sale/not-day", at, what: `“${text}” is no day that can be read`, why: "how long ago a sale was counts in every price", fix: "write year, month and day, like 2026-03-14",
});

export const eitherDay = (at: string, text: string): Problem => ({
  code: "sale/either-day", at, what: `“${text}” can be read two ways`, why: "in one country the day comes first, in another the month", fix: "say which comes first in this table, or write 2026-03-14",
});

export const notMade = (at: string, text: string): Problem => ({
  code: "sale/not-made", at, what: `“${text}” is no time of making that can be read`, why: "it sets a garment apart from others of its kind", fix: "write a year, a decade, a month or two of them, like 1968, 1960s, 1968-03 or 1966-1969",
});

export const notPrice = (at: string, text: string): Problem => ({
  code: "sale/not-price", at, what: `“${text}” is no amount of money`, why: "money is kept exactly, and in one currency", fix: "write figures and the three letters of the currency, like 120.00 EUR",
});

export const noCurrency = (at: string, text: string): Problem => ({
  code: "sale/no-currency", at, what: `the amount “${text}” does not say its currency`, why: "120 can be a little or a lot", fix: "put the three letters of the currency behind it, or say the currency of the whole table",
});

export const notGrade = (at: string, text: string, grades: readonly string[]): Problem => ({
  code: "sale/not-grade", at, what: `“${text}” is none of the words for a state`, why: "it sets a garment apart from others of its kind", fix: `write one of ${grades.join(", ")}, or leave the cell empty`,
});

export const nothingToImport = (): Problem => ({
  code: "sale/nothing-to-import", at: "text", what: "no sale stands here", why: "there is nothing to take over", fix: "give a table with a line of column names, or sales as JSON",
});

export const tooManySales = (most: number): Problem => ({
  code: "sale/too-many", at: "text", what: `more than ${most} sales stand here`, why: "all of them are taken over in one step, and that step would take too long", fix: "cut the list into parts",
});

export const nothingToPrice = (): Problem => ({
  code: "worth/nothing-to-price", at: "id", what: "neither a garment on the rack nor one as it was written down is named", why: "there is nothing to price", fix: "give its id, or its content; one of the two",
});

export const notInLot = (id: string): Problem => ({
  code: "worth/not-in-lot", at: "sampled", what: `the garment ${id} is said to be a sample of the lot, and is not among its examined ones`, why: "it would stand for the rest without being looked at", fix: "add it to the lot, or leave it out of the sample",
});

export const spanReversed = (from: string, until: string): Problem => ({
  code: "worth/span-reversed", at: "from", what: `the time begins on ${from}, after it ends on ${until}`, why: "no day lies in it", fix: "change the two round",
});

export const lotTwice = (id: string): Problem => ({
  code: "worth/lot-twice", at: "ids", what: `the garment ${id} stands in the lot twice`, why: "it can be sold once", fix: "take it out once",
});

export const unknownCurrency = (at: string, currency: string): Problem => ({
  code: "money/unknown-currency", at, what: `${currency} is no currency`, why: "an amount in it could not be added to anything", fix: "write the three letters of ISO 4217, like USD, EUR or GBP",
});

export const belowNothing = (at: string): Problem => ({
  code: "money/below-nothing", at, what: "the amount is below nothing", why: "what was paid, asked or laid out is written without a sign", fix: "leave the sign out",
});

export const dayAhead = (at: string, day: string): Problem => ({
  code: "money/day-ahead", at, what: `${day} lies ahead`, why: "the books tell what happened", fix: "write the day on which it happened",
});

export const soldBeforeBought = (sold: string, bought: string): Problem => ({
  code: "money/sold-before-bought", at: "money.sold.on", what: `it was sold on ${sold} and bought on ${bought}`, why: "it could not be sold before it was there", fix: "put one of the two days right",
});

export const otherPostage = (postage: string, price: string): Problem => ({
  code: "money/other-postage", at: "money.sold.postage", what: `the postage is in ${postage}, the price in ${price}`, why: "amounts of two currencies are not added up without a rate, and a rate is nobody's to guess", fix: `write the postage in ${price}, as it was charged to you`,
});

export const soldAlready = (number: string, on: string): Problem => ({
  code: "money/sold-already", at: "id", what: `${number} was sold on ${on} already`, why: "a garment is sold once", fix: "change what it brought on the garment itself, or undo the sale there first",
});

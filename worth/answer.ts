// What the arithmetic of prices answers: shapes shared with the server and the screens. Money is whole cents of the answer's one currency.
import {z} from "zod";
import {amountSchema} from "./model.ts";

const share = z.number().min(0).max(1);
const cents = z.number().int().describe("in the smallest unit of the answer's currency");
const currency = z.string().regex(/^[A-Z]{3}$/).describe("ISO 4217");
const words = z.string();
const day = z.iso.date();
const year = z.number().int();

/** A range and how often sales fall inside it. */
const rangeSchema = z.strictObject({share: share.describe("0.8: eight in ten"), low: cents, high: cents});

/** What a garment may bring. */
export const priceRangeSchema = z.strictObject({
  typical: cents.describe("half of such sales bring less, half more"),
  mean: cents.describe("average, the rarest prices at both ends left out"),
  low: cents.describe("of the range that holds eight in ten"),
  high: cents.describe("of the range that holds eight in ten"),
  ranges: z.array(rangeSchema).describe("five, eight and nine in ten; one is missing when there are too few sales to promise it"),
  steps: z.array(cents).length(19).describe("5, 10 ... 95 in 100 sales bring at most so much"),
});

/** The price if the garment is of one stretch of years. */
export const branchSchema = z.strictObject({
  words: words.describe("1968, or 1966 to 1969, or another time"),
  from: year,
  until: year,
  share: share.describe("how likely the garment is from then"),
  price: priceRangeSchema.nullable().describe("null: too few sales of things from then"),
  like: z.number().min(0).describe("how many good comparisons the sales amount to"),
  most: cents.nullable().describe("highest price to pay if so; null: without a price"),
});

export const driverSchema = z.strictObject({
  what: z.enum(["maker", "made", "grade", "size", "sold"]).describe("size is weighed, never corrected for, and so is not named yet"),
  words: words.describe("Marrowfield instead of any maker"),
  factor: z.number().positive().describe("1.2: a fifth more than without"),
});

export const usedSaleSchema = z.strictObject({
  id: z.string(),
  share: share.describe("its part in the price"),
  soldOn: day,
  price: amountSchema.describe("as it was paid"),
  adjusted: cents.describe("in money of today, and as if it had been this garment"),
  words: words.describe("what it was, in a line"),
});

/** What to pay and what to ask. */
export const offerSchema = z.strictObject({
  most: cents.describe("highest price to pay that leaves the wanted margin; 0 when even a gift leaves less"),
  breakEven: cents.describe("bought at this price nothing is earned and nothing lost"),
  list: cents.describe("what to ask, with room for haggling"),
  walkAway: cents.describe("lowest price to sell for: less does not cover what was spent"),
  bought: cents.nullable().describe("what the walk-away price counts as paid: paid, else asked, else the highest price to pay"),
  lines: z.array(z.strictObject({what: words, cents})).describe("from the typical price down to the highest price to pay"),
  atAsked: z
    .strictObject({asked: cents, profit: cents.describe("expected"), earns: share.describe("chance of the wanted margin"), loses: share.describe("chance of a loss"), buy: z.boolean(), words})
    .nullable()
    .describe("null: no asked price"),
});

/** What looking further is worth in money, given the asked price. */
export const looksWorthSchema = z.strictObject({
  asked: cents,
  knowing: cents.describe("at most: what knowing the year for certain would be worth"),
  looks: z.array(z.strictObject({mark: z.string(), name: words, worth: cents, effort: z.number(), opensSeam: z.boolean(), turns: share.describe("chance that it turns the decision")})),
  words,
});

/** Lines over the time of the sale, in money of today, as if every sale had been of this garment. */
export const trendSchema = z.strictObject({
  since: day,
  until: day,
  yearly: z.number().positive().describe("what the middle line is multiplied by in a year"),
  lines: z.array(z.strictObject({share: share.describe("0.1: a tenth of the sales lie below"), since: cents, until: cents})),
});

export const worthAnswerSchema = z.strictObject({
  currency,
  on: day,
  enough: z.boolean().describe("false: too few sales, price and offer are null"),
  words: z.array(words).describe("the answer as it could be said aloud"),
  sales: z.strictObject({
    total: z.number().int().describe("sales kept that could be used"),
    kind: z.number().int().describe("of this kind"),
    like: z.number().min(0).describe("how many good comparisons they amount to"),
    needed: z.number().describe("so many are needed at least"),
    leftOut: z.array(z.strictObject({why: words, count: z.number().int()})),
  }),
  price: priceRangeSchema.nullable(),
  branches: z.array(branchSchema),
  years: z.array(z.strictObject({year, share, typical: cents.nullable()})),
  drivers: z.array(driverSchema),
  used: z.array(usedSaleSchema).describe("heaviest first, twelve at most"),
  method: z.strictObject({
    way: z.enum(["sales side by side", "sales corrected for their differences"]),
    corrected: share.describe("how far the sales were corrected for their differences: 0 with few sales, towards 1 with many"),
    checked: z.number().int().describe("sales that were priced without themselves to set the ranges"),
    index: z.strictObject({name: words, source: words, status: words, until: z.string()}).nullable().describe("price index used; null: prices as they were paid"),
    words: z.array(words),
  }),
  trend: trendSchema.nullable().optional().describe("null: too few sales, or all of one season"),
  offer: offerSchema.nullable(),
  looks: looksWorthSchema.nullable(),
  cautions: z.array(words),
});

export const lotAnswerSchema = z.strictObject({
  currency,
  on: day,
  garments: z.array(z.strictObject({id: z.string(), typical: cents.nullable().describe("null: too few sales"), low: cents.nullable(), high: cents.nullable(), like: z.number(), part: cents.nullable().optional().describe("of the asked price, by what each is likely to bring; the parts and that of the unexamined add up to it")})),
  unexaminedPart: cents.nullable().optional(),
  unexamined: z.number().int(),
  unpriced: z.number().int().describe("examined, but without a price; counted as nothing"),
  total: priceRangeSchema.nullable(),
  examinedTotal: priceRangeSchema.nullable(),
  offer: offerSchema.nullable(),
  way: words.describe("how the sum was worked out"),
  words: z.array(words),
  cautions: z.array(words),
});

const accountSchema = z.strictObject({
  name: words,
  bought: z.number().int().describe("garments"),
  sold: z.number().int().describe("garments"),
  paid: cents.describe("for the sold ones"),
  costs: cents.describe("of the sold ones: cleaning, mending, fees, postage"),
  taken: cents.describe("selling prices of the sold ones"),
  profit: cents,
  margin: z.number().nullable().describe("profit as a part of what was taken; null: nothing sold"),
  days: z.number().nullable().describe("median days from bought (or listed) to sold"),
});

export const bookOfCurrencySchema = z.strictObject({
  currency,
  spent: cents.describe("paid for garments bought in the time asked for"),
  laidOut: cents.describe("costs of the time asked for, fees and postage included"),
  taken: cents.describe("sold for in the time asked for"),
  profit: cents.describe("of garments sold in the time asked for: taken less what was paid for them and went into them"),
  margin: z.number().nullable(),
  tied: cents.describe("paid for and laid out on what is not sold yet"),
  unknownPaid: z.number().int().describe("sold garments without a note of what was paid: left out of profit and margin"),
  byKind: z.array(accountSchema),
  byMaker: z.array(accountSchema),
  byDecade: z.array(accountSchema),
  months: z.array(z.strictObject({month: z.string(), bought: z.number().int(), sold: z.number().int(), spent: cents, laidOut: cents, taken: cents, profit: cents})).describe("every month from the first to the last, empty ones too"),
  slow: z.array(z.strictObject({id: z.string(), number: words, kind: words, days: z.number().int().describe("since listed, else since bought"), usual: z.number().nullable().describe("median days of its kind"), paid: cents.nullable(), asked: cents.nullable()})).describe("slowest first"),
});

export const shopBooksSchema = z.strictObject({
  on: day,
  from: day.nullable(),
  until: day.nullable(),
  books: z.array(bookOfCurrencySchema).describe("one a currency: currencies are never added up"),
  notes: z.array(words),
});

export type PriceRange = z.infer<typeof priceRangeSchema>;
export type Branch = z.infer<typeof branchSchema>;
export type Driver = z.infer<typeof driverSchema>;
export type UsedSale = z.infer<typeof usedSaleSchema>;
export type Trend = z.infer<typeof trendSchema>;
export type Offer = z.infer<typeof offerSchema>;
export type LooksWorth = z.infer<typeof looksWorthSchema>;
export type WorthAnswer = z.infer<typeof worthAnswerSchema>;
export type LotAnswer = z.infer<typeof lotAnswerSchema>;
export type Account = z.infer<typeof accountSchema>;
export type BookOfCurrency = z.infer<typeof bookOfCurrencySchema>;
export type ShopBooks = z.infer<typeof shopBooksSchema>;

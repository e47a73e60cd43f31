// Sales that a price is learned from, and what a shop wants of a price: shapes only, shared by the arithmetic, the store, the server and the screens.
import {z} from "zod";
import {grades} from "../state/model.ts";

const line = z.string().max(200);
const day = z.iso.date();
const month = z.string().regex(/^\d{4}-(0[1-9]|1[0-2])$/);

/** Money in the smallest unit of its currency: 1250 USD is 12.50 dollars, 1250 JPY is 1,250 yen. */
export const amountSchema = z.strictObject({
  cents: z.number().int().min(-1e12).max(1e12).describe("in the currency's smallest unit"),
  currency: z.string().regex(/^[A-Z]{3}$/).describe("ISO 4217"),
});

/** One sale: the shop's own or one that the owner wrote down. */
export const saleSchema = z.strictObject({
  soldOn: day,
  price: amountSchema.describe("what the buyer paid for the garment, postage apart"),
  fees: amountSchema.nullable().default(null).describe("what the channel kept"),
  kind: line.describe("garment type: trousers, jacket, shirt ..."),
  maker: line.nullable().default(null).describe("id of a rule book, or a name; null: unknown"),
  lot: line.nullable().default(null),
  madeFrom: month.nullable().default(null),
  madeUntil: month.nullable().default(null),
  size: line.default("").describe("as it would be said: W 34 L 32, M"),
  grade: z.enum(grades).nullable().default(null),
  channel: line.default("").describe("where: market stall, own shop, auction ..."),
  note: z.string().max(2000).default(""),
});

/** A sale as it is kept. */
export const saleRecordSchema = z.strictObject({
  id: z.string(),
  rev: z.number().int().min(1),
  changedAt: z.iso.datetime(),
  changedBy: line,
  removed: z.boolean(),
  garment: z.string().nullable().describe("the garment on the rack that was sold; null: one of somebody else's"),
  sale: saleSchema,
});

/** What was paid for a garment, what went into it, and what it brought. */
export const moneyStorySchema = z.strictObject({
  boughtOn: day.nullable().default(null),
  costs: z.array(z.strictObject({what: line.min(1), amount: amountSchema, on: day.nullable().default(null)})).max(100).default([]).describe("cleaning, mending, travel ..."),
  listedOn: day.nullable().default(null),
  sold: z
    .strictObject({on: day, price: amountSchema, fees: amountSchema.nullable().default(null), postage: amountSchema.nullable().default(null).describe("paid by the shop"), channel: line.default(""), grade: z.enum(grades).nullable().default(null).describe("as it was sold")})
    .nullable()
    .default(null),
});

/** What the shop wants and pays, set once by the owner. */
export const termsSchema = z.strictObject({
  currency: z.string().regex(/^[A-Z]{3}$/).default("USD"),
  margin: z.number().min(0).max(0.95).default(0.4).describe("wanted profit as a part of the selling price before tax"),
  feeShare: z.number().min(0).max(0.9).default(0).describe("what the channel keeps of the price"),
  feeFixed: z.number().int().min(0).default(0).describe("cents a sale"),
  postage: z.number().int().min(0).default(0).describe("cents, paid by the shop"),
  taxShare: z.number().min(0).max(0.9).default(0).describe("tax inside the selling price; local law decides"),
  cleaning: z.number().int().min(0).default(0).describe("cents a garment, cleaning and mending"),
  daysToSell: z.number().min(0).max(3650).default(60).describe("expected days until sold"),
  yearlyCost: z.number().min(0).max(2).default(0).describe("what money tied up for a year costs, as a part"),
  room: z.number().min(0).max(0.9).default(0.1).describe("room for haggling in the list price"),
});

export type Amount = z.infer<typeof amountSchema>;
export type Sale = z.infer<typeof saleSchema>;
export type SaleRecord = z.infer<typeof saleRecordSchema>;
export type MoneyStory = z.infer<typeof moneyStorySchema>;
export type Terms = z.infer<typeof termsSchema>;

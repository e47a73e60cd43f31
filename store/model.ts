// What is kept of a garment, its photos, its history and the owner's rule books: shapes only, shared by every driver, the server and the screens.
import {z} from "zod";
import {garmentSchema} from "../engine/rule/garment.ts";
import {labelReadingSchema} from "../reader/model.ts";
import {sizesSchema, stateSchema} from "../state/model.ts";
import {moneyStorySchema, saleRecordSchema, saleSchema} from "../worth/model.ts";

const id = z.string().regex(/^[a-z0-9]{12,32}$/).describe("made by the store, never used twice");
const instant = z.iso.datetime().describe("UTC");
const line = z.string().max(200);
const share = z.number().min(0).max(1);
const monthText = z.string().regex(/^\d{4}-\d{2}$/);

/** SHA-256 of the original file, in lower-case hexadecimal. */
export const photoHashSchema = z.string().regex(/^[0-9a-f]{64}$/);

/** Where a garment stands in the life of a shop. */
export const standings = ["to examine", "kept", "for sale", "sold", "given away"] as const;

/** Money in the smallest unit of its currency. */
export const moneySchema = z.strictObject({
  cents: z.number().int().min(0).max(1e12),
  currency: z.string().regex(/^[A-Z]{3}$/).describe("ISO 4217"),
});

export const photoUseSchema = z.strictObject({
  photo: photoHashSchema,
  place: line.default("").describe("the place of the garment that it shows: care label, top button, front ..."),
  caption: z.string().max(1000).default(""),
});

/** What a garment was dated to, with the books it was dated by; kept until it is dated again. */
export const datingSchema = z.strictObject({
  at: instant,
  books: z.array(z.strictObject({book: z.string(), edition: z.number().int()})),
  kind: z.enum(["one date", "two dates", "cannot tell"]),
  words: z.string().describe("March 1968"),
  sentence: z.string(),
  sureness: z.enum(["sure", "likely", "open", "cannot tell"]),
  probability: share.describe("of what is named"),
  best: monthText,
  noEarlier: monthText,
  noLater: monthText,
  maker: z.string().nullable().describe("likeliest maker's book; null: one without a book"),
  plant: z.string().nullable(),
  odd: z.number().int().min(0).describe("how many odd marks"),
  years: z.strictObject({first: z.number().int(), shares: z.array(share)}).describe("probability year by year"),
});

/** Everything the owner can change about a garment. */
export const contentSchema = z.strictObject({
  garment: garmentSchema,
  place: line.default("").describe("where it is kept"),
  standing: z.enum(standings).default("to examine"),
  paid: moneySchema.nullable().default(null),
  asked: moneySchema.nullable().default(null),
  tags: z.array(z.string().min(1).max(60)).max(40).default([]),
  photos: z.array(photoUseSchema).max(60).default([]),
  dating: datingSchema.nullable().default(null),
  sizes: sizesSchema.nullable().default(null),
  state: stateSchema.nullable().default(null).describe("as somebody saw it; null: nobody looked"),
  money: moneyStorySchema.nullable().default(null).describe("costs and the sale; what was paid and is asked stand beside"),
  labels: z.array(labelReadingSchema).max(12).default([]).describe("photos of labels as a reader read them"),
});

/** A garment on the rack. */
export const recordSchema = z.strictObject({
  id,
  rev: z.number().int().min(1).describe("grows by one with each save"),
  createdAt: instant,
  changedAt: instant,
  changedBy: line,
  removed: z.boolean(),
  content: contentSchema,
});

/** One step of the history of a garment; steps are only ever added. */
export const stepSchema = z.strictObject({
  id,
  rev: z.number().int().min(1),
  at: instant,
  who: line,
  what: line.describe("added, changed, dated again, removed, put back, undone to step 3, imported ..."),
  removed: z.boolean(),
  content: contentSchema,
});

export const photoSchema = z.strictObject({
  photo: photoHashSchema,
  mime: z.enum(["image/jpeg", "image/png", "image/webp", "image/avif"]),
  bytes: z.number().int().min(1),
  width: z.number().int().min(1).describe("pixels, upright"),
  height: z.number().int().min(1).describe("pixels, upright"),
  addedAt: instant,
});

/** One edition of a rule book of the owner's; editions are only ever added. */
export const bookEditionSchema = z.strictObject({
  book: z.string().min(1).max(80),
  edition: z.number().int().min(1),
  title: z.string(),
  yaml: z.string(),
  savedAt: instant,
  savedBy: line,
});

export const sorts = ["changed", "number", "date", "place", "asked", "sureness"] as const;

/** What part of the rack to show. */
export const rackQuerySchema = z.strictObject({
  text: z.string().max(200).default("").describe("words and codes, in number, title, note, rows, marks, place and tags; the start of a word is enough"),
  from: z.number().int().nullable().default(null).describe("first year of a date range"),
  until: z.number().int().nullable().default(null).describe("last year of a date range"),
  atLeast: share.default(0.5).describe("probability that the garment lies in the date range"),
  maker: z.string().nullable().default(null),
  type: z.string().nullable().default(null),
  place: z.string().nullable().default(null),
  standing: z.enum(standings).nullable().default(null),
  tag: z.string().nullable().default(null),
  askedFrom: z.number().int().min(0).nullable().default(null).describe("cents"),
  askedUntil: z.number().int().min(0).nullable().default(null).describe("cents"),
  sureness: z.enum(["sure", "likely", "open", "cannot tell", "undated"]).nullable().default(null),
  odd: z.boolean().nullable().default(null).describe("true: with odd marks only"),
  removed: z.boolean().default(false).describe("true: the removed ones instead"),
  sort: z.enum(sorts).default("changed"),
  descending: z.boolean().default(true),
  offset: z.number().int().min(0).default(0),
  limit: z.number().int().min(1).max(500).default(100),
});

/** A row of the rack: what a list or a grid shows of a garment. */
export const rackRowSchema = z.strictObject({
  id,
  rev: z.number().int(),
  number: z.string(),
  title: z.string(),
  type: z.string(),
  maker: z.string().nullable(),
  place: z.string(),
  standing: z.enum(standings),
  asked: moneySchema.nullable(),
  tags: z.array(z.string()),
  cover: photoHashSchema.nullable().describe("the first photo"),
  photos: z.number().int(),
  dating: datingSchema.omit({years: true}).nullable(),
  changedAt: instant,
});

export const rackPageSchema = z.strictObject({
  total: z.number().int().describe("garments that fit the query, on this page or not"),
  rows: z.array(rackRowSchema),
  years: z.strictObject({first: z.number().int(), garments: z.array(z.number())}).describe("summed probability year by year of all that fit: how many garments of each year are expected"),
  values: z
    .strictObject({makers: z.array(z.string()), types: z.array(z.string()), places: z.array(z.string()), tags: z.array(z.string())})
    .describe("what the filters can be set to, over the whole rack"),
});

/** One step of the history of a sale that was written down; steps are only ever added. */
export const saleStepSchema = stepSchema.omit({content: true}).extend({sale: saleSchema});

export const saleSorts = ["sold", "price", "kind", "maker", "changed"] as const;

/** Which sales to show. */
export const saleQuerySchema = z.strictObject({
  text: z.string().max(200).default("").describe("words, in kind, maker, lot, size, grade, channel and note; any part of a word"),
  kind: line.nullable().default(null),
  maker: line.nullable().default(null),
  grade: saleSchema.shape.grade,
  channel: line.nullable().default(null),
  from: z.iso.date().nullable().default(null).describe("sold on this day or later"),
  until: z.iso.date().nullable().default(null).describe("sold on this day or earlier"),
  own: z.boolean().nullable().default(null).describe("true: of garments on the rack only; false: of others only"),
  removed: z.boolean().default(false).describe("true: the removed ones instead"),
  sort: z.enum(saleSorts).default("sold"),
  descending: z.boolean().default(true),
  offset: z.number().int().min(0).default(0),
  limit: z.number().int().min(1).max(500).default(100),
});

export const salePageSchema = z.strictObject({
  total: z.number().int().describe("sales that fit the query, on this page or not"),
  rows: z.array(saleRecordSchema),
  values: z.strictObject({kinds: z.array(z.string()), makers: z.array(z.string()), channels: z.array(z.string())}).describe("what the filters can be set to, over all sales"),
});

export type Money = z.infer<typeof moneySchema>;
export type PhotoUse = z.infer<typeof photoUseSchema>;
export type Dating = z.infer<typeof datingSchema>;
export type Content = z.infer<typeof contentSchema>;
export type GarmentRecord = z.infer<typeof recordSchema>;
export type Step = z.infer<typeof stepSchema>;
export type Photo = z.infer<typeof photoSchema>;
export type BookEdition = z.infer<typeof bookEditionSchema>;
export type RackQuery = z.infer<typeof rackQuerySchema>;
export type RackRow = z.infer<typeof rackRowSchema>;
export type RackPage = z.infer<typeof rackPageSchema>;
export type SaleStep = z.infer<typeof saleStepSchema>;
export type SaleQuery = z.infer<typeof saleQuerySchema>;
export type SalePage = z.infer<typeof salePageSchema>;

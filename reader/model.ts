// What a reader of label photos says and what the owner settles: shapes only, shared by readers, the store, the server and the screens.
import {z} from "zod";

const share = z.number().min(0).max(1);
/** A corner in pixels of the upright photo as it is shown, from its top left. */
const cornerSchema = z.strictObject({x: z.number(), y: z.number()});

/** Four corners in reading order: top left, top right, bottom right, bottom left of what stands upright for a reader. */
export const quadSchema = z.array(cornerSchema).length(4);

/** What one place of a row may be; an empty character: nothing stands there. */
export const charactersSchema = z.array(z.strictObject({character: z.string().max(1), p: share})).min(1).max(12);

/** What a reader says of one printed row. */
export const readRowSchema = z.strictObject({
  quad: quadSchema.describe("where the row stands, in pixels of the upright original"),
  best: z.string().max(80).describe("the likeliest reading, with its spaces"),
  places: z.array(charactersSchema).max(60).describe("one entry a character of the likeliest reading, its alternatives by weight"),
  strings: z.array(z.strictObject({text: z.string().max(80), p: share})).max(60).describe("whole readings, likeliest first, spacings told apart"),
  none: share.describe("chance that none of the strings is right"),
  mass: share.optional().describe("how much of all possible readings the strings held before the reading map was used; with it the map can be taken back"),
});

/** What the owner settled about one row, kept apart from what the reader said; null: nothing yet. */
export const settledRowSchema = z.strictObject({
  text: z.string().max(200).nullable().describe("the row as the owner typed it; null: as read"),
  places: z.record(z.string().regex(/^\d{1,2}$/), z.string().max(1)).default({}).describe("place of the likeliest reading, from 0: the character settled there"),
  left: z.boolean().default(false).describe("true: this row is no row of the label and is left out"),
});

/** How a reader's own chances are corrected; fitted on readings whose truth is known. */
export const readingMapSchema = z.strictObject({
  temper: z.number().min(0.2).max(5).describe("above 1: the reader's chances are drawn closer together, below 1: apart"),
  mass: z.number().min(0).max(5).describe("power of the mass of the listed readings that stays for them; the rest is for none of them"),
  places: z.number().min(0).max(5).describe("power of that mass that stays for the alternatives of a place"),
  cap: z.number().min(0.5).max(0.999).describe("no row is more certain than this, and no character than its eighth root"),
});

/** One photo read: the label's outline, how it was turned, and its rows. */
export const labelReadingSchema = z.strictObject({
  photo: z.string().regex(/^[0-9a-f]{64}$/).describe("hash of the original"),
  reader: z.string().max(80).describe("which reader, and its edition"),
  size: z.strictObject({width: z.number().int().min(1), height: z.number().int().min(1)}).optional().describe("sides of the upright original, for showing its rows on a smaller copy"),
  outline: quadSchema.nullable().describe("the label in the photo; null: the whole photo"),
  turn: z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]).describe("degrees clockwise that make the label upright"),
  map: readingMapSchema.optional().describe("the reading map that was used on the rows; left out: none"),
  rows: z.array(z.strictObject({read: readRowSchema, settled: settledRowSchema.nullable().default(null)})).max(40),
});

export type Corner = z.infer<typeof cornerSchema>;
export type Quad = z.infer<typeof quadSchema>;
export type Characters = z.infer<typeof charactersSchema>;
export type ReadRow = z.infer<typeof readRowSchema>;
export type SettledRow = z.infer<typeof settledRowSchema>;
export type ReadingMap = z.infer<typeof readingMapSchema>;
export type LabelReading = z.infer<typeof labelReadingSchema>;

// The shape of a garment as the owner writes it down: what was looked at and what was seen there.
import {z} from "zod";

const text = z.string().max(200);
const weights = z.record(z.string().min(1).max(80), z.number().min(0)).describe("value or character: weight");

const cellSchema = z.union([text.min(1).max(1), z.strictObject({either: weights}).describe("what the character may be, with weights")]);

const edge = z.enum(["face", "back", "top edge", "left edge", "right edge", "bottom edge"]).optional();

const rowSchema = z.union([
  text.describe('as printed; ? is an unreadable character, (3/8) is 3 or 8, (8:80/3:20) is the same with weights'),
  z.number().int().min(0).max(Number.MAX_SAFE_INTEGER).transform(String),
  z.strictObject({
    text: z.union([text, z.number().int().min(0).transform(String)]),
    at: edge,
  }),
  z.strictObject({
    cells: z.array(cellSchema).max(60).describe("one entry a character; a blank is a gap"),
    at: edge,
  }),
  z.strictObject({
    readings: z.array(z.strictObject({text, weight: z.number().min(0)})).min(1).max(400).describe("what the whole row may be, as a reader of photos weighs it; its characters are taken as they stand"),
    none: z.number().min(0).default(0).describe("weight of its being none of these: then nothing of it is known but its length"),
    at: edge,
  }),
]);

const seenSchema = z.union([
  text.describe("value id, printed text, present, absent, or none"),
  z.number().transform(String),
  z.boolean().transform((yes) => (yes ? "present" : "absent")),
  z.array(z.union([text, z.number().transform(String)])).min(1).max(40).describe("one of these"),
  z.strictObject({either: weights}).describe("one of these, with weights"),
]);

export const garmentSchema = z
  .strictObject({
    garment: z.string().min(1).max(100).describe("the owner's number or name for it"),
    title: z.string().max(300).optional(),
    maker: z.union([text, z.array(text).min(1).max(12)]).optional().describe("id of a maker's rule book, several possible, or left out"),
    market: text.optional().describe("where it was sold, when known"),
    type: text.optional().describe("trousers, jacket, shirt, overalls, sweatshirt ..."),
    saw: z
      .strictObject({rows: z.union([rowSchema.transform((row) => [row]), z.array(rowSchema).max(12)]).optional().describe("the printed rows of the label, as printed")})
      .catchall(seenSchema)
      .default({}),
    note: z.string().max(4000).optional(),
  })
  .describe("one physical item and what was seen on it");

/** A garment as written and checked. */
export type Garment = z.infer<typeof garmentSchema>;
export type RowText = z.infer<typeof rowSchema>;
export type Seen = z.infer<typeof seenSchema>;

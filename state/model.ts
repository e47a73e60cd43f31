// What is measured on a garment and the state it is in: shapes only, shared by the rules on them, the store, the server and the screens.
import {z} from "zod";

const line = z.string().max(200);
const id = z.string().regex(/^[a-z][a-z0-9-]*$/).max(60);

/** A length as it was typed, so that 31 1/2 stays 31 1/2; "32.25 in" and "81 cm" carry their own unit. */
export const typedLengthSchema = z.strictObject({
  typed: z.string().min(1).max(20).describe("as typed: 31 1/2, 16.25, 81"),
  unit: z.enum(["in", "cm"]),
});

/** One point of measure. */
export const measureSchema = z.strictObject({
  point: id.describe("point of measure of the garment's type: waist, front-rise, inseam ..."),
  length: typedLengthSchema,
});

/** What the garment's own tag says of its size. */
export const tagSizeSchema = z.strictObject({
  text: line.describe("as printed: W 34 L 32, 15 1/2, M"),
  waist: z.number().positive().max(100).nullable().default(null).describe("inches"),
  inseam: z.number().positive().max(100).nullable().default(null).describe("inches"),
  chest: z.number().positive().max(100).nullable().default(null).describe("inches"),
  neck: z.number().positive().max(40).nullable().default(null).describe("inches"),
});

export const severities = ["slight", "plain", "heavy"] as const;

/** One flaw, where it is and how bad. */
export const flawSchema = z.strictObject({
  kind: id.describe("hole, tear, stain, fraying ... of the rule in use"),
  place: line.default("").describe("place of the garment"),
  side: z.enum(["front", "back", "inside"]).default("front"),
  x: z.number().min(0).max(1).nullable().default(null).describe("where on the drawing of its side, in parts of the width from the left"),
  y: z.number().min(0).max(1).nullable().default(null).describe("where on the drawing of its side, in parts of the height from the top"),
  size: z.number().positive().max(2000).nullable().default(null).describe("longest extent in millimetres"),
  severity: z.enum(severities),
  mended: z.boolean().default(false),
  note: z.string().max(500).default(""),
});

export const alterationSchema = z.strictObject({
  kind: id.describe("shortened hem, waist taken in, replaced zip ... of the rule in use"),
  place: line.default(""),
  note: z.string().max(500).default(""),
});

/** The state of a garment as somebody saw it. */
export const stateSchema = z.strictObject({
  flaws: z.array(flawSchema).max(200).default([]),
  wear: z.enum(["none", "light", "even", "strong", "worn out"]).nullable().default(null),
  fading: z.array(id).max(20).default([]).describe("wear pattern: whiskers, honeycombs, stacks ... of the rule in use"),
  clean: z.enum(["unworn with tags", "washed", "clean", "dusty", "dirty", "smells"]).nullable().default(null),
  alterations: z.array(alterationSchema).max(40).default([]),
  missing: z.array(id).max(40).default([]).describe("what is not there: buttons, zip pull, patch, belt loop ... of the rule in use"),
});

/** All that is measured. */
export const sizesSchema = z.strictObject({
  measures: z.array(measureSchema).max(60).default([]),
  tag: tagSizeSchema.nullable().default(null),
  cloth: z.strictObject({weight: z.number().positive().max(2000), unit: z.enum(["oz/yd2", "g/m2"])}).nullable().default(null),
});

export type TypedLength = z.infer<typeof typedLengthSchema>;
export type Measure = z.infer<typeof measureSchema>;
export type TagSize = z.infer<typeof tagSizeSchema>;
export type Flaw = z.infer<typeof flawSchema>;
export type Alteration = z.infer<typeof alterationSchema>;
export type State = z.infer<typeof stateSchema>;
export type Sizes = z.infer<typeof sizesSchema>;

/** The trade's plain words for a state, best first. */
export const grades = ["deadstock", "excellent", "very good", "good", "fair", "poor"] as const;
export type Grade = (typeof grades)[number];

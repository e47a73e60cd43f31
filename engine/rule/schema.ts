// The shape of a rule book, once: types, validation, the JSON Schema for editors and the tables in the docs all come from here.
import {z} from "zod";

const monthText = z.string().regex(/^\d{4}-(0[1-9]|1[0-2])$/, "a month, written like 1968-03");
const name = z.string().min(1).max(200);
const note = z.string().max(4000);
/** Identifiers are lower-case words joined by dashes; dots separate subjects. */
const id = z.string().regex(/^[a-z0-9]+(?:[-.][a-z0-9]+)*$/, "lower-case letters, digits, dashes and dots, like green-satin");
const share = z.number().min(0).max(1);
const weight = z.number().positive().max(1e6);

export const pairSchema = z.tuple([monthText, monthText]);

export const windowSchema = z
  .strictObject({
    begins: pairSchema.nullish().describe("first seen, usual from: the months between which the use set in; leave out when unknown"),
    ends: pairSchema.nullish().describe("last usual, last seen: the months between which the use died out; leave out when still in use or unknown"),
  })
  .describe("the time a mark was in use, with soft ends");

export const citeSchema = z
  .strictObject({
    ref: z.string().min(1).max(100).describe("id of an entry under sources"),
    at: z.string().max(300).optional().describe("where in the source: section, page"),
    how: z.enum(["read", "part", "memory", "inferred"]).describe("read: seen in the source; part: some of it seen; memory: remembered, not looked up; inferred: own judgement"),
  })
  .describe("what proves the numbers of a rule");

export const sourceSchema = z.strictObject({
  kind: z.enum(["published", "standard", "law", "common practice", "own rack", "invented"]),
  title: name,
  publisher: name.optional(),
  date: z.string().max(60).optional(),
  address: z.string().max(400).optional(),
  seen: z.string().max(1000).optional().describe("where and how far the statement was checked"),
  garments: z.number().int().min(0).optional().describe("for own rack: how many garments"),
});

const oneOrMore = <T extends z.ZodType>(item: T) => z.union([item, z.array(item).min(1)]);
const values = oneOrMore(z.union([z.string().min(1).max(80), z.number().transform(String)]));

export const whenSchema = z
  .strictObject({
    market: values.optional().describe("where the garment was sold"),
    plant: values.optional(),
    lot: values.optional(),
    label: values.optional().describe("label kinds"),
    type: values.optional().describe("garment types: trousers, jacket, shirt, overalls, sweatshirt"),
  })
  .describe("the rule holds only when all of these hold");

export const placeSchema = z.strictObject({
  name,
  look: note.describe("how to look, in words a beginner can follow"),
  effort: z.number().min(1).max(5).describe("1 a glance, 2 turn something out, 3 a loupe, 4 unfold or empty, 5 tools"),
  cost: z.enum(["nothing", "opens a seam"]).default("nothing"),
});

export const pieceSchema = z.strictObject({
  name,
  stray: share.describe("chance that the whole piece came from elsewhere: a label from another garment, replaced buttons"),
  says: z.string().max(200).optional().describe("how to say it aloud: label from another garment"),
});

const common = {
  name,
  says: note.optional().describe("one sentence a collector could say aloud"),
  place: z.string().min(1).max(80),
  piece: z.string().min(1).max(80).optional().describe("the piece it sits on; marks on one piece are stray together"),
  stray: share.default(0.03).describe("chance that this mark alone does not belong: misprint, misreading, left-over stock, replaced part"),
  lost: share.default(0.1).describe("chance that the mark was there and is gone: cut out, worn off"),
  "copied look": z.boolean().default(false).describe("true when a reproduction would copy it"),
  when: whenSchema.optional().describe("garments the rule speaks about at all"),
  elsewhere: share.default(0.02).describe("chance of seeing the mark on a garment that `when` leaves out"),
  source: citeSchema,
  caution: note.optional(),
};

const variantSchema = z.strictObject({when: whenSchema, window: windowSchema, weight: weight.optional(), source: citeSchema.optional(), note: note.optional()});

export const valueSchema = z.strictObject({
  name,
  says: note.optional(),
  window: windowSchema,
  weight: weight.default(1).describe("how common beside the other values where both are in use"),
  outside: share.default(0).describe("height of the window outside its months; above 0 for knowledge from memory"),
  variants: z.array(variantSchema).default([]).describe("other windows for some garments only; the last one that fits counts"),
  source: citeSchema.optional().describe("when it differs from the mark's"),
  caution: note.optional(),
});

export const choiceSchema = z
  .strictObject({
    kind: z.literal("choice"),
    ...common,
    other: z.number().min(0).max(1e6).default(0.05).describe("weight of everything the book does not list"),
    values: z.record(id, valueSchema),
  })
  .describe("one of several exclusive values");

export const presenceSchema = z
  .strictObject({
    kind: z.literal("presence"),
    ...common,
    window: windowSchema,
    inside: share.describe("share of garments that carried it inside the window"),
    outside: share.describe("share outside the window: early adopters, imports, mistakes"),
    variants: z.array(variantSchema).default([]),
  })
  .describe("seen or not seen");

export const serialSchema = z
  .strictObject({
    kind: z.literal("serial"),
    ...common,
    knots: z
      .array(z.strictObject({month: monthText, number: z.number().int().min(0), how: z.enum(["read", "memory", "inferred"]).default("read")}))
      .min(2)
      .describe("the first number issued in each of these months, ascending"),
    fuzz: z.number().min(0).max(240).describe("months by which the issue date read off the knots may be wrong, either way"),
    use: z
      .strictObject({
        rise: z.number().min(0).max(600).describe("months from issue until use is usual"),
        usual: z.number().min(0).max(1200).nullish().describe("months after issue to which use stays usual; leave out when open"),
        longest: z.number().min(0).max(1200).nullish().describe("months after issue by which use has ended"),
      })
      .describe("the lag from the issue of a number to its use on a garment"),
  })
  .describe("a number that only grows with time");

const table = z.record(z.string().min(1).max(3), z.number().int());
export const partSchema = z.union([
  z.strictObject({month: z.union([z.enum(["plain", "padded"]), table])}).describe("1-12 plain or padded, or a table letter: month"),
  z.strictObject({quarter: z.enum(["plain", "letters"])}).describe("1-4, or A-D"),
  z.strictObject({week: z.enum(["plain", "padded"])}).describe("ISO 8601 week"),
  z.strictObject({day: z.enum(["plain", "padded"])}).describe("day of the month"),
  z.strictObject({"day of year": z.enum(["plain", "padded"])}),
  z.strictObject({year: z.union([z.enum(["last figure", "two figures", "four figures"]), table])}).describe("figures, or a table letter: year"),
  z.strictObject({"fiscal year": z.enum(["last figure", "two figures", "four figures"])}).describe("US federal fiscal year"),
  z.strictObject({text: z.string().min(1).max(40)}).describe("always these characters"),
  z.strictObject({digits: z.union([z.number().int().min(1).max(12), z.tuple([z.number().int().min(0).max(12), z.number().int().min(1).max(12)])])}).describe("figures that say nothing of the date: how many, or from-to"),
  z.strictObject({letters: z.union([z.number().int().min(1).max(12), z.tuple([z.number().int().min(0).max(12), z.number().int().min(1).max(12)])])}),
]);

export const schemeSchema = z
  .strictObject({
    name,
    parts: z.array(partSchema).min(1).max(16),
    window: windowSchema,
    weight: weight.default(1),
    when: whenSchema.optional(),
    lag: z.strictObject({usual: z.number().int().min(0).max(120), longest: z.number().int().min(0).max(240)}).optional().describe("months from the date in the code to the making: evenly likely up to usual, then falling to 0 at longest"),
    source: citeSchema,
    reads: z.record(z.string(), z.string()).default({}).describe("specimens: printed code to what it must read as (2-4 figure months like 1968-03, or a span 1968-03..1968-04), one of its readings"),
    "never reads": z.array(z.string()).default([]).describe("specimens that must not read"),
    note: note.optional(),
  })
  .describe("how dates were written as numbers in some period");

export const codedSchema = z
  .strictObject({
    kind: z.literal("coded"),
    ...common,
    schemes: z.array(z.string()).min(1).describe("ids of code schemes"),
    other: z.number().min(0).max(1e6).default(0.05).describe("weight of a text that no scheme reads"),
  })
  .describe("text whose format carries a date");

export const repeatSchema = z
  .strictObject({
    kind: z.literal("repeat"),
    ...common,
    of: z.enum(["plant", "lot", "fabric"]),
    window: windowSchema,
    inside: share.default(1),
    outside: share.default(0),
  })
  .describe("a place that repeats a code which the label also carries: the stamp on the back of a button repeats the plant");

const fieldSchema = z.union([
  z.enum(["date", "plant", "lot", "fabric", "size", "inspector", "other"]),
  z.enum([" ", "-", ".", "/"]).describe("what stands between two fields; none means joined"),
  z.strictObject({text: z.string().min(1).max(24)}).describe("always these characters"),
]);

export const layoutRowSchema = z.strictObject({
  share: share.describe("share of labels on which this row can be read"),
  at: z.enum(["face", "back", "top edge", "left edge", "right edge", "bottom edge"]).optional(),
  fields: z.array(fieldSchema).min(1).max(16),
});

export const labelKindSchema = z.strictObject({
  ...valueSchema.shape,
  pieces: z.number().int().min(1).max(12).default(1),
  rows: z.array(layoutRowSchema).max(8).default([]).describe("the printed rows, top to bottom"),
  schemes: z.array(z.string()).optional().describe("ids of the code schemes this kind can carry; all when left out"),
});

export const labelsSchema = z.strictObject({
  ...common,
  other: z.number().min(0).max(1e6).default(0.05),
  extra: share.default(0.05).describe("chance of one more row than the layout says"),
  kinds: z.record(id, labelKindSchema),
});

export const widthsSchema = z.array(z.strictObject({window: windowSchema, shares: z.record(z.string().regex(/^[1-8]$/), share)})).min(1);

export const codeListSchema = z
  .strictObject({
    widths: widthsSchema.describe("how many figures the codes had, by period"),
    unlisted: z.number().min(0).max(1e6).default(1).describe("weight of all codes the list does not know"),
    prefix: z.strictObject({share, figures: z.number().int().min(1).max(4)}).optional().describe("extra figures that sometimes precede the code"),
    source: citeSchema,
    codes: z
      .record(
        z.string().regex(/^[0-9A-Z]{1,8}$/),
        z.strictObject({name: name.optional(), place: z.string().max(100).optional(), window: windowSchema, weight: weight.default(1), source: citeSchema.optional(), note: note.optional()}),
      )
      .default({}),
  })
  .describe("the plant, lot or fabric codes of a maker");

export const figuresSchema = z.strictObject({figures: z.tuple([z.number().int().min(1).max(8), z.number().int().min(1).max(8)])});

export const groupSchema = z.strictObject({
  marks: z.array(z.string()).min(2),
  temper: z.number().gt(0).max(1).describe("1 counts the marks as independent; less when they changed together"),
  note: note.optional(),
});

export const markSchema = z.discriminatedUnion("kind", [choiceSchema, presenceSchema, serialSchema, codedSchema, repeatSchema]);

export const bookSchema = z
  .strictObject({
    book: id,
    title: name,
    edition: z.number().int().min(1),
    kind: z.enum(["maker", "public"]),
    covers: z.strictObject({from: monthText, until: monthText.nullish()}),
    markets: z.record(id, weight).default({}).describe("where sold, with weights"),
    note: note.optional(),
    sources: z.record(z.string().min(1).max(100), sourceSchema),
    places: z.record(id, placeSchema).default({}),
    pieces: z.record(id, pieceSchema).default({}),
    marks: z.record(id, markSchema).default({}),
    labels: labelsSchema.optional(),
    schemes: z.record(id, schemeSchema).default({}),
    plants: codeListSchema.optional(),
    lots: codeListSchema.optional(),
    fabrics: codeListSchema.optional(),
    fields: z.strictObject({size: figuresSchema.optional(), inspector: figuresSchema.optional(), other: figuresSchema.optional()}).default({}),
    groups: z.record(id, groupSchema).default({}),
  })
  .describe("a set of dated rules with their sources");

/** A rule book as written and checked: the plain form. */
export type Book = z.infer<typeof bookSchema>;
export type Mark = z.infer<typeof markSchema>;
export type ChoiceMark = z.infer<typeof choiceSchema>;
export type PresenceMark = z.infer<typeof presenceSchema>;
export type SerialMark = z.infer<typeof serialSchema>;
export type CodedMark = z.infer<typeof codedSchema>;
export type RepeatMark = z.infer<typeof repeatSchema>;
export type Labels = z.infer<typeof labelsSchema>;
export type LabelKind = z.infer<typeof labelKindSchema>;
export type LayoutRow = z.infer<typeof layoutRowSchema>;
export type Scheme = z.infer<typeof schemeSchema>;
export type Part = z.infer<typeof partSchema>;
export type CodeList = z.infer<typeof codeListSchema>;
export type WindowText = z.infer<typeof windowSchema>;
export type When = z.infer<typeof whenSchema>;
export type Value = z.infer<typeof valueSchema>;
export type Cite = z.infer<typeof citeSchema>;
export type Source = z.infer<typeof sourceSchema>;

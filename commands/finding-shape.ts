// The documented shape of a finding as JSON. Months are written "1968-03", probabilities are numbers from 0 to 1.
import {z} from "zod";

const month = z.string().regex(/^\d{4}-\d{2}$/);
const probability = z.number().min(0).max(1);
const words = z.string();

const runSchema = z.strictObject({from: month, until: month}).describe("months from-until, both included");
const shareSchema = z.strictObject({from: z.number().int(), probability});

const readingSchema = z.strictObject({
  probability,
  printed: words.describe("the row as this reading takes it; fields count its characters"),
  date: words.nullable().describe("what the date says, null when none is read"),
  scheme: words.nullable(),
  months: z.array(month).describe("months the evidence leaves, likeliest first"),
  plant: words.nullable(),
  lot: words.nullable(),
  fabric: words.nullable(),
  fields: z.array(z.strictObject({field: words, text: words, from: z.number().int(), until: z.number().int()})).describe("characters by position, until not included"),
});

export const findingShape = z
  .strictObject({
    format: z.literal("ticking finding 1"),
    garment: words,
    verdict: z.strictObject({
      kind: z.enum(["one date", "two dates", "cannot tell"]).describe("two dates: a later reproduction is likelier than not"),
      words: words.describe("what is named: a month, year, decade, range, or two times"),
      probability,
      sureness: z.enum(["sure", "likely", "open", "cannot tell"]),
      sentences: z.array(words).describe("the finding as it could be said aloud"),
    }),
    best: z.strictObject({month, probability}),
    noEarlier: month.describe("2.5 in 100 lie before"),
    noLater: month.describe("2.5 in 100 lie after"),
    ranges: z.array(z.strictObject({share: probability, probability, months: z.number().int(), runs: z.array(runSchema)})).describe("smallest sets of months that hold 50, 90, 95 in 100"),
    makers: z.array(z.strictObject({maker: words.nullable().describe("null: a maker without a rule book"), probability})),
    entropy: z.number().describe("bits still open over the months"),
    months: z.strictObject({first: month, probabilities: z.array(probability)}).describe("month by month from first"),
    years: z.array(shareSchema),
    decades: z.array(shareSchema).describe("1960 stands for 1960 to 1969"),
    rows: z.array(z.strictObject({row: words, characters: z.array(words), readings: z.array(readingSchema).describe("those above 1 in 1000")})),
    ledger: z.array(z.strictObject({mark: words, bits: z.number(), movedMonths: z.number().describe("above 0: towards later"), stray: probability.nullable()})),
    pieces: z.array(z.strictObject({piece: words, says: words, marks: z.array(words), stray: probability})),
    odd: z.array(z.strictObject({id: words, says: words, probability, piece: z.boolean()})),
    twoDates: z
      .strictObject({
        probability,
        look: z.array(runSchema).describe("if so, 90 in 100 for what was copied"),
        made: z.array(runSchema).describe("if so, 90 in 100 for the making"),
        speaking: z.array(z.strictObject({mark: words, bits: z.number(), side: z.enum(["look", "substance"])})),
      })
      .nullable(),
    next: z.array(z.strictObject({mark: words, name: words, place: words, look: words, bits: z.number(), effort: z.number(), opensSeam: z.boolean()})),
    unread: z.array(z.strictObject({mark: words, text: words, why: words})),
    rules: z.array(
      z.strictObject({
        mark: words,
        name: words,
        seen: words,
        says: words.nullable(),
        window: words.nullable(),
        book: words,
        edition: z.number().int(),
        source: words.nullable().describe("title"),
        sourceKind: words.nullable(),
        at: words.nullable().describe("where in the source"),
        how: z.enum(["read", "part", "memory", "inferred"]),
        caution: words.nullable(),
      }),
    ),
    notice: words,
  })
  .describe("a finding");

export type FindingJson = z.infer<typeof findingShape>;

// The written rule by which flaws become a grade: data that the owner can change, point by point and word by word.
import {z} from "zod";
import {grades, severities, stateSchema, type Grade} from "./model.ts";

const id = z.string().regex(/^[a-z][a-z0-9-]*$/).max(60);
const line = z.string().max(200);
const points = z.number().int().min(0).max(100);
const cap = z.enum(grades).nullable().default(null);

const growing = ({slight, plain, heavy}: {slight: number; plain: number; heavy: number}) => slight <= plain && plain <= heavy;
const grow = {message: "points that grow from slight to heavy", path: ["heavy"]};

export const flawRuleSchema = z
  .strictObject({
    kind: id,
    name: line.min(1).describe("as it would be said: hole"),
    slight: points,
    plain: points,
    heavy: points,
    mended: z.number().min(0).max(1).describe("the part of its points that stays once it is mended"),
    large: z.strictObject({from: z.number().positive().max(2000).describe("millimetres"), times: z.number().min(1).max(10)}).nullable().default(null).describe("from this extent on its points count so many times"),
    cap: z.strictObject({from: z.enum(severities), grade: z.enum(grades)}).nullable().default(null).describe("one this bad lets the garment be no better than the grade, mended or not"),
  })
  .refine(growing, grow);

export const thingRuleSchema = z.strictObject({kind: id, name: line.min(1), points, cap: cap.describe("with it the garment is no better than this grade")});

const once = (list: readonly {readonly kind: string}[]) => new Set(list.map(({kind}) => kind)).size === list.length;
const twice = {message: "a list in which every kind stands once"};

export const gradeRuleSchema = z.strictObject({
  title: line.default("House rule"),
  flaws: z.array(flawRuleSchema).min(1).max(80).refine(once, twice),
  other: z.strictObject({slight: points, plain: points, heavy: points}).refine(growing, grow).describe("a flaw of a kind that the rule does not name"),
  places: z.array(z.strictObject({word: line.min(1), times: z.number().min(0).max(5)})).max(40).describe("a flaw at a place with this word counts so many times"),
  alterations: z.array(thingRuleSchema).max(60).refine(once, twice),
  missing: z.array(thingRuleSchema).max(60).refine(once, twice),
  fading: z.array(z.strictObject({kind: id, name: line.min(1)})).max(40).refine(once, twice).describe("patterns of wear: noted, never a flaw"),
  wear: z.strictObject({none: points, light: points, even: points, strong: points, "worn out": points}),
  clean: z.strictObject({"unworn with tags": points, washed: points, clean: points, dusty: points, dirty: points, smells: points}),
  unworn: z.boolean().describe("deadstock only when it is told to be unworn, with its tags"),
  upTo: z
    .strictObject({deadstock: points, excellent: z.number().int().min(0).max(1000), "very good": z.number().int().min(0).max(1000), good: z.number().int().min(0).max(1000), fair: z.number().int().min(0).max(1000)})
    .refine((ends) => grades.slice(1, 5).every((grade, i) => ends[grade as keyof typeof ends] >= ends[grades[i] as keyof typeof ends]), {message: "points that grow from deadstock to fair"})
    .describe("the most points for each word; beyond the last it is poor"),
});

export type FlawRule = z.infer<typeof flawRuleSchema>;
export type ThingRule = z.infer<typeof thingRuleSchema>;
export type GradeRule = z.infer<typeof gradeRuleSchema>;

/** The better of two grades comes first. */
export const gradeIndex = (grade: Grade) => grades.indexOf(grade);

export const wears = stateSchema.shape.wear.unwrap().unwrap().options;
export const cleans = stateSchema.shape.clean.unwrap().unwrap().options;

// What the words on a label suggest: marks with their words and why, label kinds with odds, and the size it prints.
import {z} from "zod";
import {tagSizeSchema} from "../../state/model.ts";
import {rackCommand, unfit} from "../rack/rack-command.ts";
import * as say from "./problems.ts";
import {kindOddsSchema, suggestKinds} from "./suggest-kinds.ts";
import {suggestMarks} from "./suggest-marks.ts";
import {suggestionSchema} from "./words/suggestion.ts";
import {findSizes} from "./words/tag-size.ts";

export const wordsOnLabel = rackCommand({
  name: "reading.words",
  summary: "say which marks, label kinds and sizes the rows of a label suggest",
  route: {method: "post", path: "/api/read/words"},
  input: z.strictObject({
    rows: z.array(z.string().max(200)).max(40).describe("all rows of a label, words and codes, as they were read"),
    makers: z.array(z.string().max(80)).max(12).default([]).describe("ids of possible makers' books; none: public marks alone, and label kinds of all makers"),
    place: z.string().max(80).nullable().default(null).describe("id of the place that the photo shows"),
  }),
  output: z.strictObject({marks: z.array(suggestionSchema), kinds: z.array(kindOddsSchema).describe("likeliest first; odds add up to 1"), sizes: z.array(tagSizeSchema)}),
  async run({rows, makers, place}, {world}) {
    if (rows.every((row) => row.trim() === "")) return unfit([say.noRowsGiven()]);
    const sizes = findSizes(rows).map(({text, waist, inseam, chest, neck}) => ({text, waist, inseam, chest, neck}));
    return {answer: {marks: suggestMarks(rows, world, {makers, place}), kinds: suggestKinds(rows, world, makers.length > 0 ? {makers} : {}), sizes}};
  },
});

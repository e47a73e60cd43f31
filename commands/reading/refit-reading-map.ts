// Fits the reading map to the rows that the owner has settled, shows reliability before and after, and saves the map unless it is only a try.
import {z} from "zod";
import {fitMap, judgeMap} from "../../reader/fit-map.ts";
import {readingMapSchema} from "../../reader/model.ts";
import {allRecords} from "../rack/all-records.ts";
import {rackCommand, unfit} from "../rack/rack-command.ts";
import {readSetting} from "../rack/read-setting.ts";
import {saveSetting} from "../rack/setting-by-name.ts";
import * as say from "./problems.ts";
import {confirmedRows} from "./refit/confirmed.ts";

/** Fewer confirmed rows are not fitted to. Source: own choice. */
export const fewestConfirmed = 20;

const share = z.number().min(0).max(1);
const binsSchema = z.array(z.strictObject({from: share, to: share, count: z.number().int(), said: share.describe("on average"), right: share.describe("share that was so")}));

const judgedSchema = z.strictObject({
  rows: z.number().int(),
  characters: z.number().int(),
  surprise: z.number().describe("of the truth of a row, in nats"),
  rowError: z.number().describe("mean distance of said and right, whole rows"),
  characterError: z.number(),
  rowBins: binsSchema.describe("likeliest readings of whole rows"),
  characterBins: binsSchema,
});

export const refitSchema = z.strictObject({
  confirmed: z.number().int().describe("rows that the owner has settled"),
  before: judgedSchema.describe("under the map in use"),
  after: judgedSchema.describe("under the fitted map, on the same rows"),
  map: readingMapSchema,
  was: readingMapSchema,
  saved: z.boolean(),
});

export const refitReadingMap = rackCommand({
  name: "reading.refit",
  summary: "fit the reading map to the rows of photos that were settled, and show reliability before and after",
  route: {method: "post", path: "/api/read/refit"},
  input: z.strictObject({try: z.boolean().default(true).describe("true: save nothing")}),
  output: refitSchema,
  async run({try: tried}, rack) {
    const readings = [];
    for await (const {removed, content} of allRecords(rack.store)) if (!removed) readings.push(...content.labels);
    const confirmed = confirmedRows(readings);
    if (confirmed.length < fewestConfirmed) return unfit([say.tooFewConfirmed(confirmed.length, fewestConfirmed)]);
    const {rev, value: was} = await readSetting(rack.store, "reading-map");
    const map = fitMap(confirmed);
    if (!tried) {
      const saved = await saveSetting.run({name: "reading-map", base: rev, value: map}, rack);
      if (saved.refused) return {refused: saved.refused, problems: saved.problems, ...(saved.more ? {more: saved.more} : {})};
    }
    return {answer: {confirmed: confirmed.length, before: judgeMap(confirmed, was), after: judgeMap(confirmed, map), map, was, saved: !tried}};
  },
});

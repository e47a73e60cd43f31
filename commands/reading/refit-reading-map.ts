// Fits the reading map to the rows that the owner has settled, shows reliability before and after, and saves the map unless it is only a try.
import {z} from "zod";
import {readingMapSchema} from "../../reader/model.ts";
import {allRecords} from "../rack/all-records.ts";
import {rackCommand, unfit} from "../rack/rack-command.ts";
import {readSetting} from "../rack/read-setting.ts";
import {saveSetting} from "../rack/setting-by-name.ts";
import * as say from "./problems.ts";
import {confirmedRows} from "./refit/confirmed.ts";
import {fitMap} from "./refit/fit-map.ts";
import {reliabilityOf, reliabilitySchema} from "./refit/reliability.ts";

/** Fewer confirmed rows are not fitted to. Source: own choice. */
export const fewestConfirmed = 20;

export const refitSchema = z.strictObject({
  confirmed: z.number().int().describe("rows that the owner has settled"),
  before: reliabilitySchema.describe("under the map in use"),
  after: reliabilitySchema.describe("under the fitted map, on the same rows"),
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
    return {answer: {confirmed: confirmed.length, before: reliabilityOf(confirmed, was), after: reliabilityOf(confirmed, map), map, was, saved: !tried}};
  },
});

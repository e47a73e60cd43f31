// The shapes of wishes for paper over HTTP.
import {z} from "zod";
import {chartSizes, forms, mostPhotos, sheetSizes, tagCodes} from "../commands/paper/choices.ts";
import {listingTemplateSchema} from "../commands/paper/listing-template.ts";
import {tagFormats} from "../commands/paper/tag-format.ts";
import {recordSchema} from "../store/model.ts";

const id = recordSchema.shape.id;
const idsUpTo = (most: number) => z.array(id).min(1).max(most).describe("garments, in the order in which they are printed");
const size = z.enum(sheetSizes).default("a4");
const photos = z.number().int().min(0).max(mostPhotos).default(4).describe("photos shown on a sheet, the first ones");
const format = z.enum(tagFormats.map((one) => one.id) as [string, ...string[]]).default(tagFormats[0]!.id);
const code = z.enum(tagCodes).default("qr").describe("square code, or bars");
const price = z.boolean().default(true).describe("whether what is asked stands on tags");
const form = z.enum(forms).default("plain");

const worth = z.boolean().default(false).describe("whether sheets tell what a garment may be worth");

export const sheetWish = z.strictObject({ids: idsUpTo(50), size, photos, worth});
export const tagWish = z.strictObject({ids: idsUpTo(5000), size, format, code, price});
export const tagShown = z.strictObject({id, format, code, price});
export const listingWish = z.strictObject({id, form});
export const listingTry = z.strictObject({id, form, template: listingTemplateSchema.describe("a template that is tried, not kept")});
export const chartWish = z.strictObject({book: z.string().min(1).max(80), size: z.enum(chartSizes).default("a3")});
export const batchWish = z.strictObject({what: z.enum(["sheet", "tags", "listing"]), ids: idsUpTo(5000), size, photos, worth, format, code, price, form});
export const pageWish = z.strictObject({page: z.string().regex(/^[a-z0-9]{12,32}\.html$/).describe("id of the garment with .html behind it"), photos, worth});

export const checkAnswer = z.strictObject({
  result: z.enum(["same", "once", "differs"]).describe("same: as it is kept now; once: as it was kept at an earlier step; differs: never"),
  rev: z.number().int().nullable().describe("the step that the sheet says"),
  at: z.string().nullable(),
  changed: z.array(z.string()).describe("what has changed since that step"),
  words: z.string(),
  garment: z.strictObject({id: z.string().nullable(), number: z.string()}),
  on: z.string(),
});

export const batchLine = z.union([
  z.strictObject({done: z.number().int(), of: z.number().int()}),
  z.strictObject({file: z.string().describe("under /api/paper/file/"), bytes: z.number().int(), problems: z.array(z.record(z.string(), z.unknown())).describe("of garments that were left out")}),
]);

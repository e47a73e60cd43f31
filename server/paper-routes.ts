// Papers over the wire: dating sheets, hang tags, listing text, wall charts, and whether a printed sheet still holds.
import type {Context} from "hono";
import {z} from "zod";
import type {Form} from "../commands/paper/choices.ts";
import {formatNamed} from "../commands/paper/tag-format.ts";
import * as sayRack from "../commands/rack/problems.ts";
import * as sayInput from "../commands/problems.ts";
import {readSetting} from "../commands/rack/read-setting.ts";
import type {Rack} from "../commands/rack/rack.ts";
import {nearest, type Problem} from "../engine/index.ts";
import {checkCode, checkSchema} from "../paper/check-code.ts";
import {svgOf} from "../paper/draw/svg-page.ts";
import {sheetPage} from "../paper/html/sheet-html.ts";
import {sheetStyle} from "../paper/html/style.ts";
import {formOf} from "../paper/listing/forms.ts";
import {makeListing, makeSheet, makeTag, photosOf, type ReadPhoto} from "../paper/make.ts";
import {sheetsTitle} from "../paper/print.ts";
import * as say from "../paper/problems.ts";
import type {Sheet} from "../paper/sheet/sheet.ts";
import {drawTag} from "../paper/tag/draw-tag.ts";
import type {Tag} from "../paper/tag/tag.ts";
import {printPath} from "../rulebooks/place.ts";
import {checkShape} from "../rulebooks/shape.ts";
import type {GarmentRecord} from "../store/model.ts";
import {lines} from "./answer.ts";
import {runBatch} from "./paper-batch.ts";
import type {PaperFiles} from "./paper-files.ts";
import type {Press} from "./paper-press.ts";
import * as shape from "./paper-shapes.ts";
import {Refused} from "./problem-details.ts";
import {readJson} from "./read-body.ts";
import {readQuery} from "./read-query.ts";
import type {Route} from "./route.ts";

export interface PaperGiven {
  readonly rack: () => Promise<Rack>;
  readonly press: Press;
  readonly files: PaperFiles;
  readonly readPhoto: ReadPhoto;
}

const pdf = "application/pdf";
const mostBytes = 4_000_000;

export function paperRoutes({rack, press, files, readPhoto}: PaperGiven): Route[] {
  const optionsFor = async (open: Rack) => ({on: open.now.slice(0, 10), author: (await readSetting(open.store, "owner")).value.name});
  return [
    posted("paper.sheet", "make dating sheets as one PDF", "/api/paper/sheet", shape.sheetWish, pdf, async ({ids, size, photos, worth}) => {
      const open = await rack();
      const options = await optionsFor(open);
      const sheets: Sheet[] = [];
      for (const record of await recordsOf(ids, open)) sheets.push(orRefuse(await makeSheet(record, open, {on: options.on, photos, worth})));
      const job = await press.sheets(sheetsTitle(sheets.map(({number}) => number)), size, options);
      for (const sheet of sheets) await job.add(sheet, await photosOf(sheet, readPhoto));
      return file(await job.end(), pdf, sheets.length === 1 ? `dating-sheet-${sheets[0]!.number}.pdf` : "dating-sheets.pdf");
    }),
    got("paper.sheet-page", "show a dating sheet as a web page that prints", "/api/paper/sheet/{page}", shape.pageWish, "text/html", [404], async ({page, photos, worth}) => {
      const open = await rack();
      const [record] = await recordsOf([page.replace(/\.html$/, "")], open);
      const sheet = orRefuse(await makeSheet(record!, open, {on: open.now.slice(0, 10), photos, worth}));
      return shown(sheetPage(sheet, {addressOf: (photo) => `/api/photos/${photo}/shown`, styleAt: "/api/paper/style.css"}), "text/html; charset=utf-8");
    }),
    got("paper.style", "give the look of sheets as web pages", "/api/paper/style.css", z.strictObject({}), "text/css", [], async () => shown(sheetStyle, "text/css; charset=utf-8")),
    posted("paper.tags", "make sheets of hang tags as one PDF", "/api/paper/tags", shape.tagWish, pdf, async ({ids, size, format, code, price}) => {
      const open = await rack();
      const tags: Tag[] = [];
      for (const record of await recordsOf(ids, open)) tags.push(await makeTag(record, open, {price}));
      return file(await press.tags(tags, {format, code, size}, await optionsFor(open)), pdf, "hang-tags.pdf");
    }),
    got("paper.tag", "show a hang tag as it will be printed", "/api/paper/tag/{id}", shape.tagShown, "image/svg+xml", [404], async ({id, format, code, price}) => {
      const open = await rack();
      const [record] = await recordsOf([id], open);
      return shown(svgOf(drawTag(await makeTag(record!, open, {price}), formatNamed(format)!, code)), "image/svg+xml");
    }),
    got("paper.listing", "write listing text from what was examined", "/api/paper/listing/{id}", shape.listingWish, "text/plain", [404], async ({id, form}) => listing(id, form, await rack())),
    posted("paper.listing-try", "write listing text by a template that is tried", "/api/paper/listing", shape.listingTry, "text/plain", async ({id, form, template}) => listing(id, form, await rack(), template)),
    got("paper.chart", "make the wall chart of a rule book as a PDF", "/api/paper/chart/{book}", shape.chartWish, pdf, [404], async ({book: id, size}) => {
      const open = await rack();
      const {books, today} = open.world;
      const book = books.find((one) => one.book === id);
      const ids = books.map((one) => one.book);
      if (!book) throw new Refused(404, [sayInput.unknownBook("book", id, ids, nearest(id, ids))]);
      return file(await press.chart(book, today, size, await optionsFor(open)), pdf, `wall-chart-${id}.pdf`);
    }),
    posted("paper.batch", "make papers of many garments, a line for each that is done", "/api/paper/batch", shape.batchWish, "application/x-ndjson", async (wish) => {
      const open = await rack();
      const records = await recordsOf(wish.ids, open);
      return lines(runBatch(records, wish, {rack: open, press, files, readPhoto, options: await optionsFor(open)}));
    }, shape.batchLine),
    got("paper.file", "fetch a finished paper", "/api/paper/file/{name}", z.strictObject({name: z.string().max(80)}), "application/octet-stream", [404], async ({name}) => {
      const bytes = await files.read(name);
      if (!bytes) throw new Refused(404, [say.fileGone(name)]);
      const ending = name.split(".").at(-1)!;
      return file(bytes, ending === "pdf" ? pdf : (Object.values(formOf).find((one) => one.ending === ending)?.mime ?? "application/octet-stream"), name);
    }),
    posted("paper.check", "say whether a printed sheet still says what is kept, or what a file says", "/api/paper/check", checkSchema, "application/json", async (wish) => {
      const {answer, problems, ...rest} = await checkCode(wish, await rack());
      if (problems) throw new Refused("unknown" in rest && rest.unknown ? 404 : 422, problems);
      return Response.json(answer, {headers: {"cache-control": "no-store"}});
    }, shape.checkAnswer),
  ];
}

/** Garments in their order; all of them or a refusal. */
async function recordsOf(ids: readonly string[], {store}: Rack): Promise<GarmentRecord[]> {
  const records: GarmentRecord[] = [];
  const problems: Problem[] = [];
  for (const id of ids) {
    const record = await store.get(id);
    record ? records.push(record) : problems.push(sayRack.noGarment(id));
  }
  if (problems.length > 0) throw new Refused(404, problems);
  return records;
}

async function listing(id: string, form: Form, open: Rack, template?: z.output<typeof shape.listingTry>["template"]): Promise<Response> {
  const [record] = await recordsOf([id], open);
  return shown(orRefuse(await makeListing(record!, open, {on: open.now.slice(0, 10), form, ...(template ? {template} : {})})), formOf[form].mime);
}

function orRefuse<T>({made, problems}: {readonly made: T; readonly problems?: undefined} | {readonly made?: undefined; readonly problems: readonly Problem[]}): T {
  if (problems) throw new Refused(422, problems);
  return made;
}

/** A file that a browser shows or keeps, as its reader likes. */
const file = (bytes: Uint8Array, mime: string, name: string): Response =>
  new Response(bytes as Uint8Array<ArrayBuffer>, {headers: {"content-type": mime, "content-length": String(bytes.length), "content-disposition": `inline; filename="${name.replace(/[^\w.-]/g, "-")}"`, "cache-control": "no-store"}});

const shown = (text: string, mime: string): Response => new Response(text, {headers: {"content-type": mime, "cache-control": "no-store"}});

/** A route that takes its input from a JSON body. */
function posted<Input extends z.ZodObject>(name: string, summary: string, path: string, input: Input, mime: string, answer: (given: z.output<Input>) => Promise<Response>, schema: z.ZodType | null = null): Route {
  return {
    name, summary, method: "post", path,
    shapes: {path: {}, query: {}, body: input, answer: {status: 200, mime, schema}, refusals: [400, 404, 413, 415, 422]},
    answer: async (context: Context) => answer(checked(input, await readJson(context.req.raw, mostBytes))),
  };
}

/** A route that takes its input from the path and the query. */
function got<Input extends z.ZodObject>(name: string, summary: string, path: string, input: Input, mime: string, refusals: readonly number[], answer: (given: z.output<Input>) => Promise<Response>): Route {
  const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, entry]) => entry!);
  const shapes = Object.entries(input.shape) as [string, z.ZodType][];
  const [pick, rest] = [true, false].map((wanted) => Object.fromEntries(shapes.filter(([entry]) => inPath.includes(entry) === wanted))) as [Record<string, z.ZodType>, Record<string, z.ZodType>];
  return {
    name, summary, method: "get", path,
    shapes: {path: pick, query: rest, body: null, answer: {status: 200, mime, schema: null}, refusals: [...refusals, 422]},
    answer: async (context: Context) => answer(checked(input, {...(readQuery(new URL(context.req.url).searchParams, rest) as object), ...context.req.param()})),
  };
}

function checked<Input extends z.ZodObject>(input: Input, given: unknown): z.output<Input> {
  const {fits, problems} = checkShape(input, given, (path) => printPath(path) || "input");
  if (problems) throw new Refused(422, problems);
  return fits as z.output<Input>;
}

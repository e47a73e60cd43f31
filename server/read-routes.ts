// Photos of labels read over the wire: for pages that cannot read by themselves, and for other programs.
import {z} from "zod";
import {readSetting} from "../commands/rack/read-setting.ts";
import * as sayReading from "../commands/reading/problems.ts";
import {labelReadingSchema, quadSchema} from "../reader/model.ts";
import {checkShape} from "../rulebooks/shape.ts";
import {printPath} from "../rulebooks/place.ts";
import {photoSchema} from "../store/model.ts";
import {mostPhotoBytes} from "../store/photo/sizes.ts";
import type {Store} from "../store/store.ts";
import type {BooksUsed} from "./books-used.ts";
import type {PhotoReader} from "./photo-reader.ts";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";
import {mediaOf, readBytes} from "./read-body.ts";
import type {Route} from "./route.ts";

const medias = [...photoSchema.shape.mime.options, "application/octet-stream"];
/** Photos that may wait at the same time. Source: own choice. */
export const mostWaiting = 8;

/** "12,8 300,10 298,120 10,118": four corners of the upright original. */
const outlineText = z.string().max(200).regex(/^\s*-?[\d.]+,-?[\d.]+(?:\s+-?[\d.]+,-?[\d.]+){3}\s*$/, "four corners, like 12,8 300,10 298,120 10,118");

const querySchema = z.strictObject({
  outline: outlineText.optional().describe("four corners of the label in pixels of the upright original: top left, top right, bottom right, bottom left; found out when left out"),
  turn: z.enum(["0", "90", "180", "270"]).optional().describe("degrees clockwise that make the label upright; found out when left out"),
  maker: z.string().max(300).optional().describe("ids of possible makers' books, divided by |; what their labels can print then helps to read"),
  label: z.string().max(80).optional().describe("label kind, when known"),
});

/** @param used  the books in use */
export function readRoutes(store: Store, used: BooksUsed, photos: PhotoReader): Route[] {
  return [
    {
      name: "reading.read",
      summary: "read the label in a photo: its rows with doubt; nothing is kept",
      method: "post",
      path: "/api/read",
      shapes: {path: {}, query: querySchema.shape, body: medias, answer: {status: 200, mime: "application/json", schema: labelReadingSchema}, refusals: [413, 415, 422, 503]},
      async answer(context) {
        const media = mediaOf(context.req.raw);
        if (!medias.includes(media)) throw new Refused(415, [say.wrongMedia(media, medias)]);
        const {fits, problems: unfit} = checkShape(querySchema, context.req.query(), (path) => printPath(path));
        if (unfit) throw new Refused(422, unfit);
        const full = () => photos.waiting() >= mostWaiting;
        const busy = () => new Refused(503, [sayReading.readerBusy(photos.waiting())], {}, {"retry-after": "5"});
        if (full()) throw busy();
        const bytes = await readBytes(context.req.raw, mostPhotoBytes);
        const makers = fits.maker?.split("|").map((maker) => maker.trim()) ?? [];
        const [{books: all}, {value: map}] = [await used.world(), await readSetting(store, "reading-map")];
        const books = all.filter(({book, kind}) => kind === "maker" && makers.includes(book));
        if (full()) throw busy();
        const done = await photos.read({
          bytes, books, makers, map, label: fits.label !== undefined && books.some(({labels}) => fits.label! in (labels?.kinds ?? {})) ? fits.label : null,
          ...(fits.turn === undefined ? {} : {turn: Number(fits.turn) as 0 | 90 | 180 | 270}),
          ...(fits.outline === undefined ? {} : {outline: cornersOf(fits.outline)}),
        });
        if (done.fault !== undefined) throw new Error(done.fault);
        if (!done.reading) throw new Refused(done.noReader ? 503 : 422, done.problems);
        return context.json(done.reading);
      },
    },
  ];
}

const cornersOf = (text: string) => quadSchema.parse(text.trim().split(/\s+/).map((corner) => {
  const [x, y] = corner.split(",").map(Number);
  return {x, y};
}));

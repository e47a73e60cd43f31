// Photos over the wire: taken in as bytes, handed out in three sizes that never change.
import type {Context} from "hono";
import {z} from "zod";
import * as sayRack from "../commands/rack/problems.ts";
import {printPath} from "../rulebooks/place.ts";
import {checkShape} from "../rulebooks/shape.ts";
import {photoHashSchema, photoSchema} from "../store/model.ts";
import type {PhotoFiles, Taken} from "../store/photo/photo-files.ts";
import {mostPhotoBytes} from "../store/photo/sizes.ts";
import type {Store} from "../store/store.ts";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";
import {mediaOf, readBytes} from "./read-body.ts";
import type {Route} from "./route.ts";

const medias = [...photoSchema.shape.mime.options, "application/octet-stream"];
/** Photos unpacked at the same time: each can take much memory. Source: own choice. */
const mostAtOnce = 2;

const inPath = {photo: photoHashSchema, size: z.enum(["small", "shown", "original"])};

export function photoRoutes(store: Store, files: PhotoFiles): Route[] {
  const turn = takeTurns(mostAtOnce);
  return [
    {
      name: "photo.add",
      summary: "take a photo in; its place of taking is removed from what is shown, the original is kept byte for byte",
      method: "post",
      path: "/api/photos",
      shapes: {path: {}, query: {}, body: medias, answer: {status: 201, mime: "application/json", schema: photoSchema}, refusals: [413, 415, 422]},
      async answer(context) {
        const media = mediaOf(context.req.raw);
        if (!medias.includes(media)) throw new Refused(415, [say.wrongMedia(media, medias)]);
        const bytes = await readBytes(context.req.raw, mostPhotoBytes);
        const {photo, problems} = await turn(() => files.add(bytes, "photo", new Date().toISOString()));
        if (problems) throw new Refused(statusOf(problems), problems);
        const known = await store.photo(photo.photo);
        if (!known) await store.addPhoto(photo);
        return context.json(known ?? photo, 201);
      },
    },
    {
      name: "photo.get",
      summary: "hand out a photo: 320 pixels, 1600 pixels, or the original",
      method: "get",
      path: "/api/photos/{photo}/{size}",
      shapes: {path: inPath, query: {}, body: null, answer: {status: 200, mime: "image/jpeg", schema: null}, refusals: [404, 422]},
      answer: (context) => handOut(context, store, files),
    },
  ];
}

async function handOut(context: Context, store: Store, files: PhotoFiles): Promise<Response> {
  const {fits, problems} = checkShape(z.strictObject(inPath), context.req.param(), (path) => printPath(path));
  if (problems) throw new Refused(422, problems);
  const {photo: hash, size} = fits;
  const photo = await store.photo(hash);
  if (!photo) throw new Refused(404, [sayRack.noPhoto("photo", hash)]);
  const headers = new Headers({"etag": `"${hash}-${size}"`, "cache-control": "private, max-age=31536000, immutable", "content-type": size === "original" ? photo.mime : "image/jpeg"});
  if (size === "original") headers.set("content-disposition", `attachment; filename="${hash.slice(0, 16)}.${photo.mime.split("/")[1]}"`);
  if (context.req.header("if-none-match") === headers.get("etag")) return new Response(null, {status: 304, headers});
  const bytes = await files.read(hash, size);
  if (!bytes) throw new Refused(404, [sayRack.noPhoto("photo", hash)]);
  return new Response(bytes as Uint8Array<ArrayBuffer>, {headers});
}

const statuses: Readonly<Record<string, number>> = {"store/photo-too-large": 413, "store/photo-too-many-pixels": 413, "store/photo-unknown": 415, "store/photo-heic": 415};

const statusOf = ([first]: NonNullable<Taken["problems"]>) => statuses[first?.code ?? ""] ?? 422;

/** Lets at most so many work at the same time; the others wait in order. */
function takeTurns(most: number): <T>(work: () => Promise<T>) => Promise<T> {
  let busy = 0;
  const waiting: (() => void)[] = [];
  return async (work) => {
    if (busy >= most) await new Promise<void>((resolve) => waiting.push(resolve));
    busy++;
    try {
      return await work();
    } finally {
      busy--;
      waiting.shift()?.();
    }
  };
}

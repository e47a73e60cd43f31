// Routes for photos: taken in as they are, handed out by their hash, which never changes.
import {z} from "zod";
import {photoFiles} from "../store/photo/photo-files.ts";
import {mostPhotoBytes} from "../store/photo/sizes.ts";
import {photoHashSchema, photoSchema} from "../store/model.ts";
import type {Store} from "../store/store.ts";
import {Refused} from "./problem-details.ts";
import * as say from "./problems.ts";
import {readBytes} from "./read-body.ts";
import type {Route} from "./route.ts";

const media = ["image/jpeg", "image/png", "image/webp", "image/avif", "application/octet-stream"];
const sizes = z.enum(["small", "shown", "original"]);

/** @param folder  of the photos */
export function photoRoutes(store: Store, folder: string): Route[] {
  const files = photoFiles(folder);
  return [
    {
      name: "photo.add",
      summary: "take in a photo; the same one twice is kept once",
      method: "post",
      path: "/api/photos",
      shapes: {path: {}, query: {}, body: media, answer: {status: 201, mime: "application/json", schema: photoSchema}, refusals: [413, 422]},
      async answer(context) {
        const taken = await files.add(await readBytes(context.req.raw, mostPhotoBytes), "photo", new Date().toISOString());
        if (taken.problems) throw new Refused(422, taken.problems);
        await store.addPhoto(taken.photo);
        return context.json(taken.photo, 201);
      },
    },
    {
      name: "photo.get",
      summary: "hand out a photo: small, to be shown, or the original byte for byte",
      method: "get",
      path: "/api/photos/{photo}/{size}",
      shapes: {path: {photo: photoHashSchema, size: sizes}, query: {}, body: null, answer: {status: 200, mime: "image/*", schema: null}, refusals: [404]},
      async answer(context) {
        const size = sizes.safeParse(context.req.param("size")).data;
        const hash = photoHashSchema.safeParse(context.req.param("photo")).data;
        const noted = hash === undefined ? null : await store.photo(hash);
        const bytes = noted && size ? await files.read(noted.photo, size) : null;
        if (!noted || !bytes) throw new Refused(404, [say.nothingHere(context.req.path)]);
        const original = size === "original";
        const headers = {"content-type": original ? noted.mime : "image/jpeg", "cache-control": "private, max-age=31536000, immutable", "etag": `"${noted.photo}-${size}"`, ...(original && {"content-disposition": `attachment; filename="${noted.photo.slice(0, 12)}.${noted.mime.slice(6)}"`})};
        return new Response(new Uint8Array(bytes), {headers});
      },
    },
  ];
}

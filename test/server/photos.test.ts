// Photos over the wire: taken in, handed out, and everything hostile refused without a trace.
import {createHash} from "node:crypto";
import {mkdtempSync, readdirSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import sharp from "sharp";
import {expect, test} from "vitest";
import type {Photo} from "../../store/model.ts";
import {photoFiles} from "../../store/photo/photo-files.ts";
import {photoRoutes} from "../../server/photo-routes.ts";
import {storeInMemory, testApp} from "./test-app.ts";

function withPhotos() {
  const [store, folder] = [storeInMemory(), mkdtempSync(join(tmpdir(), "ticking-photos-"))];
  const t = testApp({store, more: photoRoutes(store, photoFiles(folder))});
  const files = () => readdirSync(folder, {recursive: true, withFileTypes: true}).filter((one) => one.isFile());
  const send = (bytes: Uint8Array, type = "image/jpeg") => t.ask("POST", "/api/photos", bytes, {"content-type": type});
  return {...t, files, send};
}

/** 600 by 400 pixels, held on its side, with a place of taking. */
const held = () =>
  sharp({create: {width: 600, height: 400, channels: 3, background: "#234"}}).withExif({IFD0: {Copyright: "owner"}, IFD3: {GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1"}}).withMetadata({orientation: 6}).jpeg().toBuffer();

test("a photo is kept byte for byte, and shown upright in two sizes without the place where it was taken", async () => {
  const {send, ask} = withPhotos();
  const bytes = await held();
  const response = await send(bytes);
  expect(response.status).toBe(201);
  const photo = (await response.json()) as Photo;
  expect(photo).toMatchObject({photo: createHash("sha256").update(bytes).digest("hex"), mime: "image/jpeg", bytes: bytes.length, width: 400, height: 600});
  const original = await ask("GET", `/api/photos/${photo.photo}/original`);
  expect(Buffer.from(await original.arrayBuffer()).equals(bytes)).toBe(true);
  expect(original.headers.get("content-disposition")).toMatch(/^attachment; filename="[0-9a-f]{16}\.jpeg"$/);
  for (const [size, width] of [["small", 213], ["shown", 400]] as const) {
    const shown = await ask("GET", `/api/photos/${photo.photo}/${size}`);
    expect(shown.headers.get("cache-control")).toContain("immutable");
    const told = await sharp(Buffer.from(await shown.arrayBuffer())).metadata();
    expect([told.width, told.exif, told.orientation]).toEqual([width, undefined, undefined]);
    expect((await ask("GET", `/api/photos/${photo.photo}/${size}`, undefined, {"if-none-match": shown.headers.get("etag")!})).status).toBe(304);
  }
});

test("the same photo twice is one, and can be tied to a garment", async () => {
  const {send, files, expectJson} = withPhotos();
  const bytes = await held();
  const [first, second] = [(await (await send(bytes)).json()) as Photo, (await (await send(bytes)).json()) as Photo];
  expect(second).toEqual(first);
  expect(files()).toHaveLength(3);
  await expectJson(201, "POST", "/api/garments", {content: {garment: {garment: "1", saw: {}}, photos: [{photo: first.photo, place: "care label"}]}});
});

const drawing = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';
test.each([
  ["a drawing that carries a program", Buffer.from(drawing), "image/svg+xml", 415],
  ["a drawing that calls itself a photo", Buffer.from(drawing), "image/jpeg", 415],
  ["a page", Buffer.from("<html><script>alert(1)</script>"), "text/html", 415],
  ["a page that calls itself a photo", Buffer.from("<html><script>alert(1)</script>"), "image/png", 415],
  ["nothing", new Uint8Array(0), "image/jpeg", 415],
  ["a photo without a kind", Buffer.from([1, 2, 3]), "", 415],
  ["zeros", new Uint8Array(5000), "image/webp", 415],
  ["a moving picture", Buffer.from("GIF89a\x01\x00\x01\x00\x80\x00\x00\x00\x00\x00\xff\xff\xff!\xf9\x04\x01\x00\x00\x00\x00,\x00\x00\x00\x00\x01\x00\x01\x00\x00\x02\x02D\x01\x00;", "latin1"), "image/png", 415],
] as [string, Uint8Array, string, number][])("%s is refused and leaves nothing behind", async (_, bytes, type, status) => {
  const {send, files, faults} = withPhotos();
  const response = await send(bytes, type);
  expect(response.status).toBe(status);
  expect(files()).toEqual([]);
  expect(faults).toEqual([]);
});

test("photos cut off at any place are refused, never half kept", async () => {
  const {send, files, faults} = withPhotos();
  const bytes = await sharp(Buffer.from(Array.from({length: 300 * 300 * 3}, (_, i) => (i * 7919) % 251)), {raw: {width: 300, height: 300, channels: 3}}).jpeg().toBuffer();
  for (const part of [0.01, 0.1, 0.5, 0.9]) expect([415, 422]).toContain((await send(bytes.subarray(0, Math.floor(bytes.length * part)))).status);
  expect(files()).toEqual([]);
  expect(faults).toEqual([]);
});

test("a picture that unpacks to more pixels than fit is refused before it is unpacked", async () => {
  const {send, files} = withPhotos();
  const png = await sharp({create: {width: 16, height: 16, channels: 3, background: "#fff"}}).png().toBuffer();
  png.writeUInt32BE(60_000, 16); // width and height of the header; source: PNG (W3C), 11.2.2 IHDR
  png.writeUInt32BE(60_000, 20);
  expect([413, 415, 422]).toContain((await send(png, "image/png")).status);
  const wide = await sharp({create: {width: 16_000, height: 14_000, channels: 3, background: "#fff"}, limitInputPixels: false}).png({compressionLevel: 9}).toBuffer();
  expect(wide.length).toBeLessThan(2_000_000);
  expect((await send(wide, "image/png")).status).toBe(413);
  expect(files()).toEqual([]);
});

test("a file that is too large is not read to its end", async () => {
  const {send, ask} = withPhotos();
  expect((await send(new Uint8Array(60_000_001))).status).toBe(413);
  expect((await ask("POST", "/api/photos", new Uint8Array(10), {"content-type": "image/jpeg", "content-length": "999999999"})).status).toBe(413);
});

test("names that are no hash lead to no file", async () => {
  const {ask, app} = withPhotos();
  expect((await ask("GET", `/api/photos/${"a".repeat(64)}/small`)).status).toBe(404);
  for (const path of ["/api/photos/..%2f..%2f..%2fetc%2fpasswd/original", "/api/photos/%2e%2e/original", `/api/photos/${"a".repeat(64)}/..%2foriginal`, `/api/photos/${"A".repeat(64)}/small`, "/api/photos/x/huge"]) {
    const response = await app.request(`http://127.0.0.1${path}`, {headers: {host: "127.0.0.1"}});
    expect(response.status, path).toBeGreaterThanOrEqual(404);
    expect(response.status, path).toBeLessThan(500);
  }
});

test("ten photos at once are all taken in", async () => {
  const {send, files} = withPhotos();
  const photos = await Promise.all(Array.from({length: 10}, (_, i) => sharp({create: {width: 800, height: 600, channels: 3, background: {r: i * 20, g: 0, b: 0}}}).jpeg().toBuffer()));
  expect((await Promise.all(photos.map((bytes) => send(bytes)))).map(({status}) => status)).toEqual(Array(10).fill(201));
  expect(files()).toHaveLength(30);
});

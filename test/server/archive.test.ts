// The whole rack out as one file, and in again elsewhere, bit for bit; everything else that calls itself an archive is refused.
import {mkdtempSync, readdirSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import sharp from "sharp";
import {expect, test} from "vitest";
import {ZipFile} from "yazl";
import type {GarmentRecord, Photo, Step} from "../../store/model.ts";
import {partsOf} from "../../store/open.ts";
import {startServer, type Started} from "../../server/start.ts";
import {world} from "../commands/small-world.ts";

const fresh = () => mkdtempSync(join(tmpdir(), "ticking-archive-"));
const start = (folder: string, demo: Parameters<typeof startServer>[0]["demo"] = []) => startServer({folder, shipped: world.books, demo, address: "127.0.0.1", port: 0, screens: "/nowhere", version: "1"});
const at = ({port}: Started, path: string) => `http://127.0.0.1:${port}/api/${path}`;

async function send<T>(server: Started, path: string, body: unknown, type = "application/json"): Promise<T> {
  const response = await fetch(at(server, path), {method: "POST", headers: {"content-type": type}, body: type === "application/json" ? JSON.stringify(body) : (body as string)});
  return (await response.json()) as T;
}
const get = async <T>(server: Started, path: string) => (await (await fetch(at(server, path))).json()) as T;
const archiveOf = async (server: Started) => Buffer.from(await (await fetch(at(server, "archive"))).arrayBuffer());
const restore = (server: Started, bytes: Uint8Array | string, type = "application/zip") => fetch(at(server, "archive"), {method: "POST", headers: {"content-type": type}, body: bytes as string});

/** Whatever waited in the folder is gone. */
const nothingLeft = (folder: string) => expect.poll(() => readdirSync(partsOf(folder).backups).filter((name) => name.endsWith(".part"))).toEqual([]);

test("garments, their history, photos and own books come out as one file and in again elsewhere the same, byte for byte", async () => {
  const [here, there] = [fresh(), fresh()];
  const [first, second] = [await start(here), await start(there)];
  try {
    const photo = await send<Photo>(first, "photos", await sharp({create: {width: 40, height: 30, channels: 3, background: "#345"}}).png().toBuffer(), "image/png");
    const added = await send<GarmentRecord>(first, "garments", {content: {garment: {garment: "7", maker: "wickerlow", saw: {label: "grey-tape"}}, photos: [{photo: photo.photo}], tags: ["wörn"]}});
    await send(first, `garments/${added.id}/put-back`, {base: 1});
    await fetch(at(first, `garments/${added.id}?base=1`), {method: "DELETE"});
    await send(first, "books", {yaml: (await get<{yaml: string}>(first, "books/wickerlow/1")).yaml});
    const archive = await archiveOf(first);
    const restored = await restore(second, archive);
    expect([restored.status, await restored.json()]).toEqual([200, {garments: 1, steps: 2, photos: 1, books: 1}]);
    expect(await get<Step[]>(second, `garments/${added.id}/history`)).toEqual(await get<Step[]>(first, `garments/${added.id}/history`));
    const original = async (server: Started) => Buffer.from(await (await fetch(at(server, `photos/${photo.photo}/original`))).arrayBuffer());
    expect((await original(second)).equals(await original(first))).toBe(true);
    expect((await fetch(at(second, `photos/${photo.photo}/small`))).status).toBe(200);
    expect(await get(second, "books")).toMatchObject([{book: "wickerlow", edition: 2, own: true}]);
    expect((await archiveOf(second)).equals(archive)).toBe(true);
    await nothingLeft(here);
    await nothingLeft(there);
  } finally {
    await Promise.all([first.close(), second.close()]);
  }
});

test("a rack on which garments hang takes no archive; once emptied it does", async () => {
  const folder = fresh();
  const server = await start(folder, [{garment: "demo", saw: {}}]);
  try {
    const archive = await archiveOf(server);
    const refused = await restore(server, archive);
    expect([refused.status, await refused.json()]).toMatchObject([409, {problems: [{code: "archive/rack-not-empty"}]}]);
    await send(server, "rack/empty", {keep: "nothing"});
    expect((await restore(server, archive)).status).toBe(200);
    expect(await get(server, "about")).toMatchObject({garments: 1, demo: true});
    await nothingLeft(folder);
  } finally {
    await server.close();
  }
});

const zipOf = (files: Readonly<Record<string, string | Buffer>>) =>
  new Promise<Buffer>((resolve) => {
    const zip = new ZipFile();
    for (const [name, text] of Object.entries(files)) zip.addBuffer(Buffer.from(text), name);
    const pieces: Buffer[] = [];
    zip.outputStream.on("data", (piece: Buffer) => pieces.push(piece)).on("end", () => resolve(Buffer.concat(pieces)));
    zip.end();
  });

/** A name of the same length in place of another, in the list of files and before the file. */
const renamed = (zip: Buffer, from: string, to: string) => Buffer.from(zip.toString("latin1").replaceAll(from, to), "latin1");

test("what is no archive, cut off, or made to land elsewhere or to fill the disk is refused, and nothing of it stays", async () => {
  const folder = fresh();
  const server = await start(folder);
  try {
    const sound = await archiveOf(server);
    const slip = await zipOf({"ticking.json": "{}", "xx/evil.txt": "x"});
    const hostile: [string, Buffer | string][] = [
      ["nothing", ""],
      ["text", "no zip at all"],
      ["another zip", await zipOf({"readme.txt": "hello"})],
      ["cut off", sound.subarray(0, sound.length - 30)],
      ["changed", Buffer.from(sound.map((byte, i) => (i === 60 ? byte ^ 0xff : byte)))],
      ["a way up", renamed(slip, "xx/evil.txt", "../evil.txt")],
      ["an absolute path", renamed(slip, "xx/evil.txt", "/x/evil.txt")],
      ["a bomb", await zipOf({"ticking.json": "{}", "garments.jsonl": Buffer.alloc(50_000_000, 32)})],
    ];
    for (const [what, bytes] of hostile) {
      const response = await restore(server, bytes);
      const told = (await response.json()) as {problems: {at: string; code: string}[]};
      expect([what, response.status]).toEqual([what, 422]);
      expect(told.problems[0]!.code).toMatch(/^archive\//);
      expect(JSON.stringify(told)).not.toContain(folder);
    }
    expect((await restore(server, sound, "text/plain")).status).toBe(415);
    expect(await get(server, "about")).toMatchObject({garments: 0});
    await nothingLeft(folder);
    expect(readdirSync(join(folder, "..")).includes("evil.txt")).toBe(false);
    expect(readdirSync(folder).toSorted().filter((name) => !name.startsWith("ticking.sqlite"))).toEqual(["backups", "photos"]);
  } finally {
    await server.close();
  }
});

// Killed at any moment under writes, the server has kept everything that it answered for: garments, their steps, and photos.
import {spawn, type ChildProcess} from "node:child_process";
import {createHash} from "node:crypto";
import {mkdtempSync, rmSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {fileURLToPath} from "node:url";
import sharp from "sharp";
import {expect, test} from "vitest";
import type {GarmentRecord, Photo} from "../../store/model.ts";
import {openStore, partsOf} from "../../store/open.ts";
import {photoFiles} from "../../store/photo/photo-files.ts";

const rounds = process.env.TICKING_LONG === "1" ? 50 : 10;
const [runner, child] = ["../../scripts/run.mjs", "./crash-child.ts"].map((path) => fileURLToPath(new URL(path, import.meta.url)));

interface Answered {
  readonly saved: GarmentRecord[];
  readonly photos: Photo[];
}

function started(folder: string): Promise<{server: ChildProcess; base: string}> {
  const server = spawn(process.execPath, [runner!, child!, folder], {stdio: ["ignore", "pipe", "inherit"]});
  return new Promise((resolve, reject) => {
    server.stdout!.on("data", (piece: Buffer) => {
      const port = /port (\d+)/.exec(piece.toString())?.[1];
      if (port) resolve({server, base: `http://127.0.0.1:${port}/api`});
    });
    server.on("exit", () => reject(new Error("the server ended before it listened")));
  });
}

/** Adds garments, changes them and adds photos until the server is gone; notes what was answered for. */
async function write(base: string, mine: string, answered: Answered): Promise<void> {
  const send = async <T>(method: string, path: string, body: string | Uint8Array, type = "application/json"): Promise<T> => {
    const response = await fetch(base + path, {method, body: body as string, headers: {"content-type": type}});
    if (!response.ok) throw new Error(`${response.status} ${await response.text()}`);
    return (await response.json()) as T;
  };
  for (let i = 0; ; i++) {
    const number = `${mine}-${i}`;
    const photo = await send<Photo>("POST", "/photos", await sharp({create: {width: 40, height: 30, channels: 3, background: {r: i % 256, g: mine.length, b: mine.charCodeAt(0)}}}).png().toBuffer(), "image/png");
    answered.photos.push(photo);
    const added = await send<GarmentRecord>("POST", "/garments", JSON.stringify({content: {garment: {garment: number, maker: "wickerlow", saw: {label: "grey-tape"}}, photos: [{photo: photo.photo}]}}));
    answered.saved.push(added);
    answered.saved.push(await send<GarmentRecord>("PUT", `/garments/${added.id}`, JSON.stringify({base: 1, content: {...added.content, place: `shelf ${i}`}})));
  }
}

const answersOf = ({saved, photos}: Answered) => saved.length + photos.length;
const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

test(`killed ${rounds} times under writes, every answered save and photo is there, and the database is sound`, async () => {
  const folder = mkdtempSync(join(tmpdir(), "ticking-crash-"));
  const answered: Answered = {saved: [], photos: []};
  for (let round = 0; round < rounds; round++) {
    const {server, base} = await started(folder);
    const ended = new Promise((resolve) => server.on("exit", resolve));
    const writers = ["a", "b", "c", "d"].map((name) => write(base, `${name}${round}`, answered).catch((error: unknown) => error));
    const enough = answersOf(answered) + 3 + ((round * 7) % 40);
    while (answersOf(answered) < enough && server.exitCode === null) await pause(1);
    await pause((round * 13) % 30);
    server.kill("SIGKILL");
    await ended;
    for (const error of await Promise.all(writers)) expect(String(error)).toMatch(/fetch failed|terminated|aborted|socket/i);
    const store = await openStore(folder);
    expect(await store.check()).toEqual([]);
    await store.close();
  }
  const [store, files] = [await openStore(folder), photoFiles(partsOf(folder).photos)];
  for (const {id, rev, content} of answered.saved) expect((await store.history(id)).find((step) => step.rev === rev)?.content).toEqual(content);
  for (const {photo} of answered.photos) {
    expect(await store.photo(photo)).not.toBeNull();
    expect(createHash("sha256").update((await files.read(photo, "original"))!).digest("hex")).toBe(photo);
  }
  expect(answered.saved.length).toBeGreaterThan(2 * rounds);
  await store.close();
  rmSync(folder, {recursive: true});
}, 600_000);

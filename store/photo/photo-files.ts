// The folder of photos: originals byte for byte under their SHA-256, and the sizes that are shown beside them. Nothing here deletes a photo.
import {createHash} from "node:crypto";
import {existsSync, readdirSync, rmSync, statSync} from "node:fs";
import {readFile} from "node:fs/promises";
import {join} from "node:path";
import type {Problem} from "../../engine/problem.ts";
import {keepFile, type WriteBytes} from "../disk/keep-file.ts";
import {photoHashSchema, type Photo} from "../model.ts";
import type {ShownSize} from "./sizes.ts";
import {makeShown, takePhoto} from "./take-photo.ts";

export type Taken = {readonly photo: Photo; readonly problems?: undefined} | {readonly photo?: undefined; readonly problems: readonly Problem[]};

export interface PhotoFiles {
  /**
   * Checks a photo and keeps its files; the store is told afterwards, with `addPhoto`.
   * @param name  how the photo is called in problems
   * @param at    UTC
   * @throws StoreFault when the disk is full or closed; the original is not there then
   */
  add(bytes: Uint8Array, name: string, at: string): Promise<Taken>;
  /** The bytes of a photo; null when there are none. Smaller sizes are JPEGs, made again when they went missing. */
  read(hash: string, size: ShownSize | "original"): Promise<Uint8Array | null>;
  /** Whether the original is there, byte for byte. */
  isSound(hash: string): Promise<boolean>;
}

/** @param folder  of the photos; made when it is not there */
export function photoFiles(folder: string, write?: WriteBytes): PhotoFiles {
  const waiting = join(folder, "waiting");
  const keep = (path: string, bytes: Uint8Array) => keepFile(path, bytes, waiting, write);
  const inTurn = makeTurns();
  clearOld(waiting);

  return {
    async add(bytes, name, at) {
      const {taken, problems} = await inTurn(() => takePhoto(bytes, name));
      if (problems) return {problems};
      const {shown, ...rest} = taken;
      const hash = createHash("sha256").update(bytes).digest("hex");
      for (const size of ["small", "shown"] as const) await keep(shownPath(folder, hash, size), shown[size]);
      await keep(originalPath(folder, hash), bytes);
      return {photo: {photo: hash, ...rest, addedAt: at}};
    },
    async read(hash, size) {
      if (!photoHashSchema.safeParse(hash).success) return null;
      const original = originalPath(folder, hash);
      if (size === "original") return bytesOf(original);
      const path = shownPath(folder, hash, size);
      const kept = await bytesOf(path);
      if (kept || !existsSync(original)) return kept;
      const shown = await inTurn(async () => makeShown(await readFile(original)));
      await keep(path, shown[size]);
      return shown[size];
    },
    async isSound(hash) {
      const bytes = await bytesOf(originalPath(folder, hash));
      return bytes !== null && createHash("sha256").update(bytes).digest("hex") === hash;
    },
  };
}

/** Where the original of a photo stands. */
export const originalPath = (folder: string, hash: string) => join(folder, hash.slice(0, 2), hash);
const shownPath = (folder: string, hash: string, size: ShownSize) => `${originalPath(folder, hash)}.${size}.jpg`;

async function bytesOf(path: string): Promise<Uint8Array | null> {
  return readFile(path).catch((error: NodeJS.ErrnoException) => {
    if (error.code === "ENOENT") return null;
    throw error;
  });
}

/** One after the other: two huge pictures at once could fill the memory. */
function makeTurns(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work);
    last = mine.catch(() => {});
    return mine;
  };
}

/** Files and folders that a crash left half-written, a day old or more. */
function clearOld(waiting: string): void {
  if (!existsSync(waiting)) return;
  for (const path of readdirSync(waiting).map((name) => join(waiting, name))) {
    // Another program may clear them at the same time.
    const changed = statSync(path, {throwIfNoEntry: false})?.mtimeMs ?? Infinity;
    if (changed < Date.now() - 86_400_000) rmSync(path, {recursive: true, force: true});
  }
}

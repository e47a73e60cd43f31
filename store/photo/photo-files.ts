// Photos on the disk: the original kept byte for byte under its hash, two smaller ones upright and without a word about where they were taken.
import {createHash, randomUUID} from "node:crypto";
import {mkdirSync} from "node:fs";
import {open, readFile, rename, rm, stat} from "node:fs/promises";
import {dirname, join} from "node:path";
import sharp, {type Metadata} from "sharp";
import type {Problem} from "../../engine/problem.ts";
import type {Photo} from "../model.ts";
import * as say from "../problems.ts";
import {mostPhotoBytes, mostPixels, shownSizes, type ShownSize} from "./sizes.ts";

const mimes: Readonly<Record<string, Photo["mime"]>> = {jpeg: "image/jpeg", png: "image/png", webp: "image/webp", avif: "image/avif"};

export type Taken = {readonly photo: Photo; readonly problems?: undefined} | {readonly photo?: undefined; readonly problems: readonly Problem[]};

export interface PhotoFiles {
  /**
   * Takes a photo in.
   * @param name  for messages
   * @param at    UTC
   * @returns     the photo, its files on the disk; or what is wrong, and nothing kept
   */
  add(bytes: Uint8Array, name: string, at: string): Promise<Taken>;
  /** The bytes of a photo that was taken in; null when there are none. Smaller ones are JPEGs. */
  read(hash: string, size: ShownSize | "original"): Promise<Uint8Array | null>;
}

/** @param folder  of the photos; made when it is not there */
export function photoFiles(folder: string): PhotoFiles {
  const pathOf = (hash: string, size: ShownSize | "original") => join(folder, hash.slice(0, 2), size === "original" ? hash : `${hash}.${size}.jpg`);
  return {
    async add(bytes, name, at) {
      if (bytes.length > mostPhotoBytes) return {problems: [say.photoTooLarge(name, Math.round(bytes.length / 1e6), mostPhotoBytes / 1e6)]};
      const told = await metadataOf(bytes);
      // The kind is told by the bytes themselves, whatever the file calls itself; drawings that can carry programs are none of these.
      const mime = told?.format === "heif" && told.compression === "av1" ? "image/avif" : mimes[told?.format ?? ""];
      if (!told || !mime) return {problems: [say.photoUnknown(name)]};
      const pixels = told.width * told.height;
      if (pixels > mostPixels) return {problems: [say.photoTooManyPixels(name, Math.round(pixels / 1e6), mostPixels / 1e6)]};
      const smaller = await Promise.all((["small", "shown"] as const).map((size) => shrink(bytes, shownSizes[size]).then((made) => ({size, made})))).catch(() => null);
      if (!smaller) return {problems: [say.photoBroken(name)]};
      const hash = createHash("sha256").update(bytes).digest("hex");
      for (const {size, made} of smaller) await put(pathOf(hash, size), made);
      await put(pathOf(hash, "original"), bytes);
      const [width, height] = turned(told) ? [told.height, told.width] : [told.width, told.height];
      return {photo: {photo: hash, mime, bytes: bytes.length, width, height, addedAt: at}};
    },
    async read(hash, size) {
      if (!/^[0-9a-f]{64}$/.test(hash)) return null;
      return readFile(pathOf(hash, size)).catch((error: NodeJS.ErrnoException) => {
        if (error.code === "ENOENT") return null;
        throw error;
      });
    },
  };
}

const input = {failOn: "error", limitInputPixels: mostPixels + 1} as const;

async function metadataOf(bytes: Uint8Array): Promise<Metadata | null> {
  return bytes.length === 0 ? null : sharp(bytes, {...input, limitInputPixels: false}).metadata().catch(() => null);
}

/** Whether the camera was held on its side. Source: Exif 2.32 (CIPA DC-008), tag 0x0112, values 5 to 8. */
const turned = ({orientation = 1}: Metadata) => orientation >= 5;

/** Upright, at most so large, and without any of the original's notes: sharp writes none unless asked to. */
function shrink(bytes: Uint8Array, longest: number): Promise<Buffer> {
  return sharp(bytes, input).rotate().resize({width: longest, height: longest, fit: "inside", withoutEnlargement: true}).flatten({background: "#fff"}).jpeg({quality: 82, mozjpeg: true}).toBuffer();
}

/** Whole or not at all: written beside its place, forced to the disk, then moved there. */
async function put(path: string, bytes: Uint8Array): Promise<void> {
  if (await stat(path).then(({size}) => size === bytes.length, () => false)) return;
  mkdirSync(dirname(path), {recursive: true});
  const beside = `${path}.${randomUUID()}.part`;
  try {
    const file = await open(beside, "wx");
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (error) {
    await rm(beside, {force: true});
    throw error;
  }
}

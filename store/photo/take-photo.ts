// Looks into the bytes of a photo: what it is, whether it is whole, and how it looks upright at the sizes that are shown.
import sharp, {type Sharp} from "sharp";
import type {Problem} from "../../engine/problem.ts";
import type {Photo} from "../model.ts";
import * as say from "../problems.ts";
import {kindOf} from "./kind-of.ts";
import {mostPhotoBytes, mostPixels, shownSizes, type ShownSize} from "./sizes.ts";

/** Both sizes as JPEG: upright, in sRGB, on white, without a word about camera, place or time. */
export type Shown = Readonly<Record<ShownSize, Buffer>>;
export type Taken = {readonly taken: Omit<Photo, "photo" | "addedAt"> & {readonly shown: Shown}; readonly problems?: undefined} | {readonly taken?: undefined; readonly problems: readonly Problem[]};

/** @param name  how the photo is called in problems */
export async function takePhoto(bytes: Uint8Array, name: string): Promise<Taken> {
  if (bytes.length > mostPhotoBytes) return {problems: [say.photoTooLarge(name, Math.ceil(bytes.length / 1e6), mostPhotoBytes / 1e6)]};
  const mime = kindOf(bytes);
  if (mime === "heic") return {problems: [say.photoHeic(name)]};
  if (mime === "unknown") return {problems: [say.photoUnknown(name)]};
  try {
    const {width, height} = (await sharp(bytes, {limitInputPixels: false}).metadata()).autoOrient;
    if (width * height > mostPixels) return {problems: [say.photoTooManyPixels(name, Math.ceil((width * height) / 1e6), mostPixels / 1e6)]};
    return {taken: {mime, bytes: bytes.length, width, height, shown: await makeShown(bytes)}};
  } catch (error) {
    if (isOfTheMachine(error)) throw error;
    return {problems: [say.photoBroken(name)]};
  }
}

/** @throws when the photo cannot be read to its end */
export async function makeShown(bytes: Uint8Array): Promise<Shown> {
  const shown = await fitted(sharp(bytes, {limitInputPixels: mostPixels, failOn: "error", sequentialRead: true}).autoOrient(), shownSizes.shown).toBuffer();
  return {shown, small: await fitted(sharp(shown), shownSizes.small).toBuffer()};
}

// Metadata stay behind unless asked for: sharp.pixelplumbing.com/api-output, keepMetadata.
const fitted = (image: Sharp, most: number) => image.resize({width: most, height: most, fit: "inside", withoutEnlargement: true}).flatten({background: "white"}).toColourspace("srgb").jpeg({quality: 82});

const isOfTheMachine = (error: unknown) => error instanceof Error && /out of memory|ENOMEM/i.test(error.message);

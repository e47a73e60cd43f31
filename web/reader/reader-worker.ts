// The reader beside the page: unpacks a photo, finds the rows of its label and reads them. Nothing of it leaves the device.
import {readPhoto} from "../../commands/reading/read-photo.ts";
import type {Problem} from "../../engine/problem.ts";
import type {Quad} from "../../reader/model.ts";
import {NoReader} from "../../reader/no-reader.ts";
import {openReader} from "../../reader/onnx/open.ts";
import {scaledReading, type ReadLabel} from "../../reader/read-label.ts";
import type {LabelReader, Pixels} from "../../reader/reader.ts";
import type {ReadAsk, ReadTold} from "./messages.ts";
import type {Size} from "./outline.ts";
import {fetchParts, PartsMissing} from "./parts.ts";

/** Longest side of what is worked on; a photo of twelve megapixels is taken whole. */
const longestSide = 4096;

interface OpenPhoto {
  readonly photo: string;
  readonly pixels: Pixels;
  readonly size: Size;
  /** Pixels worked on for each pixel of the original. */
  readonly scale: number;
}

let opened: Promise<LabelReader> | null = null;
let last: OpenPhoto | null = null;
let next: ReadAsk | null = null;
let busy = false;

const tell = (told: ReadTold) => self.postMessage(told);

self.onmessage = ({data}: MessageEvent<ReadAsk>) => {
  next = data;
  if (!busy) void work();
};

// An ask that waits while another is read gives way to a newer one.
async function work(): Promise<void> {
  busy = true;
  while (next) {
    const ask = next;
    next = null;
    try {
      await answer(ask);
    } catch (error) {
      if (error instanceof PartsMissing || error instanceof NoReader) tell({id: ask.id, missing: error.problem});
      else tell({id: ask.id, reading: null, problems: [ourFault(error)]});
    }
  }
  busy = false;
}

async function answer({id, photo, blob, outline, turn, map, makers, label}: ReadAsk): Promise<void> {
  opened ??= open((done, of) => tell({id, fetched: {done, of}})).catch((error: unknown) => {
    opened = null;
    throw error;
  });
  const [reader, open_] = await Promise.all([opened, last?.photo === photo ? last : unpack(photo, blob)]);
  if ("problem" in open_) return tell({id, reading: null, problems: [open_.problem]});
  last = open_;
  const {pixels, scale, size} = open_;
  const within = outline === undefined ? {} : {outline: outline && scaled(outline, scale)};
  const {reading, problems} = await readPhoto(reader, pixels, {
    ...within, ...(turn !== undefined && {turn}), ...(map && {map}),
    makers: makers.map(({book}) => book), label,
    onRow: (done, of) => tell({id, rows: {done, of}}),
  }, {books: makers});
  tell({id, reading: reading && inOriginal(reading, scale, size), problems});
}

async function open(onProgress: (done: number, of: number) => void): Promise<LabelReader> {
  const {arithmetic, finder, reader, keys} = await fetchParts(onProgress);
  return openReader({models: {finder, reader, keys: new TextDecoder().decode(keys)}, wasm: {binary: arithmetic}});
}

async function unpack(photo: string, blob: Blob): Promise<OpenPhoto | {problem: Problem}> {
  last = null;
  const bitmap = await createImageBitmap(blob, {imageOrientation: "from-image"}).catch(() => null);
  if (!bitmap) return {problem: noPhoto};
  const size = {width: bitmap.width, height: bitmap.height};
  const scale = Math.min(1, longestSide / Math.max(size.width, size.height));
  const [width, height] = [Math.max(1, Math.round(size.width * scale)), Math.max(1, Math.round(size.height * scale))];
  const context = new OffscreenCanvas(width, height).getContext("2d", {willReadFrequently: true, alpha: false})!;
  context.imageSmoothingQuality = "high";
  context.fillStyle = "#fff";
  context.fillRect(0, 0, width, height);
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const {data} = context.getImageData(0, 0, width, height);
  return {photo, pixels: {width, height, channels: 4, data}, size, scale};
}

const scaled = (quad: Quad, by: number): Quad => quad.map(({x, y}) => ({x: x * by, y: y * by}));
/** A tenth of a pixel is fine enough to keep. */
const tidy = (quad: Quad): Quad => quad.map(({x, y}) => ({x: Math.round(x * 10) / 10, y: Math.round(y * 10) / 10}));

const inOriginal = (reading: ReadLabel, scale: number, size: Size): ReadLabel => {
  const whole = scaledReading(reading, 1 / scale);
  return {...whole, size, outline: whole.outline && tidy(whole.outline), rows: whole.rows.map((row) => ({...row, read: {...row.read, quad: tidy(row.read.quad)}}))};
};

const noPhoto: Problem = {code: "screen/photo-does-not-open", at: "photo", what: "it does not open", why: "it may be cut short, damaged or of a kind that this browser does not know", fix: "send it again as JPEG, PNG or WebP"};

const ourFault = (error: unknown): Problem => ({
  code: "screen/reader-fault", at: "reading the photo", what: `the reader broke off (${error instanceof Error ? error.message : String(error)})`, why: "that is a fault of ours, or the device has too little memory", fix: "take a smaller photo of the label alone, or type the rows as you see them",
});

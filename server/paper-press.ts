// Has papers drawn by a worker that is started when first needed and ends when nobody has wanted paper for a while.
import type {Worker} from "node:worker_threads";
import type {Book, MonthIndex} from "../engine/index.ts";
import type {ChartSize, SheetSize} from "../commands/paper/choices.ts";
import type {PrintOptions, TagOptions} from "../paper/print.ts";
import type {PhotoBytes} from "../paper/pdf/photos.ts";
import type {Sheet} from "../paper/sheet/sheet.ts";
import type {Tag} from "../paper/tag/tag.ts";
import {startWorker} from "./start-worker.ts";

export type PressTask =
  | {readonly work: "begin"; readonly job: number; readonly title: string; readonly size: SheetSize; readonly options: PrintOptions}
  | {readonly work: "sheet"; readonly job: number; readonly sheet: Sheet; readonly photos: PhotoBytes}
  | {readonly work: "end" | "drop"; readonly job: number}
  | {readonly work: "tags"; readonly tags: readonly Tag[]; readonly wish: TagOptions; readonly options: PrintOptions}
  | {readonly work: "chart"; readonly book: Book; readonly today: MonthIndex; readonly size: ChartSize; readonly options: PrintOptions};

export interface PressAnswer {
  readonly id: number;
  readonly bytes: Uint8Array | null;
  readonly fault?: string;
}

/** A document of sheets under way; end it or drop it. */
export interface SheetJob {
  add(sheet: Sheet, photos: PhotoBytes): Promise<void>;
  end(): Promise<Uint8Array>;
  drop(): Promise<void>;
}

export interface Press {
  sheets(title: string, size: SheetSize, options: PrintOptions): Promise<SheetJob>;
  tags(tags: readonly Tag[], wish: TagOptions, options: PrintOptions): Promise<Uint8Array>;
  chart(book: Book, today: MonthIndex, size: ChartSize, options: PrintOptions): Promise<Uint8Array>;
  close(): Promise<void>;
}

interface Waiting {
  readonly resolve: (bytes: Uint8Array | null) => void;
  readonly reject: (error: Error) => void;
}

/** @param idle  milliseconds without work after which the worker ends, as its typefaces take memory */
export function makePress(idle = 120_000): Press {
  let running: {readonly worker: Worker; readonly waiting: Map<number, Waiting>} | null = null;
  let timer: NodeJS.Timeout | undefined;
  let [last, jobs, open] = [0, 0, 0];

  const start = () => {
    const waiting = new Map<number, Waiting>();
    const worker = startWorker(new URL("./paper-worker.ts", import.meta.url), null);
    worker.unref();
    worker.on("message", ({id, bytes, fault}: PressAnswer) => {
      const {resolve, reject} = waiting.get(id)!;
      waiting.delete(id);
      fault === undefined ? resolve(bytes) : reject(new Error(fault));
      if (waiting.size === 0 && open === 0) timer = setTimeout(() => void end(), idle).unref();
    });
    const fail = (error: Error) => {
      running = null;
      for (const {reject} of waiting.values()) reject(error);
      waiting.clear();
    };
    worker.on("error", fail);
    worker.on("exit", () => fail(new Error("the worker ended before the paper was done")));
    return {worker, waiting};
  };
  const end = async () => {
    clearTimeout(timer);
    const ending = running;
    running = null;
    await ending?.worker.terminate();
  };
  const ask = (task: PressTask) => new Promise<Uint8Array | null>((resolve, reject) => {
    clearTimeout(timer);
    running ??= start();
    const id = ++last;
    running.waiting.set(id, {resolve, reject});
    running.worker.postMessage({id, task});
  });
  const bytesOf = async (task: PressTask) => (await ask(task))!;

  return {
    async sheets(title, size, options) {
      const job = ++jobs;
      open++;
      await ask({work: "begin", job, title, size, options});
      return {
        add: async (sheet, photos) => void (await ask({work: "sheet", job, sheet, photos})),
        end: async () => (open--, bytesOf({work: "end", job})),
        drop: async () => (open--, void (await ask({work: "drop", job}))),
      };
    },
    tags: (tags, wish, options) => bytesOf({work: "tags", tags, wish, options}),
    chart: (book, today, size, options) => bytesOf({work: "chart", book, today, size, options}),
    close: end,
  };
}

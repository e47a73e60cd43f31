// Photos wait in line for one worker that reads them, so that reading never keeps other requests waiting nor fills the memory.
import type {Worker} from "node:worker_threads";
import type {ReadDone, ReadTask} from "./read-worker.ts";
import {startWorker} from "./start-worker.ts";

export interface PhotoReader {
  /** Photos under way and in line. */
  waiting(): number;
  read(task: ReadTask): Promise<ReadDone>;
  close(): Promise<void>;
}

/** The reader takes hundreds of megabytes: it ends after so long without work. Source: own choice. */
const idleEnds = 5 * 60_000;

/** @param idle  milliseconds without work after which the worker ends */
export function makePhotoReader(idle = idleEnds): PhotoReader {
  let running: {worker: Worker; line: {resolve: (done: ReadDone) => void; reject: (error: Error) => void}[]} | null = null;
  let timer: NodeJS.Timeout | undefined;
  const start = (): NonNullable<typeof running> => {
    const hand: NonNullable<typeof running> = {worker: startWorker(new URL("./read-worker.ts", import.meta.url), null), line: []};
    hand.worker.unref();
    const end = (error: Error) => {
      if (running === hand) running = null;
      hand.line.splice(0).forEach(({reject}) => reject(error));
    };
    hand.worker.on("message", (done: ReadDone) => {
      hand.line.shift()?.resolve(done);
      if (hand.line.length > 0) return;
      timer = setTimeout(() => {
        if (running === hand) running = null;
        void hand.worker.terminate();
      }, idle).unref();
    });
    hand.worker.on("error", end);
    hand.worker.on("exit", () => end(new Error("the worker that reads photos ended before it answered")));
    return hand;
  };
  return {
    waiting: () => running?.line.length ?? 0,
    read: (task) => new Promise((resolve, reject) => {
      clearTimeout(timer);
      running ??= start();
      running.line.push({resolve, reject});
      running.worker.postMessage(task);
    }),
    async close() {
      clearTimeout(timer);
      await running?.worker.terminate();
      running = null;
    },
  };
}

// Who dates the shares: this thread, or workers. Each share comes back as a promise, so that the order can be kept.
import type {Records} from "../../commands/batch/split.ts";
import type {World} from "../../commands/world.ts";
import {startWorker} from "../../server/start-worker.ts";
import {dateRecords, type DatedShare, type Task} from "./date-records.ts";
import type {WorkerStart} from "./worker.ts";

export interface Crew {
  /** How many shares may wait at the same time. */
  readonly room: number;
  date(records: Records): Promise<DatedShare>;
  close(): Promise<void>;
}

export function makeCrew(workers: number, task: Task, world: World): Crew {
  return workers === 1 ? alone(task, world) : together(workers, task, world);
}

function alone(task: Task, world: World): Crew {
  return {
    room: 1,
    date: (records) => new Promise((resolve, reject) => setImmediate(() => {
      try {
        resolve(dateRecords(records, task, world.examiner()));
      } catch (error) {
        reject(error as Error);
      }
    })),
    close: async () => {},
  };
}

interface Waiting {
  readonly resolve: (share: DatedShare) => void;
  readonly reject: (error: Error) => void;
}

function together(count: number, task: Task, {books, today, since}: World): Crew {
  const start: WorkerStart = {task, books, today, since};
  const members = Array.from({length: count}, () => {
    const worker = startWorker(new URL("./worker.ts", import.meta.url), start);
    const waiting: Waiting[] = [];
    worker.on("message", (share: DatedShare) => waiting.shift()!.resolve(share));
    worker.on("error", (error: Error) => waiting.splice(0).forEach(({reject}) => reject(error)));
    return {worker, waiting};
  });
  return {
    room: count * 3,
    date: (records) => new Promise((resolve, reject) => {
      const {worker, waiting} = members.reduce((a, b) => (b.waiting.length < a.waiting.length ? b : a));
      waiting.push({resolve, reject});
      worker.postMessage(records, [records.bytes.buffer as ArrayBuffer]);
    }),
    close: async () => void (await Promise.all(members.map(({worker}) => worker.terminate()))),
  };
}

// Workers that date garments, so that long work never keeps a request waiting: one for single garments, the others for many.
import {availableParallelism} from "node:os";
import type {Worker} from "node:worker_threads";
import type {Garment} from "../engine/index.ts";
import type {Dated} from "../commands/rack/rack.ts";
import type {World} from "../commands/world.ts";
import type {Dater} from "./books-used.ts";
import type {DateStart, DateTask} from "./date-worker.ts";
import {startWorker} from "./start-worker.ts";

export interface Crew {
  readonly date: Dater;
  close(): Promise<void>;
}

/** Workers for many garments end after so long without work, as each holds the books in memory. */
const idleEnds = 60_000;
const mostHelpers = 4;

export function makeCrew(helpers = Math.min(mostHelpers, Math.max(1, availableParallelism() - 1))): Crew {
  const quick = makeHand(null);
  const many = Array.from({length: helpers}, () => makeHand(idleEnds));
  return {
    async date(garments, world, now) {
      if (garments.length <= 1) return quick.date(garments, world, now);
      const each = Math.ceil(garments.length / many.length);
      const shares = many.map((hand, i) => ({hand, share: garments.slice(i * each, (i + 1) * each)})).filter(({share}) => share.length > 0);
      return (await Promise.all(shares.map(({hand, share}) => hand.date(share, world, now)))).flat();
    },
    close: async () => void (await Promise.all([quick, ...many].map((hand) => hand.close()))),
  };
}

interface Waiting {
  readonly resolve: (dated: readonly Dated[]) => void;
  readonly reject: (error: Error) => void;
}

interface Running {
  readonly worker: Worker;
  readonly world: World;
  readonly waiting: Waiting[];
  /** Its books are not in use any more: it ends when it has answered. */
  old: boolean;
}

/** One worker, started when first needed and anew when the books change. @param idle  milliseconds after which it ends; null: never */
function makeHand(idle: number | null): {date: Dater; close: () => Promise<void>} {
  let running: Running | null = null;
  let timer: NodeJS.Timeout | undefined;

  const end = (hand: Running) => {
    if (running === hand) running = null;
    void hand.worker.terminate();
  };
  const start = (world: World): Running => {
    const begin: DateStart = {books: world.books, today: world.today};
    const hand: Running = {worker: startWorker(new URL("./date-worker.ts", import.meta.url), begin), world, waiting: [], old: false};
    hand.worker.unref();
    hand.worker.on("message", (dated: readonly Dated[]) => {
      hand.waiting.shift()!.resolve(dated);
      if (hand.waiting.length > 0) return;
      if (hand.old) end(hand);
      else if (idle !== null) timer = setTimeout(() => end(hand), idle).unref();
    });
    hand.worker.on("error", (error: Error) => {
      if (running === hand) running = null;
      hand.waiting.splice(0).forEach(({reject}) => reject(error));
    });
    hand.worker.on("exit", () => hand.waiting.splice(0).forEach(({reject}) => reject(new Error("the worker ended before it answered"))));
    return hand;
  };

  return {
    date: (garments: readonly Garment[], world: World, now: string) => new Promise((resolve, reject) => {
      clearTimeout(timer);
      if (running && running.world !== world) {
        if (running.waiting.length === 0) end(running);
        else running.old = true;
        running = null;
      }
      running ??= start(world);
      running.waiting.push({resolve, reject});
      const task: DateTask = {garments, now};
      running.worker.postMessage(task);
    }),
    async close() {
      clearTimeout(timer);
      await running?.worker.terminate();
      running = null;
    },
  };
}

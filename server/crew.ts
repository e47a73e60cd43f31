// Workers that examine garments, so that long work never keeps a request waiting: one for single garments, the others for many.
import {availableParallelism} from "node:os";
import type {Worker} from "node:worker_threads";
import type {Answer} from "../commands/command.ts";
import type {ExaminedJson} from "../commands/rack/examine-json.ts";
import type {Dated} from "../commands/rack/rack.ts";
import type {World} from "../commands/world.ts";
import type {WeighedDate} from "../commands/worth/date-odds.ts";
import type {ExamineStart, ExamineTask} from "./examine-worker.ts";
import type {Examiners} from "./examiners.ts";
import {startWorker} from "./start-worker.ts";

export interface Crew extends Examiners {
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
      if (garments.length <= 1) return quick.ask<readonly Dated[]>({garments, now}, world);
      const each = Math.ceil(garments.length / many.length);
      const shares = many.map((hand, i) => ({hand, share: garments.slice(i * each, (i + 1) * each)})).filter(({share}) => share.length > 0);
      return (await Promise.all(shares.map(({hand, share}) => hand.ask<readonly Dated[]>({garments: share, now}, world)))).flat();
    },
    examine: (input, world) => quick.ask<Answer<ExaminedJson>>({input}, world),
    weigh: (garment, looks, world) => quick.ask<WeighedDate>({weigh: garment, looks}, world),
    close: async () => void (await Promise.all([quick, ...many].map((hand) => hand.close()))),
  };
}

interface Hand {
  ask<T>(task: ExamineTask, world: World): Promise<T>;
  close(): Promise<void>;
}

interface Waiting {
  readonly resolve: (answer: never) => void;
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
function makeHand(idle: number | null): Hand {
  let running: Running | null = null;
  let timer: NodeJS.Timeout | undefined;

  const end = (hand: Running) => {
    if (running === hand) running = null;
    void hand.worker.terminate();
  };
  const start = (world: World): Running => {
    const begin: ExamineStart = {books: world.books, today: world.today};
    const hand: Running = {worker: startWorker(new URL("./examine-worker.ts", import.meta.url), begin), world, waiting: [], old: false};
    hand.worker.unref();
    hand.worker.on("message", (answer: unknown) => {
      hand.waiting.shift()!.resolve(answer as never);
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
    ask: (task, world) => new Promise((resolve, reject) => {
      clearTimeout(timer);
      if (running && running.world !== world) {
        if (running.waiting.length === 0) end(running);
        else running.old = true;
        running = null;
      }
      running ??= start(world);
      running.waiting.push({resolve, reject});
      running.worker.postMessage(task);
    }),
    async close() {
      clearTimeout(timer);
      await running?.worker.terminate();
      running = null;
    },
  };
}

// Watches a worker at its inputs: one that dies or never ends is noted, and a new worker goes on behind it.
import {Worker} from "node:worker_threads";
import type {Target} from "./targets.ts";
import type {Given, Run} from "./worker.ts";

export interface Watched {
  readonly outcomes: Readonly<Record<string, number>>;
  readonly slowest: {readonly ms: number; readonly number: number};
  /** One line for each input that threw, was slow, never ended or ate all memory. */
  readonly failures: readonly string[];
}

/** An input that takes longer is a mistake, however odd it is. */
const mostMs = 20_000;
/** After so long an input counts as one that never ends. */
const endlessMs = 60_000;
const memory = {maxOldGenerationSizeMb: 1024};
const mostFailures = 40;
/** In place of a number: no input is in hand. */
const none = -1;

/** Gives the inputs `0 ..< count` to a way in. */
export async function watchInputs(target: Target, seed: number, count: number): Promise<Watched> {
  const outcomes: Record<string, number> = {};
  const failures: string[] = [];
  let slowest = {ms: 0, number: -1};
  const take = ({number, ms, outcome, thrown}: Given) => {
    if (thrown !== null) failures.push(`${target} ${seed} ${number} throws ${thrown}`);
    else {
      outcomes[outcome!] = (outcomes[outcome!] ?? 0) + 1;
      if (ms > slowest.ms) slowest = {ms, number};
      if (ms > mostMs) failures.push(`${target} ${seed} ${number} takes ${Math.round(ms)} ms`);
    }
  };
  for (let from = 0; from < count && failures.length < mostFailures; ) {
    const at = new Int32Array(new SharedArrayBuffer(4)).fill(none);
    const died = await runOf({target, seed, from, until: count, at}, take);
    if (died === null) break;
    if (at[0] === none) throw new Error(`${target}: a worker ended before its first input: ${died}`);
    from = at[0]! + 1;
    failures.push(`${target} ${seed} ${from - 1} ${died}`);
  }
  return {outcomes, slowest, failures};
}

/** Runs one worker to its end; null when it got there, else why it did not. */
function runOf(run: Run, take: (given: Given) => void): Promise<string | null> {
  const [loader, entry] = [import.meta.resolve("tsx/esm/api"), new URL("./worker.ts", import.meta.url).href];
  const code = `import(${JSON.stringify(loader)}).then(({register}) => { register(); return import(${JSON.stringify(entry)}); });`;
  return new Promise((resolve, reject) => {
    const worker = new Worker(code, {eval: true, workerData: run, resourceLimits: memory});
    let [number, since] = [none, Infinity];
    let why: string | null = null;
    const timer = setInterval(() => {
      const now = run.at[0]!;
      if (now === none) return; // still warming up
      if (now !== number) [number, since] = [now, performance.now()];
      else if (performance.now() - since > endlessMs) {
        why = `does not end within ${endlessMs / 1000} s`;
        void worker.terminate();
      }
    }, 500);
    worker.on("message", take);
    worker.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "ERR_WORKER_OUT_OF_MEMORY") why = `eats more than ${memory.maxOldGenerationSizeMb} MB`;
      else reject(error);
    });
    worker.on("exit", () => {
      clearInterval(timer);
      resolve(why);
    });
  });
}

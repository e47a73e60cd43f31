// Gives a run of inputs to one way in. A thread of its own, so that an input that never ends, or eats all memory, is seen from outside.
import {parentPort, workerData} from "node:worker_threads";
import {inputAt} from "./inputs.ts";
import {give, type Outcome, type Target} from "./targets.ts";

export interface Run {
  readonly target: Target;
  readonly seed: number;
  readonly from: number;
  readonly until: number;
  /** Place 0 holds the number of the input in hand. */
  readonly at: Int32Array;
}

export interface Given {
  readonly number: number;
  /** By the clock or by what the processor worked, whichever is less: waiting for other programs does not count. */
  readonly ms: number;
  readonly outcome: Outcome | null;
  /** What was thrown, if anything. */
  readonly thrown: string | null;
}

/** What seems slow is tried twice more: on a busy machine something else may have held it up. */
const seemsSlow = 800;

const {target, seed, from, until, at} = workerData as Run;
for (let number = from; number < until; number++) {
  Atomics.store(at, 0, number);
  parentPort!.postMessage(givenAt(number));
}

function givenAt(number: number): Given {
  const {bytes, whole} = inputAt(target, seed, number);
  let least = Infinity;
  let outcome: Outcome | null = null;
  try {
    for (let times = 0; times < 3 && least > seemsSlow; times++) {
      const {user, system} = process.cpuUsage();
      const start = performance.now();
      outcome = give(target, bytes, whole);
      const worked = process.cpuUsage({user, system});
      least = Math.min(least, performance.now() - start, (worked.user + worked.system) / 1000);
    }
    return {number, ms: least, outcome, thrown: null};
  } catch (error) {
    return {number, ms: least, outcome: null, thrown: (error as Error).stack?.split("\n").slice(0, 3).join(" ") ?? String(error)};
  }
}

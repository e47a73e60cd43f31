// Gives a run of inputs to one way in. A thread of its own, so that an input that never ends, or eats all memory, is seen from outside.
import {parentPort, workerData} from "node:worker_threads";
import {inputAt} from "./inputs.ts";
import {give, type Outcome, type Target} from "./targets.ts";
import {timed, warmUp} from "./timed.ts";

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
  readonly ms: number;
  readonly outcome: Outcome | null;
  /** What was thrown, if anything. */
  readonly thrown: string | null;
}

const {target, seed, from, until, at} = workerData as Run;
warmUp();
for (let number = from; number < until; number++) {
  Atomics.store(at, 0, number);
  parentPort!.postMessage(givenAt(number));
}

/** Given once only: a second time, what is kept of the first would hide how long it takes. */
function givenAt(number: number): Given {
  const {bytes, whole} = inputAt(target, seed, number);
  try {
    return {number, ...timed(() => give(target, bytes, whole)), thrown: null};
  } catch (error) {
    return {number, ms: 0, outcome: null, thrown: (error as Error).stack?.split("\n").slice(0, 3).join(" ") ?? String(error)};
  }
}

// The exact chance of one reading under a table of chances step by step.
import type {Table} from "./table.ts";

/**
 * Chance that a line reads exactly so: the sum over all ways to walk along it, each class once or longer, with nothing between them or something.
 * @param reading  classes, none of them 0
 * @returns in [0, 1]; over all readings the chances sum to 1
 * @source  the forward sums of connectionist temporal classification: Graves, Fernández, Gomez, Schmidhuber, ICML 2006, section 4.1
 */
export function scoreOf({steps, classes, p}: Table, reading: readonly number[]): number {
  if (steps === 0) return reading.length === 0 ? 1 : 0;
  const states = reading.length * 2 + 1;
  const label = (state: number) => (state % 2 === 1 ? reading[(state - 1) / 2]! : 0);
  let now = new Float64Array(states);
  now[0] = p[0]!;
  if (states > 1) now[1] = p[label(1)]!;
  let log = 0;
  for (let step = 1; step < steps; step++) {
    const next = new Float64Array(states);
    let sum = 0;
    for (let state = 0; state < states; state++) {
      let value = now[state]! + (state > 0 ? now[state - 1]! : 0);
      if (state > 1 && state % 2 === 1 && label(state) !== label(state - 2)) value += now[state - 2]!;
      next[state] = value * p[step * classes + label(state)]!;
      sum += next[state]!;
    }
    if (sum === 0) return 0;
    for (let state = 0; state < states; state++) next[state]! /= sum;
    log += Math.log(sum);
    now = next;
  }
  return Math.exp(log) * (now[states - 1]! + (states > 1 ? now[states - 2]! : 0));
}

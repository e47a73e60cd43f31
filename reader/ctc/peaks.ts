// Where along a line each character of a reading stands, and what else it may be there.
import type {Table} from "./table.ts";

/**
 * The step at which each class of a reading is said most clearly, on its likeliest way along the line.
 * @returns one step a class, ascending; null when the line has fewer steps than the reading needs
 * @source  the most probable path, by the method of Viterbi 1967; from memory
 */
export function peaksOf({steps, classes, p}: Table, reading: readonly number[]): number[] | null {
  const states = reading.length * 2 + 1;
  const label = (state: number) => (state % 2 === 1 ? reading[(state - 1) / 2]! : 0);
  if (steps === 0 || reading.length === 0) return reading.length === 0 ? [] : null;
  let now = new Float64Array(states).fill(-Infinity);
  now[0] = Math.log(p[0]!);
  now[1] = Math.log(p[label(1)]!);
  const came = new Uint8Array(steps * states);
  for (let step = 1; step < steps; step++) {
    const next = new Float64Array(states).fill(-Infinity);
    for (let state = 0; state < states; state++) {
      let [best, back] = [now[state]!, 0];
      if (state > 0 && now[state - 1]! > best) [best, back] = [now[state - 1]!, 1];
      if (state > 1 && state % 2 === 1 && label(state) !== label(state - 2) && now[state - 2]! > best) [best, back] = [now[state - 2]!, 2];
      came[step * states + state] = back;
      next[state] = best + Math.log(p[step * classes + label(state)]!);
    }
    now = next;
  }
  let state = now[states - 2]! > now[states - 1]! ? states - 2 : states - 1;
  if (now[state] === -Infinity) return null;
  const peaks = new Array<number>(reading.length).fill(-1);
  for (let step = steps - 1; step >= 0; step--) {
    if (state % 2 === 1) {
      const place = (state - 1) / 2;
      const k = reading[place]!;
      if (peaks[place] === -1 || p[step * classes + k]! > p[peaks[place]! * classes + k]!) peaks[place] = step;
    }
    state -= came[step * states + state]!;
  }
  return peaks;
}

/** What each class may be at one step when something is said there: chances without class 0, summing to 1. */
export function saidAt({classes, p}: Table, step: number): Float64Array {
  const said = p.slice(step * classes, (step + 1) * classes);
  said[0] = 0;
  const sum = said.reduce((total, value) => total + value, 0);
  return said.map((value) => value / sum);
}

// All ways to walk along a short line, one by one: what forward sums and prefix search must agree with.
import type {Table} from "../../../reader/ctc/table.ts";
import {seeded} from "../../simulate/random.ts";

/** A table of chances drawn from a seed; some steps are nearly sure, as a recogniser's are. */
export function drawnTable(seed: number, steps: number, classes: number): Table {
  const random = seeded(seed);
  const p = new Float64Array(steps * classes);
  for (let step = 0; step < steps; step++) {
    const row = Array.from({length: classes}, () => random.next() ** (random.happens(0.5) ? 6 : 1));
    const sum = row.reduce((total, value) => total + value, 0);
    row.forEach((value, k) => (p[step * classes + k] = value / sum));
  }
  return {steps, classes, p, blank: Float64Array.from({length: steps}, () => random.next() ** 8), known: 1, stride: 0.3};
}

/** The chance of every reading: each path's chance goes to what is left after repeats and class 0 are taken out. */
export function everyReading({steps, classes, p}: Pick<Table, "steps" | "classes" | "p">): Map<string, number> {
  const found = new Map<string, number>();
  const walk = (step: number, last: number, reading: readonly number[], chance: number): void => {
    if (step === steps) return void found.set(reading.join(), (found.get(reading.join()) ?? 0) + chance);
    for (let k = 0; k < classes; k++) walk(step + 1, k, k === 0 || k === last ? reading : [...reading, k], chance * p[step * classes + k]!);
  };
  walk(0, 0, [], 1);
  return found;
}

export const readingOf = (key: string): number[] => (key === "" ? [] : key.split(",").map(Number));

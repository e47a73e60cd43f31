// How long one examination takes, after loading and warming up.
import type {Garment} from "../engine/index.ts";
import {seeded} from "../test/simulate/random.ts";
import {changedGarment} from "./garments.ts";
import type {Line} from "./line.ts";
import {median, quantile, timeOf} from "./measure.ts";
import type {BenchWorld} from "./world.ts";

/** So long one round may take; a slow engine is measured on fewer garments. */
const mostMs = 10_000;

/** Every garment is examined once only: one that was seen before may be answered from what was kept of it. */
export function measureOne({examiner, garments, warming}: BenchWorld, rounds: number): Line[] {
  const random = seeded(5);
  let number = 0;
  const changed = (garment: Garment) => changedGarment(garment, number++, random);
  const started = performance.now();
  for (const garment of warming) {
    examiner.examine(garment);
    if (performance.now() - started > mostMs) break;
  }
  const kinds = [examiner.examine, examiner.brief];
  const middles = kinds.map((): number[] => []);
  const slowest = kinds.map((): number[] => []);
  let count = 0;
  for (let round = 0; round < rounds; round++) {
    const times = kinds.map((): number[] => []);
    const began = performance.now();
    for (const garment of garments) {
      kinds.forEach((run, kind) => {
        const one = changed(garment);
        times[kind]!.push(timeOf(() => run(one)));
      });
      if (performance.now() - began > mostMs) break;
    }
    count += times[0]!.length;
    times.forEach((list, kind) => {
      middles[kind]!.push(median(list));
      slowest[kind]!.push(quantile(list, 0.99));
    });
  }
  const note = `${count} garments in ${rounds} rounds`;
  return [
    {name: "one garment, whole finding, median", value: median(middles[0]!), unit: "ms", most: 1, note},
    {name: "one garment, whole finding, 99 of 100", value: median(slowest[0]!), unit: "ms", most: 5, note},
    {name: "one garment, date alone, median", value: median(middles[1]!), unit: "ms", note},
    {name: "one garment, date alone, 99 of 100", value: median(slowest[1]!), unit: "ms", note},
  ];
}

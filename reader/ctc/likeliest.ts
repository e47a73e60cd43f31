// The likeliest readings of a line, kept as prefixes while walking along it.
import {scoreOf} from "./score.ts";
import type {Table} from "./table.ts";

export interface Likely {
  /** Classes, none of them 0. */
  readonly reading: readonly number[];
  /** Its exact chance. */
  readonly p: number;
}

/** One prefix; its children share it. */
interface Prefix {
  readonly before: Prefix | null;
  readonly last: number;
  next: Map<number, Prefix> | null;
  /** Chance of standing here with, and without, something just said. */
  said: number;
  quiet: number;
  nextSaid: number;
  nextQuiet: number;
  /** The step at which it was last reached. */
  reached: number;
}

/** Nothing new is begun by a class less likely than this at a step, or where it would be so far behind the likeliest prefix. */
const leastChance = 1e-5;
const leastBeside = 1e-6;

/**
 * Up to `most` readings, likeliest first, with exact chances.
 * @param width  prefixes kept at each step; more finds more of the unlikely ones
 * @source  prefix search with a beam: Graves and Jaitly, ICML 2014, algorithm 1; the chances are then made exact with forward sums
 */
export function likeliest(table: Table, most: number, width = Math.max(32, most)): Likely[] {
  const {steps, classes, p} = table;
  const root: Prefix = {before: null, last: 0, next: null, said: 0, quiet: 1, nextSaid: 0, nextQuiet: 0, reached: -1};
  let beam: Prefix[] = [root];
  for (let step = 0; step < steps; step++) {
    const row = step * classes;
    const open: number[] = [];
    for (let k = 1; k < classes; k++) if (p[row + k]! > leastChance) open.push(k);
    const reached: Prefix[] = [];
    const reach = (prefix: Prefix) => {
      if (prefix.reached === step) return;
      prefix.reached = step;
      prefix.nextSaid = prefix.nextQuiet = 0;
      reached.push(prefix);
    };
    for (const prefix of beam) {
      const total = prefix.said + prefix.quiet;
      reach(prefix);
      prefix.nextQuiet += total * p[row]!;
      if (prefix.last !== 0) prefix.nextSaid += prefix.said * p[row + prefix.last]!;
      for (const k of open) {
        const chance = (k === prefix.last ? prefix.quiet : total) * p[row + k]!;
        if (chance < leastBeside) continue;
        const child = childOf(prefix, k);
        reach(child);
        child.nextSaid += chance;
      }
    }
    for (const prefix of reached) [prefix.said, prefix.quiet] = [prefix.nextSaid, prefix.nextQuiet];
    beam = reached.length > width ? reached.sort((a, b) => b.said + b.quiet - a.said - a.quiet).slice(0, width) : reached;
    const largest = beam.reduce((most, {said, quiet}) => Math.max(most, said + quiet), 0);
    if (largest === 0) return [];
    // Only their proportions matter until the exact sums at the end.
    for (const prefix of beam) [prefix.said, prefix.quiet] = [prefix.said / largest, prefix.quiet / largest];
  }
  const found = beam.sort((a, b) => b.said + b.quiet - a.said - a.quiet).slice(0, most);
  return found.map(readingOf).map((reading) => ({reading, p: scoreOf(table, reading)})).sort((a, b) => b.p - a.p);
}

function childOf(prefix: Prefix, k: number): Prefix {
  prefix.next ??= new Map();
  const known = prefix.next.get(k);
  if (known) return known;
  const child: Prefix = {before: prefix, last: k, next: null, said: 0, quiet: 0, nextSaid: 0, nextQuiet: 0, reached: -1};
  prefix.next.set(k, child);
  return child;
}

function readingOf(prefix: Prefix): number[] {
  const reading: number[] = [];
  for (let at: Prefix | null = prefix; at?.before; at = at.before) reading.push(at.last);
  return reading.reverse();
}

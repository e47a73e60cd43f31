// Fits the reading map on rows whose truth is known, and says how well a map holds.
import {standing} from "./align.ts";
import {defaultMap, mapRow} from "./map.ts";
import type {ReadRow, ReadingMap} from "./model.ts";

/** A row as the reader itself said it, before any map, and what is printed there. */
export interface KnownRow {
  readonly row: ReadRow;
  readonly truth: string;
}

/** Things said with about the same chance, and how many of them were so. */
export interface ReliabilityBin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  /** What was said, on average. */
  readonly said: number;
  /** The share that was so. */
  readonly right: number;
}

export interface MapJudged {
  readonly rows: number;
  readonly characters: number;
  /** Mean surprise of the truth of a row, in nats: smaller is better. */
  readonly surprise: number;
  /** Mean distance between what was said of likeliest rows, and of characters, and what was so, weighed by how often. */
  readonly rowError: number;
  readonly characterError: number;
  readonly rowBins: readonly ReliabilityBin[];
  readonly characterBins: readonly ReliabilityBin[];
}

/** Readings outside the list share what is left for "none of these": about one in so many of them is the truth. */
const othersOutside = 1000;
/** A map fitted on few rows stays near the shipped one, as if so many rows had spoken for it. */
const rowsForDefault = 20;

const tempers = [0.5, 0.6, 0.7, 0.85, 1, 1.2, 1.45, 1.75, 2.1, 2.5, 3.2, 4.2];
const powers = [0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2];
const caps = [0.9, 0.95, 0.97, 0.98, 0.985, 0.99];

/**
 * The map under which the truths of some rows are least surprising.
 * @param known  rows before any map: see `unmapRow`
 * @param start  the map that few rows must speak against; default the shipped one
 * @cost   some hundred passes over the rows
 * @source a proper score, Good 1952, over a small grid of each number in turn; temper as in Guo, Pleiss, Sun, Weinberger, ICML 2017
 */
export function fitMap(known: readonly KnownRow[], start: ReadingMap = defaultMap): ReadingMap {
  if (known.length === 0) return start;
  const held = rowsForDefault / (known.length + rowsForDefault);
  const loss = (map: ReadingMap) => (1 - held) * rowSurprise(known, map) + held * awayFrom(start, map);
  const placeLoss = (map: ReadingMap) => (1 - held) * characterSurprise(known, map) + held * awayFrom(start, map);
  let map = start;
  for (let round = 0; round < 3; round++) {
    for (const temper of tempers) map = better(map, {...map, temper}, loss);
    for (const mass of powers) map = better(map, {...map, mass}, loss);
    for (const cap of caps) map = better(map, {...map, cap}, loss);
  }
  for (const places of powers) map = better(map, {...map, places}, placeLoss);
  return map;
}

const better = (a: ReadingMap, b: ReadingMap, loss: (map: ReadingMap) => number) => (loss(b) < loss(a) ? b : a);

const awayFrom = (start: ReadingMap, map: ReadingMap) =>
  Math.log(map.temper / start.temper) ** 2 + (map.mass - start.mass) ** 2 + (map.places - start.places) ** 2 + (Math.log((1 - map.cap) / (1 - start.cap)) / 2) ** 2;

function rowSurprise(known: readonly KnownRow[], map: ReadingMap): number {
  return known.reduce((sum, {row, truth}) => {
    const {strings, none} = mapRow(row, map);
    return sum - Math.log(Math.max(1e-6, strings.find(({text}) => text === truth)?.p ?? none / othersOutside));
  }, 0) / known.length;
}

function characterSurprise(known: readonly KnownRow[], map: ReadingMap): number {
  let [sum, count] = [0, 0];
  for (const {row, truth} of known) {
    const here = standing(row.best, truth);
    mapRow(row, map).places.forEach((place, i) => {
      const listed = place.reduce((total, {p}) => total + p, 0);
      const p = place.find(({character}) => character === here[i])?.p ?? Math.max(0, 1 - listed) / 10;
      sum -= Math.log(Math.max(1e-4, p));
      count++;
    });
  }
  return count === 0 ? 0 : sum / count;
}

/** How well a map holds on known rows: of what it said with some chance, how much was so. Blanks are not counted as characters. */
export function judgeMap(known: readonly KnownRow[], map: ReadingMap): MapJudged {
  const rows: (readonly [said: number, so: boolean])[] = [];
  const characters: (readonly [said: number, so: boolean])[] = [];
  for (const {row, truth} of known) {
    const now = mapRow(row, map);
    const best = now.strings[0];
    if (best) rows.push([best.p, best.text === truth]);
    const here = standing(now.best, truth);
    now.places.forEach((place, i) => {
      if (now.best[i] !== " ") characters.push([place.find(({character}) => character === now.best[i])?.p ?? 0, here[i] === now.best[i]]);
    });
  }
  const [rowBins, characterBins] = [binsOf(rows), binsOf(characters)];
  return {rows: known.length, characters: characters.length, surprise: known.length === 0 ? 0 : rowSurprise(known, map), rowError: errorOf(rowBins), characterError: errorOf(characterBins), rowBins, characterBins};
}

/** Ten bins of equal width; empty ones are left out. */
export function binsOf(said: readonly (readonly [said: number, so: boolean])[]): ReliabilityBin[] {
  return Array.from({length: 10}, (_, d) => {
    const inside = said.filter(([p]) => Math.min(9, Math.floor(p * 10)) === d);
    const mean = (of: (one: readonly [number, boolean]) => number) => inside.reduce((sum, one) => sum + of(one), 0) / inside.length;
    return {from: d / 10, to: (d + 1) / 10, count: inside.length, said: mean(([p]) => p), right: mean(([, so]) => Number(so))};
  }).filter(({count}) => count > 0);
}

/** Expected calibration error: mean distance of said and right, by how many things each bin holds. */
export function errorOf(bins: readonly ReliabilityBin[]): number {
  const all = bins.reduce((sum, {count}) => sum + count, 0);
  return all === 0 ? 0 : bins.reduce((sum, {count, said, right}) => sum + count * Math.abs(said - right), 0) / all;
}

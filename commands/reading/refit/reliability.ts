// How often a reader is right when it says so: rows and characters, gathered by what was said.
import {z} from "zod";
import {standing} from "../../../reader/align.ts";
import {mapRow} from "../../../reader/map.ts";
import type {ReadingMap} from "../../../reader/model.ts";
import type {Confirmed} from "./confirmed.ts";

export const binSchema = z.strictObject({
  says: z.number().min(0).max(1).describe("mean of what was said"),
  right: z.number().min(0).max(1).describe("share that was right"),
  count: z.number().int().min(1),
});

export const reliabilitySchema = z.strictObject({
  rows: z.array(binSchema).describe("likeliest readings of whole rows"),
  characters: z.array(binSchema).describe("likeliest characters"),
  rowError: z.number().min(0).describe("how far says and right lie apart, by count"),
  characterError: z.number().min(0),
  loss: z.number().describe("mean of minus the logarithm of what was given to the truth, rows"),
});

export type Bin = z.infer<typeof binSchema>;
export type Reliability = z.infer<typeof reliabilitySchema>;

interface Said {
  readonly p: number;
  readonly right: boolean;
}

/** Upper edges of the bins: finer where most is said. Source: own choice. */
const edges = [0.2, 0.4, 0.6, 0.7, 0.8, 0.9, 0.95, 1];

/** How reliable a map makes confirmed readings. */
export function reliabilityOf(confirmed: readonly Confirmed[], map: ReadingMap): Reliability {
  const mapped = confirmed.map(({row, truth}) => ({row: mapRow(row, map), truth}));
  const rows = mapped.flatMap(({row: {strings: [first]}, truth}): Said[] => (first ? [{p: first.p, right: first.text === truth}] : []));
  const characters = mapped.flatMap(({row, truth}) => {
    const true_ = standing(row.best, truth);
    return row.places.map(([first], i): Said => ({p: first!.p, right: true_[i] === first!.character}));
  });
  const [rowBins, characterBins] = [binned(rows), binned(characters)];
  return {rows: rowBins, characters: characterBins, rowError: errorOf(rowBins), characterError: errorOf(characterBins), loss: lossOf(confirmed, map)};
}

/** Mean of minus the logarithm of the chance given to the true row; a row that is not listed counts what "none of these" got. */
export function lossOf(confirmed: readonly Confirmed[], map: ReadingMap): number {
  const total = confirmed.reduce((sum, {row, truth}) => {
    const now = mapRow(row, map);
    return sum - Math.log(Math.max(1e-6, now.strings.find(({text}) => text === truth)?.p ?? now.none));
  }, 0);
  return confirmed.length > 0 ? total / confirmed.length : 0;
}

/** The same for single characters. */
export function characterLoss(confirmed: readonly Confirmed[], map: ReadingMap): number {
  let [sum, count] = [0, 0];
  for (const {row, truth} of confirmed) {
    const true_ = standing(row.best, truth);
    mapRow(row, map).places.forEach((place, i) => {
      const rest = Math.max(0, 1 - place.reduce((total, {p}) => total + p, 0));
      sum -= Math.log(Math.max(1e-6, (place.find(({character}) => character === true_[i])?.p ?? 0) + rest / 40));
      count++;
    });
  }
  return count > 0 ? sum / count : 0;
}

function binned(said: readonly Said[]): Bin[] {
  return edges.flatMap((edge, i) => {
    const inside = said.filter(({p}) => p <= edge && p > (edges[i - 1] ?? -1));
    if (inside.length === 0) return [];
    return [{says: inside.reduce((sum, {p}) => sum + p, 0) / inside.length, right: inside.filter(({right}) => right).length / inside.length, count: inside.length}];
  });
}

/** Expected calibration error. Source: Naeini, Cooper, Hauskrecht 2015, AAAI, pages 2901-2907 (from memory). */
function errorOf(bins: readonly Bin[]): number {
  const count = bins.reduce((sum, bin) => sum + bin.count, 0);
  return count === 0 ? 0 : bins.reduce((sum, bin) => sum + bin.count * Math.abs(bin.says - bin.right), 0) / count;
}

// How likely each separator stands between two printed characters. Source of the numbers: own choice, docs/decisions/0004-row-layouts.md.
import {separators, type BoundaryWeights, type Separator} from "./printed-row.ts";

/** Chances of nothing, gap, dash, dot, slash, in the order of `separators`. */
type BoundaryLaw = readonly number[];

const law = (chances: Partial<Record<Separator, number>>, each: number): BoundaryLaw => separators.map((s) => chances[s] ?? each);

export const insideField = law({"": 0.97, " ": 0.02}, 0.01 / 3);
export const joinedFields = law({"": 0.9, " ": 0.07}, 0.01);
export const nextToNoise = law({"": 0.6, " ": 0.3}, 0.1 / 3);

const listed = new Map(separators.filter((s) => s !== "").map((s) => [s, law({"": 0.1, [s]: 0.85}, 0.05 / 3)]));

/** The law between two fields for which the book lists a separator. */
export function listedSeparator(separator: Separator): BoundaryLaw {
  return separator === "" ? joinedFields : listed.get(separator)!;
}

/** Chance of a boundary as seen under a law. */
export function boundaryChance(seen: BoundaryWeights, chances: BoundaryLaw): number {
  let total = 0;
  for (let i = 0; i < chances.length; i++) total += seen[i]! * chances[i]!;
  return total;
}

export type {BoundaryLaw};

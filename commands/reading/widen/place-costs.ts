// What it costs to take each place of a row for another character: the reader's alternatives as costs, for finding candidates quickly.
import type {ReadRow} from "../../../reader/model.ts";

/** A row place by place. Costs are natural logarithms of one over a chance. */
export interface PlaceCosts {
  readonly characters: readonly string[];
  /** Cost of taking a place for a character. */
  take(place: number, character: string): number;
  /** Cost of there being nothing at a place. */
  drop(place: number): number;
  /** Cost of a character that the reader missed before a place. */
  add(character: string): number;
}

/** What the reader does not list is not impossible: places are only a first sieve, the reader's exact score decides. Source: own choice. */
const unlisted = Math.log(1 / 3e-4);
const missed = Math.log(1 / 0.01);
/** Gaps are dropped and made up far more often than print. */
const gap = Math.log(1 / 0.1);
const lost = Math.log(1 / 0.02);

/** Costs of the places of the likeliest reading. */
export function placeCosts({best, places}: Pick<ReadRow, "best" | "places">): PlaceCosts {
  const characters = [...best];
  const tables = characters.map((character, i) => new Map((places[i] ?? [{character, p: 0.9}]).map((one) => [one.character, Math.log(1 / Math.max(one.p, 1e-6))])));
  return {
    characters,
    take: (place, character) => Math.min(unlisted, tables[place]!.get(character) ?? unlisted),
    drop: (place) => Math.min(characters[place] === " " ? gap : lost, tables[place]!.get("") ?? Infinity),
    add: (character) => (character === " " ? gap : missed),
  };
}

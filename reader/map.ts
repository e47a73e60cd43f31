// Corrects a reader's own chances by four numbers, fitted on readings whose truth is known, so that "90 in 100" is right 90 times.
import type {Characters, ReadRow, ReadingMap} from "./model.ts";

/** Fitted on made-up photos that nothing is reported of: bench/reader-map.ts, docs/decisions/0019. */
export const defaultMap: ReadingMap = {temper: 0.7, mass: 0.5, places: 0.02, cap: 0.98};

/** The map that changes nothing. */
export const noMap: ReadingMap = {temper: 1, mass: 0, places: 0, cap: 0.999};

/**
 * A row with its chances corrected.
 *
 * The listed readings share what is left of the cap by the mass that the reader gave them together; a low mass means that it wavered between
 * more readings than a list can hold, so more is left for "none of these". The alternatives of a place lose a little in the same way. A temper below 1 draws chances apart, above 1 together.
 * @param row  as the reader itself says, with its `mass`
 */
export function mapRow(row: ReadRow, {temper, mass: power, places, cap}: ReadingMap): ReadRow {
  const mass = row.mass ?? Math.min(1, row.strings.reduce((sum, {p}) => sum + p, 0));
  const kept = row.strings.length === 0 ? 0 : Math.min(cap, mass ** power);
  const shares = row.strings.map(({p}) => p ** (1 / temper));
  const sum = shares.reduce((total, share) => total + share, 0);
  const strings = row.strings.map(({text}, i) => ({text, p: sum > 0 ? (kept * shares[i]!) / sum : 0}));
  return {...row, mass, strings, none: 1 - (sum > 0 ? kept : 0), places: row.places.map((place) => tempered(place, 1 / temper, staysOf(mass, places, cap)))};
}

/**
 * Takes a map back: the row as the reader itself said it, so that another map can be fitted on it.
 * @edge  a row without `mass` was never mapped, and comes back as it is
 */
export function unmapRow(row: ReadRow, {temper}: ReadingMap): ReadRow {
  if (row.mass === undefined) return row;
  const {mass} = row;
  const shares = row.strings.map(({p}) => p ** temper);
  const sum = shares.reduce((total, share) => total + share, 0);
  const strings = row.strings.map(({text}, i) => ({text, p: sum > 0 ? (mass * shares[i]!) / sum : 0}));
  return {...row, strings, none: 1 - mass, places: row.places.map((place) => tempered(place, temper, 1))};
}

/** A row of about so many characters is as sure as all of them together, so each of them may be surer than the row. */
const usualLength = 8;
const staysOf = (mass: number, power: number, cap: number) => Math.min(cap ** (1 / usualLength), mass ** power);

/** The alternatives of a place drawn apart or together, sharing so much between them. */
function tempered(place: Characters, power: number, together: number): Characters {
  const shares = place.map(({p}) => p ** power);
  const sum = shares.reduce((total, share) => total + share, 0);
  return place.map(({character}, i) => ({character, p: sum > 0 ? (together * shares[i]!) / sum : 0}));
}

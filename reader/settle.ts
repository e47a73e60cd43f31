// What settling some places of a row does to its readings and to its other places: pure, so that a screen can do it at every tap.
import {align, standing} from "./align.ts";
import type {Characters, ReadRow, SettledRow} from "./model.ts";

/** Chance of a character at a place where the reader gave it none: the owner may well see what it did not. */
const unseen = 0.002;
const mostStrings = 60;

/**
 * The row as it stands after what the owner settled.
 *
 * Readings that disagree with a settled place give way to the same reading with the settled character in that place, by the weight the
 * place gave it; all weights are then made to sum to 1 again, and the alternatives of the other places follow.
 * @returns `places` keep the order and number of the reader's own likeliest reading, so that a place goes by one number; `best` is the likeliest now
 * @edge    a row typed by the owner is certain; nothing settled gives the row itself; a place beyond the row is not looked at
 * @example
 * settle({best: "48", places: [...], strings: [{text: "48", p: 0.6}, {text: "43", p: 0.3}], none: 0.1, quad}, {text: null, places: {1: "3"}, left: false}).best // -> "43"
 */
export function settle(row: ReadRow, settled: SettledRow | null): ReadRow {
  if (settled === null) return row;
  if (settled.text !== null) return certain(row, settled.text.slice(0, 80));
  const fixed = Object.entries(settled.places).map(([place, character]) => ({place: Number(place), character})).filter(({place}) => place < row.places.length);
  if (fixed.length === 0) return row;
  const chance = (place: number, character: string) => Math.max(unseen, row.places[place]!.find((one) => one.character === character)?.p ?? 0);
  const weights = new Map<string, number>();
  const add = (text: string, p: number) => weights.set(text, (weights.get(text) ?? 0) + p);
  const own = new Set(row.strings.filter(({text}) => agrees(row.best, text, fixed)).map(({text}) => text));
  for (const {text, p} of row.strings) {
    if (own.has(text)) add(text, p);
    else {
      const here = standing(row.best, text);
      const changed = withFixed(row.best, text, fixed);
      if (own.has(changed)) continue;
      add(changed, fixed.reduce((weight, {place, character}) => (here[place] === character ? weight : (weight * chance(place, character)) / Math.max(chance(place, here[place]!), chance(place, character))), p));
    }
  }
  const none = fixed.reduce((weight, {place, character}) => weight * Math.max(0.02, chance(place, character)), row.none);
  const total = [...weights.values()].reduce((sum, p) => sum + p, 0) + none;
  if (total === 0) return certain(row, withFixed(row.best, row.best, fixed));
  const strings = [...weights].map(([text, p]) => ({text, p: p / total})).sort((a, b) => b.p - a.p).slice(0, mostStrings);
  const kept = strings.reduce((sum, {p}) => sum + p, 0);
  return {...row, best: strings[0]?.text ?? row.best, strings, none: Math.max(0, 1 - kept), places: placesOf(row, strings, kept, fixed)};
}

interface Fixed {
  readonly place: number;
  readonly character: string;
}

const agrees = (best: string, text: string, fixed: readonly Fixed[]) => {
  const here = standing(best, text);
  return fixed.every(({place, character}) => here[place] === character);
};

/** A reading with the settled characters put in their places. */
function withFixed(best: string, text: string, fixed: readonly Fixed[]): string {
  const wanted = new Map(fixed.map(({place, character}) => [place, character]));
  return align(best, text).map(({from, to}) => (from !== null && wanted.has(from) ? wanted.get(from)! : to === null ? "" : text[to]!)).join("").replace(/ {2,}/g, " ").trim();
}

/** The alternatives of every place: settled ones certain, the others by the readings that are left, what is not in them by the reader's own word. */
function placesOf(row: ReadRow, strings: ReadRow["strings"], kept: number, fixed: readonly Fixed[]): Characters[] {
  const here = strings.map(({text, p}) => ({at: standing(row.best, text), p}));
  return row.places.map((before, place) => {
    const set = fixed.find((one) => one.place === place);
    if (set) return [{character: set.character, p: 1}];
    const now = new Map<string, number>();
    for (const {at, p} of here) now.set(at[place]!, (now.get(at[place]!) ?? 0) + p);
    for (const {character, p} of before) now.set(character, (now.get(character) ?? 0) + p * (1 - kept));
    return [...now].map(([character, p]) => ({character, p: Math.min(1, p)})).sort((a, b) => b.p - a.p).slice(0, 12);
  });
}

const certain = (row: ReadRow, text: string): ReadRow => ({
  ...row,
  best: text,
  strings: [{text, p: 1}],
  none: 0,
  places: [...text].slice(0, 60).map((character) => [{character, p: 1}]),
});

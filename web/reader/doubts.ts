// What of a row read from a photo is in doubt, and what can be settled with one tap.
import {align} from "../../reader/align.ts";
import type {Characters, ReadRow, SettledRow} from "../../reader/model.ts";
import {settle} from "../../reader/settle.ts";

/** A character less certain than this is dotted. Source: own choice. */
const certain = 0.9;
/** What is less likely is not offered. */
const leastCharacter = 0.015;
const leastText = 0.01;
/** Gaps are easily lost in reading: the same characters set apart otherwise are offered even so. */
const leastSpacing = 0.005;
const mostTexts = 4;

/** One place of the reader's likeliest reading, and what stands or may stand there. */
export interface PlaceState {
  readonly place: number;
  /** Likeliest first; an empty character is nothing there. */
  readonly choices: Characters;
  readonly doubtful: boolean;
  readonly settled: boolean;
}

/** Every place of a row as it stands after what was settled; a gap is no place to settle: other spacings are other readings of the row. */
export function placesOf(read: ReadRow, settled: SettledRow | null): PlaceState[] {
  if (settled?.text != null) return [];
  const now = settle(read, settled);
  return now.places.map((characters, place) => {
    const isSettled = settled?.places[place] !== undefined;
    const choices = gapsAside(isSettled ? read.places[place]! : characters).filter(({p}) => p >= leastCharacter);
    return {place, choices, settled: isSettled, doubtful: !isSettled && read.best[place] !== " " && (characters[0]?.p ?? 0) < certain};
  });
}

/** A gap where a character was read is nothing there. */
function gapsAside(characters: Characters): Characters {
  const gap = characters.reduce((sum, {character, p}) => (character === " " || character === "" ? sum + p : sum), 0);
  return [...characters.filter(({character}) => character !== " " && character !== ""), ...(gap > 0 ? [{character: "", p: gap}] : [])].sort((a, b) => b.p - a.p);
}

/** Which place of the reader's likeliest reading each character of another reading stands at; null: none. */
export function placesIn(read: ReadRow, text: string): (number | null)[] {
  const at: (number | null)[] = Array.from({length: text.length}, () => null);
  for (const {from, to} of align(read.best, text)) if (to !== null) at[to] = from;
  return at;
}

/** Other readings of the whole row, likeliest first. */
export function otherTexts(read: ReadRow, settled: SettledRow | null, shown: string): {readonly text: string; readonly p: number}[] {
  if (settled?.text != null) return [];
  const bare = (text: string) => text.replaceAll(" ", "");
  return settle(read, settled).strings.filter(({text, p}) => text !== shown && text.trim() !== "" && p >= (bare(text) === bare(shown) ? leastSpacing : leastText)).slice(0, mostTexts);
}

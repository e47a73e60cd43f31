// Prints characters and sees them again: misread, doubtful or unreadable, with gaps that come and go. Section 4 of docs/model.md.
import {lookAlikes} from "../../engine/cell/look-alike.ts";
import type {Random} from "./random.ts";

/** What a book puts between two characters: a listed sign, or the law that holds there. */
export type Between = "joined" | "inside" | "noise" | " " | "-" | "." | "/";

/** A character as printed, with what stands before it; null at the start of a row. */
export interface Character {
  readonly sign: string;
  readonly before: Between | null;
}

/** How often a look leaves doubt: the weights given are then those of the doubt itself, so that they are honest. */
export interface Eye {
  readonly doubtful: number;
  readonly unreadable: number;
}

const signs = ["", " ", "-", ".", "/"] as const;
const laws = {
  joined: [0.9, 0.07, 0.01, 0.01, 0.01],
  inside: [0.97, 0.02, 0.01 / 3, 0.01 / 3, 0.01 / 3],
  noise: [0.6, 0.3, 0.1 / 3, 0.1 / 3, 0.1 / 3],
} as const;

function lawOf(between: Between): readonly number[] {
  return between in laws ? laws[between as keyof typeof laws] : signs.map((sign) => (sign === "" ? 0.1 : sign === between ? 0.85 : 0.05 / 3));
}

const figures = "0123456789";
const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** Characters of a field: separators in its text become what stands before the next character. */
export function charactersOf(text: string, before: Between | null): Character[] {
  const result: Character[] = [];
  let pending = before;
  for (const sign of text) {
    if ((signs as readonly string[]).includes(sign)) pending = result.length === 0 ? before : (sign as Between);
    else {
      result.push({sign, before: pending});
      pending = "inside";
    }
  }
  return result;
}

/** A row as the owner would type it, (8:70/3:30) for doubt and ? for what cannot be read. */
export function seeRow(row: readonly Character[], eye: Eye, random: Random): string {
  return row.map(({sign, before}) => (before === null ? "" : signs[random.place(lawOf(before))!]!) + seeCell(sign, eye, random)).join("");
}

function seeCell(sign: string, {doubtful, unreadable}: Eye, random: Random): string {
  if (random.happens(unreadable)) return "?";
  if (random.happens(doubtful)) return doubt(sign, random);
  return misread(sign, random);
}

/**
 * A doubtful character. The other one is evenly any of its kind, and the heavier weight falls on the true one as often as it says.
 */
function doubt(sign: string, random: Random): string {
  const kind = figures.includes(sign) ? figures : letters;
  const other = random.pick([...kind].filter((x) => x !== sign));
  const heavier = random.pick([50, 70, 90]);
  const [first, second] = random.next() * 100 < heavier ? [sign, other] : [other, sign];
  return `(${first}:${heavier}/${second}:${100 - heavier})`;
}

function misread(sign: string, random: Random): string {
  let left = random.next();
  for (const [a, b, chance] of lookAlikes) {
    if (a !== sign && b !== sign) continue;
    left -= chance;
    if (left < 0) return a === sign ? b : a;
  }
  return sign;
}

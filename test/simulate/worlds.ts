// Worlds that differ from their book: windows a year off, and marks that change together.
import type {Book, WindowText} from "../../engine/rule/schema.ts";
import {printMonth} from "../../engine/month/month.ts";
import {monthIndex} from "../../engine/units.ts";
import type {Random} from "./random.ts";
import {monthNumber} from "./world.ts";

const shiftPair = (pair: readonly [string, string] | null | undefined, by: number) =>
  pair ? (pair.map((text) => printMonth(monthIndex(monthNumber(text) + by))) as [string, string]) : pair;

/** A window some months later (by > 0) or earlier, its soft ends as long as before. */
export function shiftWindow({begins, ends}: WindowText, by: number): WindowText {
  return {begins: shiftPair(begins, by), ends: shiftPair(ends, by)};
}

/** A book whose every window is moved by so many months as `by` says for it; anything called `window` is one. */
export function shiftBook(book: Book, by: (path: readonly string[]) => number): Book {
  const walk = (node: unknown, path: readonly string[]): unknown => {
    if (Array.isArray(node)) return node.map((item, i) => walk(item, [...path, String(i)]));
    if (typeof node !== "object" || node === null) return node;
    return Object.fromEntries(
      Object.entries(node).map(([key, inner]) => [key, key === "window" ? shiftWindow(inner as WindowText, by([...path, key])) : walk(inner, [...path, key])]),
    );
  };
  return walk(book, []) as Book;
}

/** The world in which every window of the book is wrong by so many months, one way or the other by chance. */
export function wrongWindows(book: Book, months: number, random: Random): Book {
  return shiftBook(book, () => (random.happens(0.5) ? months : -months));
}

/** The world in which all marks of the book changed sooner or later than it says, together: one shift for all of them. */
export function changedTogether(book: Book, marks: readonly string[], most: number, random: Random): Book {
  const by = random.whole(-most, most);
  return shiftBook(book, ([part, mark]) => (part === "marks" && marks.includes(mark!) ? by : 0));
}

/** The book with all its marks in one group. */
export function tempered(book: Book, temper: number): Book {
  return {...book, groups: {all: {marks: Object.keys(book.marks), temper}}};
}

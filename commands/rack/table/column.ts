// What the columns of a rack's table are: entries of a garment, entries of the shop, marks, and what only an export tells.
import {knownMarks, type Book} from "../../../engine/index.ts";
import {resultColumns} from "../../brief.ts";

/** Columns about the garment and how it is kept; every other one is a mark. */
export const entryColumns = ["garment", "title", "maker", "market", "type", "rows", "note", "place", "standing", "paid", "asked", "tags", "size", "measures"] as const;
export type EntryColumn = (typeof entryColumns)[number];

/** Columns that an export adds, worked out from the rest: they are not read again. */
export const toldColumns = ["dated", "sureness", ...resultColumns] as const;

/** What a column is taken as: an entry, a mark, or nothing ("" leaves it out). */
export type Target = string;

/** The target that a column's name says; null when it says none. */
export function targetOf(name: string, marks: ReadonlySet<string>): Target | null {
  const id = name.trim().toLowerCase();
  if ((entryColumns as readonly string[]).includes(id) || marks.has(id)) return id;
  return id === "" || (toldColumns as readonly string[]).includes(id) ? "" : null;
}

export const markIds = (books: readonly Book[]): ReadonlySet<string> => new Set(knownMarks(books).keys());

// Words that a rule book itself quotes in the name of a mark or value: “Crafted with pride in U.S.A.” is looked for as it stands.
import type {Book} from "../../../engine/index.ts";
import type {Entry} from "./lexicon.ts";

/** Shorter words in quotes are too common to be looked for alone. Source: own choice. */
const fewest = 4;

/** Entries that a book gives by quoting. */
export function quotedEntries(book: Book): Entry[] {
  return Object.entries(book.marks).flatMap(([mark, rule]): Entry[] => {
    if (rule.kind === "presence") return entry(mark, "present", rule.name);
    if (rule.kind === "choice") return Object.entries(rule.values).flatMap(([id, {name}]) => entry(mark, id, name));
    return [];
  });
}

function entry(mark: string, value: string, name: string): Entry[] {
  const phrases = [...name.matchAll(/[“"]([^”"]+)[”"]/g)].map(([, words]) => words!).filter((words) => words.replace(/[^0-9A-Za-z]/g, "").length >= fewest);
  return phrases.length > 0 ? [{mark, value, phrases, family: mark, ...(name.includes("United States") ? {us: true as const} : {})}] : [];
}

// What the words on a label suggest: marks of the public book and of the maker's, each with its words and why. Nothing is ever set by itself.
import {type Book} from "../../engine/index.ts";
import type {World} from "../world.ts";
import {careHits, findCare} from "./words/care.ts";
import {codedHits} from "./words/coded.ts";
import {findCountry} from "./words/country.ts";
import {fibreHits} from "./words/fibre-list.ts";
import {bareRow, findAny, type Found} from "./words/find-phrase.ts";
import {lexicon, type Entry} from "./words/lexicon.ts";
import {formHits} from "./words/number-forms.ts";
import {quotedEntries} from "./words/quoted.ts";
import {sayRead, type Hit, type Suggestion} from "./words/suggestion.ts";

export interface SuggestOptions {
  /** Ids of possible makers' books; theirs alone are asked beside the public ones. */
  readonly makers?: readonly string[];
  /** Id of the place that the photo shows, when known. */
  readonly place?: string | null;
}

/**
 * Marks that the words in some rows may show.
 * Worn and swapped characters are borne, more in long words than in short ones; a mark is suggested once, by the words most like it.
 * @param rows  as a reader read them, one a printed row; rows of codes suggest nothing here and are left to the row grammar
 * @example
 * suggestMarks(["MACH1NE WASH WARM", "MADE IN WEST GERMANY"], world).map(({mark}) => mark) // -> ["us.care.label.instructions", "origin.line.country.line"]
 */
export function suggestMarks(rows: readonly string[], {books}: Pick<World, "books">, {makers = [], place = null}: SuggestOptions = {}): Suggestion[] {
  const asked = books.filter(({kind, book}) => kind === "public" || makers.includes(book));
  const hits = [...formHits(rows), ...careHits(findCare(rows)), ...fibreHits(rows), ...asked.flatMap((book) => [...findCountry(rows, book), ...codedHits(rows, book, ownSchemes(book), place)]), ...wordHits(rows, asked)];
  const best = new Map<string, Suggestion>();
  for (const hit of hits) {
    const book = asked.find((one) => knows(one, hit));
    const before = best.get(hit.mark);
    if (book && (!before || hit.likeness > before.likeness + 1e-9)) best.set(hit.mark, {...hit, book: book.book});
  }
  return [...best.values()].sort((a, b) => a.row - b.row || (a.mark < b.mark ? -1 : 1));
}

function knows(book: Book, {mark, value}: Hit): boolean {
  const rule = book.marks[mark];
  if (!rule) return false;
  return rule.kind !== "choice" || [value].flat().every((one) => one in rule.values);
}

/** Schemes by which a maker's label is read. */
const ownSchemes = ({labels, schemes}: Book): ReadonlySet<string> => new Set(Object.values(labels?.kinds ?? {}).flatMap((kind) => kind.schemes ?? Object.keys(schemes)));

const inLexicon = new Set(lexicon.map(({mark}) => mark));

function wordHits(rows: readonly string[], books: readonly Book[]): Hit[] {
  const entries = [...lexicon, ...books.flatMap(quotedEntries).filter(({mark}) => !inLexicon.has(mark))].filter(({mark}) => books.some((book) => book.marks[mark]));
  const american = signOfUnitedStates(rows);
  return rows.flatMap((text, row) => {
    const bare = bareRow(text);
    const found = entries.filter(({us}) => !us || american).flatMap((entry) => {
      const at = findAny(entry.phrases, bare);
      return at ? [{entry, at}] : [];
    });
    return found.filter((one) => !found.some((other) => hides(other, one))).map(({entry, at}): Hit => ({
      mark: entry.mark, value: entry.value as string | string[], words: at.read.trim(), row, likeness: at.likeness, why: sayRead(at.read, at.phrase, at.likeness),
    }));
  });
}

interface Placed {
  readonly entry: Entry;
  readonly at: Found & {readonly phrase: string};
}

/** Of words of one family that overlap, the better found counts, and the longer of two equally good ones. */
function hides(a: Placed, b: Placed): boolean {
  if (a.entry.family !== b.entry.family || a.at.phrase === b.at.phrase || a.at.from >= b.at.until || b.at.from >= a.at.until) return false;
  return weigh(a) > weigh(b);
}

const weigh = ({at}: Placed) => at.until - at.from - 3 * at.cost;

const signOfUnitedStates = (rows: readonly string[]) => rows.some((text) => /U\.?\s?S\.?\s?A|(?:^|[^A-Z])R\.?\s?N\.?\s?#?\s?\d{5}|W\.?P\.?L/.test(text.toUpperCase()));

// Codes that a book's schemes read: a contract number with its fiscal year, the stamp of a zip; and codes that a place repeats.
import {readCode, loneScheme, type Book} from "../../../engine/index.ts";
import type {Hit} from "./suggestion.ts";

/** A code of so many characters with letters and figures is no chance. Source: own choice. */
const fewest = 4;
const fewestFigures = 8;

/**
 * @param own  ids of schemes that the label's own rows are read by, which are left to the rows
 * @param place  the place of the garment that the photo shows; a place that repeats a code is then read as one
 */
export function codedHits(rows: readonly string[], book: Book, own: ReadonlySet<string>, place: string | null): Hit[] {
  return Object.entries(book.marks).flatMap(([mark, rule]) => {
    if (rule.kind === "repeat") return rule.place === place ? repeated(rows, mark, rule.of) : [];
    if (rule.kind !== "coded") return [];
    const schemes = rule.schemes.filter((id) => !own.has(id)).map((id) => schemeOf(book, id));
    return rows.flatMap((text, row): Hit[] => {
      const found = pieces(text).find((piece) => telling(piece) && schemes.some((scheme) => readCode(scheme, piece).length > 0));
      return found === undefined ? [] : [{mark, value: found, words: found, row, likeness: 1, why: `“${found}” reads as ${rule.name}`}];
    }).slice(0, 1);
  });
}

function repeated(rows: readonly string[], mark: string, of: string): Hit[] {
  const row = rows.findIndex((text) => /^\s*[0-9A-Z]{1,8}\s*$/i.test(text) && /\d/.test(text));
  return row < 0 ? [] : [{mark, value: rows[row]!.trim().toUpperCase(), words: rows[row]!.trim(), row, likeness: 1, why: `the place shown repeats the ${of}`}];
}

const known = new WeakMap<Book, Map<string, ReturnType<typeof loneScheme>>>();

function schemeOf(book: Book, id: string): ReturnType<typeof loneScheme> {
  let schemes = known.get(book);
  if (!schemes) known.set(book, (schemes = new Map()));
  let scheme = schemes.get(id);
  if (!scheme) schemes.set(id, (scheme = loneScheme(book.schemes[id]!)));
  return scheme;
}

const telling = (piece: string) => {
  const bare = piece.replace(/[^0-9A-Z]/g, "");
  return bare.length >= fewest && ((/[A-Z]/.test(bare) && /\d{2}/.test(bare)) || bare.length >= fewestFigures);
};

/** The row, and its words alone and by twos, longest first. */
function pieces(text: string): string[] {
  const words = text.toUpperCase().trim().split(/\s+/).filter((word) => word !== "");
  return [words.join(" "), ...words.slice(1).map((word, i) => `${words[i]} ${word}`), ...words];
}

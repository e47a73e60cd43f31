// What the ledger and the stitch lines call a mark, and the time in which what was seen of it was in use.
import {nameOf, rowsId, labelId, type Book, type Finding, type Scheme, type Source} from "../../engine/index.ts";
import type {WindowText} from "../../engine/rule/schema.ts";
import {isOfTwoDates} from "./two-dates.ts";

/** A mark's name, and what was seen of it; null where the name says it all. */
export function wordsOf(finding: Finding, id: string): {readonly name: string; readonly seen: string | null} {
  if (id === rowsId) return {name: nameOf(finding, id), seen: datedReading(finding)?.date ?? null};
  const seen = finding.rules.filter(({mark}) => mark === id).map((rule) => rule.seen);
  return {name: nameOf(finding, id), seen: seen.length === 0 || seen[0] === "present" ? null : seen.join(" or ")};
}

/** The chance that a mark, or the whole piece it sits on, does not belong; undefined for one that fits. */
export function oddChance(finding: Finding, id: string): number | undefined {
  // Of two dates nothing is out of place: each mark belongs to one of them.
  if (isOfTwoDates(finding)) return undefined;
  const {odd, pieces} = finding;
  return odd.find((one) => one.id === id || (one.piece && pieces.some((piece) => piece.id === one.id && piece.marks.includes(id))))?.probability;
}

/** The code scheme by which the rows are dated, with its book; null when they are not. */
export function schemeOf(books: readonly Book[], finding: Finding): {readonly scheme: Scheme; readonly source: Source | null; readonly book: Book} | null {
  const id = datedReading(finding)?.scheme;
  const book = books.find(({schemes}) => id && schemes[id]);
  return book ? {scheme: book.schemes[id!]!, source: book.sources[book.schemes[id!]!.source.ref] ?? null, book} : null;
}

/** The window of what was seen of a mark; null for one that has none, such as a growing number. */
export function windowOf(books: readonly Book[], finding: Finding, id: string): WindowText | null {
  if (id === rowsId) return schemeOf(books, finding)?.scheme.window ?? null;
  const rule = finding.rules.find(({mark}) => mark === id);
  const book = books.find((one) => one.book === rule?.book);
  if (!rule || !book) return null;
  if (id === labelId) return Object.values(book.labels?.kinds ?? {}).find(({name}) => name === rule.seen)?.window ?? null;
  const mark = book.marks[id];
  if (mark?.kind === "choice") return Object.values(mark.values).find(({name}) => name === rule.seen)?.window ?? null;
  if (mark?.kind === "repeat") return book[`${mark.of}s` as const]?.codes[rule.seen]?.window ?? mark.window;
  return mark && "window" in mark && rule.seen !== "absent" ? mark.window : null;
}

/** The likeliest reading of a row that has a date. */
function datedReading({rows}: Finding) {
  return rows.flatMap(({readings}) => readings).filter(({date}) => date !== null).sort((a, b) => b.probability - a.probability)[0];
}

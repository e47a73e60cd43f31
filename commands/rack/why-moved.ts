// Says why a garment is dated differently than before: which edition of which book is new, and what it changed about the marks that were seen.
import {compareBooks} from "../../rulebooks/compare.ts";
import type {Book, Garment} from "../../engine/index.ts";
import type {Dating} from "../../store/model.ts";

/** An edition of a book; null when it is not at hand any more. */
export type EditionBook = (book: string, edition: number) => Book | null;

/** So many changes of a book are told; more would hide the garment. */
const mostTold = 3;

/** Whether two datings say the same, whenever they were made. */
export const sameDating = (a: Dating, b: Dating) => JSON.stringify({...a, at: ""}) === JSON.stringify({...b, at: ""});

/** One sentence without full stop. */
export function whyMoved(before: Dating | null, after: Dating, garment: Garment, edition: EditionBook): string {
  if (!before) return "it had not been dated before";
  const reasons = after.books.flatMap(({book, edition: now}) => {
    const was = before.books.find((one) => one.book === book)?.edition;
    if (was === now) return [];
    if (was === undefined) return [`it is dated by ${titleOf(edition(book, now), book)} now, too`];
    return [bookMoved(edition(book, was), edition(book, now), {book, was, now}, garment)];
  });
  const gone = before.books.filter(({book}) => !after.books.some((one) => one.book === book)).map(({book}) => `the book ${book} is no longer used for it`);
  const all = [...reasons, ...gone];
  return all.length > 0 ? all.join("; ") : "the same editions, weighed by a newer version of the program or in a later month";
}

function bookMoved(old: Book | null, fresh: Book | null, {book, was, now}: {readonly book: string; readonly was: number; readonly now: number}, {saw}: Garment): string {
  const head = `${titleOf(fresh, book)}, edition ${was} → ${now}`;
  if (!old || !fresh) return head;
  const changes = compareBooks(old, fresh).filter(({path}) => path[0] !== "edition");
  const seen = new Set([...Object.keys(saw), ...Object.values(saw).flatMap((value) => (typeof value === "string" ? [value] : []))]);
  const about = changes.filter(({path}) => path.some((step) => seen.has(String(step))));
  const told = (about.length > 0 ? about : changes).slice(0, mostTold).map(({says}) => says);
  const more = (about.length > 0 ? about : changes).length - told.length;
  return told.length === 0 ? head : `${head}: ${told.join("; ")}${more > 0 ? `; and ${more} more` : ""}`;
}

const titleOf = (book: Book | null, id: string) => book?.title ?? id;

// Which books garments are dated by: those that come with the tool, and the newest edition of each of the owner's own.
import type {Book} from "../../engine/index.ts";
import {validateBook} from "../../rulebooks/validate.ts";
import type {BookEdition} from "../../store/model.ts";

/** The setting that changes whenever an edition is saved, so that others who serve the same rack notice. */
export const booksSavedKey = "books.saved";

/**
 * The books in use; an own book takes the place of one that comes with the tool and has the same id.
 * An edition that today's program can no longer read is passed over: an older one of it is used, or none.
 */
export function booksInUse(shipped: readonly Book[], editions: readonly BookEdition[]): Book[] {
  const own = new Map<string, Book>();
  for (const {book, edition, yaml} of editions.toSorted((a, b) => b.edition - a.edition)) {
    if (own.has(book)) continue;
    const read = validateBook(yaml, `${book} ${edition}`).book;
    if (read) own.set(book, read);
  }
  const kept = shipped.map((book) => own.get(book.book) ?? book);
  return [...kept, ...[...own.values()].filter(({book}) => !shipped.some((other) => other.book === book))];
}

/** One edition of a book, whether it comes with the tool or is the owner's; null when there is none. */
export function editionOf(shipped: readonly Book[], editions: readonly BookEdition[], id: string, number: number): {readonly book: Book; readonly yaml: string | null} | null {
  const own = editions.find(({book, edition}) => book === id && edition === number);
  const read = own && validateBook(own.yaml, `${id} ${number}`).book;
  if (own && read) return {book: read, yaml: own.yaml};
  const came = shipped.find(({book, edition}) => book === id && edition === number);
  return came ? {book: came, yaml: null} : null;
}

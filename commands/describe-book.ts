// What a rule book holds, in a few numbers.
import type {Book} from "../engine/index.ts";
import {datedRules} from "../rulebooks/dated-rules.ts";

export interface BookSummary {
  readonly book: string;
  readonly title: string;
  readonly edition: number;
  readonly kind: Book["kind"];
  readonly from: string;
  /** Null when it covers months up to now. */
  readonly until: string | null;
  readonly marks: number;
  readonly windows: number;
  readonly schemes: number;
  readonly sources: number;
  /** Windows known from memory only. */
  readonly fromMemory: number;
}

export function describeBook(book: Book): BookSummary {
  const rules = datedRules(book);
  return {
    book: book.book,
    title: book.title,
    edition: book.edition,
    kind: book.kind,
    from: book.covers.from,
    until: book.covers.until ?? null,
    marks: Object.keys(book.marks).length + (book.labels ? 1 : 0),
    windows: rules.length,
    schemes: Object.keys(book.schemes).length,
    sources: Object.keys(book.sources).length,
    fromMemory: rules.filter(({cite}) => cite.how === "memory").length,
  };
}

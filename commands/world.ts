// What a command works with beside its input: the books, the current month, and an examiner made from them when first needed.
import {defaultSince, makeExaminer, type Book, type Examiner, type MonthIndex} from "../engine/index.ts";

export interface World {
  readonly books: readonly Book[];
  /** The last month a garment can have been made in. */
  readonly today: MonthIndex;
  /** The first month considered, unless a mark that was seen asks for an earlier one. */
  readonly since: MonthIndex;
  /** The same examiner at every call. */
  readonly examiner: () => Examiner;
}

/** A world of checked books. */
export function makeWorld(books: readonly Book[], today: MonthIndex, since: MonthIndex = defaultSince): World {
  let made: Examiner | null = null;
  return {books, today, since, examiner: () => (made ??= makeExaminer(books, {today, since}))};
}

/** A book by its id, undefined when there is none; null stands for a maker without a book. */
export const bookOf = ({books}: Pick<World, "books">, id: string | null) => books.find(({book}) => book === id);

/** The title of a maker's book, for people. */
export function makerTitle(world: Pick<World, "books">, id: string | null): string {
  return id === null ? "a maker without a rule book" : (bookOf(world, id)?.title ?? id);
}

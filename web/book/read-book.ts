// An edition of a book as the server hands it out.
import type {Book} from "../../engine/rule/schema.ts";

export interface ReadBook {
  readonly book: Book;
  readonly yaml: string;
}

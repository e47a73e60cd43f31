// Lists the rule books at hand.
import {z} from "zod";
import {command} from "./command.ts";
import {describeBook, type BookSummary} from "./describe-book.ts";

export const listBooks = command({
  name: "books.list",
  summary: "list the rule books at hand",
  input: z.strictObject({}),
  run: (_input, {books}) => ({answer: books.map(describeBook)}),
  json: (books: readonly BookSummary[]) => books,
});

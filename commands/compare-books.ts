// Compares two editions of a rule book.
import {z} from "zod";
import type {Book} from "../engine/index.ts";
import {compareBooks, type Change} from "../rulebooks/compare.ts";
import {command} from "./command.ts";

const checkedBook = z.custom<Book>((value) => typeof value === "object" && value !== null, "a checked rule book");

export const compareEditions = command({
  name: "books.compare",
  summary: "say what changed between two editions of a rule book",
  input: z.strictObject({before: checkedBook.describe("the older edition"), after: checkedBook.describe("the newer edition")}),
  run: ({before, after}) => ({answer: compareBooks(before, after)}),
  json: (changes: readonly Change[]) => changes,
});

// The rule books on the rack: which there are, one edition of a book, and what changed between two.
import {z} from "zod";
import {compareBooks} from "../../rulebooks/compare.ts";
import {printBook} from "../../rulebooks/print-book.ts";
import {bookEditionSchema} from "../../store/model.ts";
import {describeBook} from "../describe-book.ts";
import {editionOf} from "./books-in-use.ts";
import * as say from "./problems.ts";
import type {Rack} from "./rack.ts";
import {rackCommand, unknown} from "./rack-command.ts";

const {book: bookId, edition: editionNumber} = bookEditionSchema.shape;

export const listBookEditions = rackCommand({
  name: "books.editions",
  summary: "list the rule books in use and the editions there are of each",
  route: {method: "get", path: "/api/books"},
  input: z.strictObject({}),
  output: z.array(z.strictObject({
    book: bookId, title: z.string(), edition: editionNumber.describe("in use"), own: z.boolean(), rules: z.number().int().describe("windows"), editions: z.array(editionNumber),
    kind: z.enum(["public", "maker"]), marks: z.number().int(), sources: z.number().int(), from: z.string(), until: z.string().nullable(), fromMemory: z.number().int(),
  })),
  async run(_input, {world, store, shipped}) {
    const own = await store.editions();
    return {answer: world.books.map((book) => {
      const {title, edition, kind, windows: rules, marks, sources, from, until, fromMemory} = describeBook(book);
      const numbers = [...shipped.filter((one) => one.book === book.book), ...own.filter((one) => one.book === book.book)].map((one) => one.edition);
      return {book: book.book, title, edition, own: !shipped.includes(book), rules, editions: [...new Set(numbers)].sort((a, b) => a - b), kind, marks, sources, from, until, fromMemory};
    })};
  },
});

export const getBookEdition = rackCommand({
  name: "books.edition",
  summary: "show one edition of a rule book, and its text",
  route: {method: "get", path: "/api/books/{book}/{edition}"},
  input: z.strictObject({book: bookId, edition: editionNumber}),
  output: z.strictObject({book: z.record(z.string(), z.unknown()), yaml: z.string()}),
  async run({book, edition}, rack) {
    const found = await find(rack, book, edition);
    return found ? {answer: {book: found.book, yaml: found.yaml ?? printBook(found.book)}} : unknown(say.noEdition(book, edition));
  },
});

export const compareBookEditions = rackCommand({
  name: "books.compare-editions",
  summary: "say what changed between two editions of a rule book",
  route: {method: "get", path: "/api/books/{book}/compare/{from}/{to}"},
  input: z.strictObject({book: bookId, from: editionNumber, to: editionNumber}),
  output: z.array(z.strictObject({kind: z.enum(["added", "removed", "changed"]), path: z.array(z.union([z.string(), z.number()])), says: z.string(), before: z.string().optional(), after: z.string().optional()})),
  async run({book, from, to}, rack) {
    const [before, after] = [await find(rack, book, from), await find(rack, book, to)];
    if (!before) return unknown(say.noEdition(book, from));
    if (!after) return unknown(say.noEdition(book, to));
    return {answer: compareBooks(before.book, after.book)};
  },
});

const find = async ({store, shipped}: Rack, book: string, edition: number) => editionOf(shipped, await store.editions(book), book, edition);

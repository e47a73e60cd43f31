// Checks a rule book as it is typed, and keeps it as a new edition: what was saved before is never written over.
import {z} from "zod";
import {bookEditionSchema} from "../../store/model.ts";
import {validateBook} from "../../rulebooks/validate.ts";
import {checkBook} from "../check-book.ts";
import {booksSavedKey} from "./books-in-use.ts";
import * as say from "./problems.ts";
import {rackCommand, unfit} from "./rack-command.ts";

const yaml = z.string().max(2_000_000);
const mostBytes = 5_000_000;
const mostTries = 5;

export const checkBookText = rackCommand({
  name: "books.check-text",
  summary: "say everything that has to be mended in a rule book",
  route: {method: "post", path: "/api/books/check"},
  mostBytes,
  input: z.strictObject({yaml}),
  output: z.strictObject({problems: z.array(z.unknown()), book: z.record(z.string(), z.unknown()).nullable().describe("null while it has problems")}),
  async run({yaml: text}) {
    const read = validateBook(text, "book");
    const {problems} = checkBook(read);
    return {answer: problems ? {problems, book: null} : {problems: [], book: read.book!}};
  },
});

/** The edition number in the text is raised to the next free one, and nothing else of the text is touched. */
export const saveBook = rackCommand({
  name: "books.save",
  summary: "keep a rule book as a new edition",
  route: {method: "post", path: "/api/books", status: 201},
  mostBytes,
  input: z.strictObject({yaml}),
  output: bookEditionSchema,
  async run({yaml: text}, {store, shipped, who, now}) {
    const read = validateBook(text, "book");
    const {problems} = checkBook(read);
    if (problems) return unfit(problems);
    const {book, title} = read.book!;
    for (let tries = 0; tries < mostTries; tries++) {
      const there = [...shipped.filter((one) => one.book === book), ...(await store.editions(book))].map((one) => one.edition);
      const edition = Math.max(0, ...there) + 1;
      const numbered = withNumber(text, read.where!(["edition"]), edition);
      const kept = {book, edition, title, yaml: numbered, savedAt: now, savedBy: who};
      if (!(await store.addEdition(kept))) continue;
      await store.setSetting(booksSavedKey, `${now} ${book} ${edition}`);
      return {answer: kept};
    }
    return {refused: "conflict", problems: [say.editionTaken(book)]};
  },
});

/** Writes a number over the one that stands at "book:line:column". */
function withNumber(text: string, place: string, edition: number): string {
  const [, line, column] = /:(\d+):(\d+)/.exec(place)!;
  const lines = text.split("\n");
  const row = lines[Number(line) - 1]!;
  const at = Number(column) - 1;
  lines[Number(line) - 1] = row.slice(0, at) + row.slice(at).replace(/^\S*?\d+/, (was) => was.replace(/\d+$/, String(edition)));
  return lines.join("\n");
}

// Shows what a rule book says: all its marks, or one mark with every value, window and source.
import {z} from "zod";
import {labelId, nearest, sayWindow, type Book, type Cite, type Mark, type Source} from "../engine/index.ts";
import {command} from "./command.ts";
import {describeBook, type BookSummary} from "./describe-book.ts";
import * as say from "./problems.ts";
import {bookOf} from "./world.ts";

export interface MarkLine {
  readonly mark: string;
  readonly kind: Mark["kind"];
  readonly name: string;
  readonly place: string;
}

/** One statement of a mark: a value, a window, a scheme, a number's first month. */
export interface Statement {
  readonly id: string;
  readonly name: string;
  readonly says: string | null;
  readonly window: string;
  readonly source: Source | null;
  readonly cite: Cite;
}

export interface MarkPage extends MarkLine {
  readonly says: string | null;
  readonly look: string;
  readonly caution: string | null;
  readonly statements: readonly Statement[];
}

export interface ShowAnswer {
  readonly summary: BookSummary;
  readonly note: string | null;
  readonly marks: readonly MarkLine[];
  /** Null when no mark was asked for. */
  readonly page: MarkPage | null;
}

export const showBook = command({
  name: "books.show",
  summary: "show the marks of a rule book, or one mark with its windows and sources",
  input: z.strictObject({
    book: z.string().describe("id of a book, or the path of a book file or folder"),
    mark: z.string().optional().describe("id of a mark"),
  }),
  run({book: id, mark: markId}, world) {
    const book = bookOf(world, id);
    const ids = world.books.map((one) => one.book);
    if (!book) return {problems: [say.unknownBook("book", id, ids, nearest(id, ids))]};
    const marks = marksOf(book);
    const mark = markId === undefined ? undefined : marks.get(markId);
    if (markId !== undefined && !mark) return {problems: [say.unknownMark("mark", markId, id, nearest(markId, marks.keys()))]};
    const lines = [...marks].map(([name, one]) => lineOf(book, name, one));
    return {answer: {summary: describeBook(book), note: book.note?.trim() ?? null, marks: lines, page: mark ? pageOf(book, markId!, mark) : null}};
  },
  json: (answer: ShowAnswer) => answer,
});

function marksOf(book: Book): Map<string, Mark> {
  const labels: [string, Mark][] = book.labels ? [[labelId, {...book.labels, kind: "choice", values: book.labels.kinds}]] : [];
  return new Map([...labels, ...Object.entries(book.marks)]);
}

function lineOf(book: Book, id: string, {kind, name, place}: Mark): MarkLine {
  return {mark: id, kind, name, place: book.places[place]?.name ?? place};
}

function pageOf(book: Book, id: string, mark: Mark): MarkPage {
  return {...lineOf(book, id, mark), says: mark.says ?? null, look: book.places[mark.place]?.look ?? "", caution: mark.caution ?? null, statements: statementsOf(book, mark)};
}

function statementsOf(book: Book, mark: Mark): Statement[] {
  const statement = (id: string, name: string, says: string | undefined, window: string, cite: Cite): Statement => ({
    id, name, says: says ?? null, window, cite, source: book.sources[cite.ref] ?? null,
  });
  switch (mark.kind) {
    case "choice":
      return Object.entries(mark.values).map(([id, value]) => statement(id, value.name, value.says, sayWindow(value.window), value.source ?? mark.source));
    case "coded":
      return mark.schemes.map((id) => {
        const {name, note, window, source} = book.schemes[id]!;
        return statement(id, name, note, sayWindow(window), source);
      });
    case "serial":
      return mark.knots.map(({month, number}) => statement(String(number), `number ${number}`, undefined, `first issued ${month}`, mark.source));
    default:
      return [statement("present", mark.name, mark.says, sayWindow(mark.window), mark.source)];
  }
}

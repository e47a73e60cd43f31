// The four ways in, each taking any bytes: a garment file, a line of a table, a line of JSON, a book file.
import {dateRecords, type DatedShare} from "../../cli/batch/date-records.ts";
import type {Columns} from "../../commands/batch/columns.ts";
import {RecordSplitter, type Records} from "../../commands/batch/split.ts";
import {makeExaminer, month, printProblem, type Book, type Examiner} from "../../engine/index.ts";
import {bookSchema} from "../../engine/rule/schema.ts";
import {shippedBooks} from "../../rulebooks/load.ts";
import {validateBook, validateGarment} from "../../rulebooks/validate.ts";
import {garments, tableOf} from "./seed-inputs.ts";
import {soundObjects, soundProblems, watched} from "./sound.ts";

export type Outcome = "finding" | "book" | "problems" | "nothing";
export type Target = "garment" | "table" | "list" | "book";

const today = month(2026, 6);
const {books = [], problems} = shippedBooks();
if (problems) throw new Error(problems.map(printProblem).join("\n"));

export const shipped: readonly Book[] = books;
export const table = tableOf(books);
const examiner = watched(makeExaminer(books, {today}));

/**
 * Gives an input to one of the ways in.
 * @param whole  whole findings, not the date alone
 * @returns      what came of it
 * @throws       when something came of it that must not: every throw is a mistake of the tool
 */
export function give(target: Target, input: Uint8Array, whole: boolean): Outcome {
  const outcome = ways[target](input, whole);
  soundObjects();
  return outcome;
}

const ways: Readonly<Record<Target, (input: Uint8Array, whole: boolean) => Outcome>> = {
  garment(input, whole) {
    const checked = validateGarment(input, "given.yaml");
    if (checked.problems) return refused(checked.problems);
    return examiner[whole ? "examine" : "brief"](checked.garment).finding ? "finding" : "problems";
  },
  table: (input, whole) => dateAll(input, whole, table.columns),
  list: (input, whole) => dateAll(input, whole, null),
  book(input, whole) {
    const checked = validateBook(input, "given.yaml");
    if (checked.problems) {
      if ("book" in checked && checked.book !== undefined) throw new Error("half a book");
      return refused(checked.problems);
    }
    if (!bookSchema.safeParse(checked.book).success) throw new Error("a book that does not fit its own shape");
    useBook(checked.book, whole);
    return "book";
  },
};

function refused(list: Parameters<typeof soundProblems>[0]): Outcome {
  soundProblems(list);
  return "problems";
}

function dateAll(input: Uint8Array, whole: boolean, columns: Columns | null): Outcome {
  const splitter = new RecordSplitter(columns ? columns.delimiter.charCodeAt(0) : null);
  const task = {plan: {columns, whole, odd: false, usual: {}}, name: "given", breakLine: "\n"};
  const shares = [splitter.push(input), splitter.end()].map((records: Records): DatedShare => dateRecords(records, task, examiner));
  for (const {asides} of shares) for (const aside of asides) soundProblems(aside.problems);
  for (const line of shares.flatMap(({text}) => text.split("\n")).filter((one) => one !== "" && (whole || !columns))) {
    if (typeof JSON.parse(line) !== "object") throw new Error(`a result that is no object: ${line}`);
  }
  if (shares.some(({dated}) => dated > 0)) return "finding";
  return shares.some(({asides}) => asides.length > 0) ? "problems" : "nothing";
}

/** A book that loads must be of use: garments of its maker are examined with it. */
function useBook(book: Book, whole: boolean): void {
  const own: Examiner = watched(makeExaminer([book], {today}));
  const maker = book.kind === "maker" ? book.book : undefined;
  const mark = Object.entries(book.marks).find(([, {kind}]) => kind === "presence")?.[0];
  own[whole ? "examine" : "brief"]({garment: "with the book", maker, saw: {...(mark === undefined ? {} : {[mark]: "present"}), ...(book.labels ? {rows: ["3 8 21"]} : {})}});
  for (const {saw} of garments.slice(0, 2)) own.brief({garment: "of the demo", maker, saw});
}

// Behind the editor: checks the book as it is typed and dates the example garment by it, away from the keys.
import {makeExaminer, parseMonth, sayFinding, verdictOf} from "../../engine/index.ts";
import type {Book} from "../../engine/rule/schema.ts";
import {checkBook} from "../../commands/check-book.ts";
import {validateBook} from "../../rulebooks/validate.ts";
import type {BenchAnswer, BenchQuestion} from "./bench-shape.ts";

addEventListener("message", ({data}: MessageEvent<BenchQuestion>) => postMessage(answer(data)));

function answer({turn, yaml, others, example, today}: BenchQuestion): BenchAnswer {
  const read = validateBook(yaml, "book");
  const {problems} = checkBook(read);
  if (problems) return {turn, problems, book: null, finding: null, slips: []};
  const book: Book = read.book!;
  if (!example) return {turn, problems: [], book, finding: null, slips: []};
  const examiner = makeExaminer([...others.filter((other) => other.book !== book.book), book], {today: parseMonth(today)!});
  const {finding, problems: slips} = examiner.examine(example);
  if (!finding) return {turn, problems: [], book, finding: null, slips: slips ?? []};
  const {words, probability} = verdictOf(finding);
  return {turn, problems: [], book, finding: {words, probability, sentences: sayFinding(finding)}, slips: []};
}

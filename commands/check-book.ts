// Checks a rule book to the last: beside its shape and its references also that every specimen code reads as it must.
import {loneScheme, printDay, readCode, type Problem, type Scheme} from "../engine/index.ts";
import {checkSpecimens, type Reading} from "../rulebooks/specimens.ts";
import type {CheckedBook} from "../rulebooks/validate.ts";
import type {Answer} from "./command.ts";
import {describeBook, type BookSummary} from "./describe-book.ts";

/** What a loaded book holds, or everything that has to be mended. */
export function checkBook(loaded: CheckedBook): Answer<BookSummary> {
  if (loaded.problems) return {problems: loaded.problems};
  const problems: Problem[] = checkSpecimens(loaded.book, readDays, loaded.where);
  return problems.length > 0 ? {problems} : {answer: describeBook(loaded.book)};
}

function readDays(scheme: Scheme, text: string): Reading[] {
  return readCode(loneScheme(scheme), text).flatMap(({spans}) => spans.map(({from, until}) => ({from: printDay(from), until: printDay(until)})));
}

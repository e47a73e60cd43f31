// Checks the specimen codes of schemes: those that must read, and those that must not.
import type {Problem} from "../engine/problem.ts";
import {daysIn, parseMonth} from "../engine/month/month.ts";
import type {Book, Scheme} from "../engine/rule/schema.ts";
import {printPath, type Where} from "./place.ts";
import * as say from "./problems.ts";

/** What a code can mean: first and last day, both included, as "1968-03-01". */
export interface Reading {
  readonly from: string;
  readonly until: string;
}

/**
 * Tries every specimen of a book.
 *
 * A specimen passes when one of its readings lies within the months or days that it must read as; one under `never reads` passes when there is no reading.
 *
 * @param read   reads a code by a scheme
 * @param where  where entries stand in the file; their paths when left out
 */
export function checkSpecimens(book: Book, read: (scheme: Scheme, text: string) => readonly Reading[], where: Where = printPath): Problem[] {
  return Object.entries(book.schemes).flatMap(([id, scheme]) => [
    ...Object.entries(scheme.reads).flatMap(([code, text]) => {
      const at = where(["schemes", id, "reads", code]);
      const span = parseSpan(text);
      const readings = read(scheme, code);
      if (!span) return [say.badSpan(at, text)];
      if (readings.length === 0) return [say.specimenUnread(at, code, text)];
      return readings.some((reading) => liesWithin(reading, span)) ? [] : [say.specimenAstray(at, code, text, readings.map(printReading))];
    }),
    ...scheme["never reads"].flatMap((code, i) => {
      const readings = read(scheme, code);
      return readings.length === 0 ? [] : [say.specimenReads(where(["schemes", id, "never reads", i]), code, readings.map(printReading))];
    }),
  ]);
}

/** Checks that every specimen says months or days to read as. */
export function checkSpans(book: Book, where: Where): Problem[] {
  return Object.entries(book.schemes).flatMap(([id, {reads}]) =>
    Object.entries(reads).flatMap(([code, text]) => (parseSpan(text) ? [] : [say.badSpan(where(["schemes", id, "reads", code]), text)])),
  );
}

/** A month or day, or two joined by "..", to its first and last as written; null when it is neither, or runs backwards. */
function parseSpan(text: string): {from: string; until: string} | null {
  const [from = "", until = from, ...more] = text.split("..");
  return more.length === 0 && isMonthOrDay(from) && isMonthOrDay(until) && from.slice(0, until.length) <= until ? {from, until} : null;
}

function isMonthOrDay(text: string): boolean {
  const month = parseMonth(text.slice(0, 7));
  if (month === null) return false;
  if (text.length === 7) return true;
  const day = Number(text.slice(8));
  return /^-\d\d$/.test(text.slice(7)) && day >= 1 && day <= daysIn(month);
}

// Months and days as written sort as text, each compared as far as the span says.
function liesWithin(reading: Reading, {from, until}: {from: string; until: string}): boolean {
  return reading.from.slice(0, from.length) >= from && reading.until.slice(0, until.length) <= until;
}

const printReading = ({from, until}: Reading) => (from === until ? from : `${from}..${until}`);

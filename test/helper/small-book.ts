// Small books made on the spot, so that a test shows every number that counts.
import {makeExaminer} from "../../engine/index.ts";
import type {Brief, Finding} from "../../engine/index.ts";
import {month, parseMonth} from "../../engine/month/month.ts";
import {garmentSchema} from "../../engine/rule/garment.ts";
import {bookSchema, schemeSchema, type Book, type Scheme} from "../../engine/rule/schema.ts";
import type {MonthIndex} from "../../engine/units.ts";

export const cite = {ref: "test", how: "inferred"} as const;

/** Parts of a book as they would be written; what is left out gets the schema's defaults. */
export interface Written {
  readonly [key: string]: unknown;
}

/** A book from its parts; public unless said otherwise. */
export function bookOf(parts: Written): Book {
  return bookSchema.parse({
    book: "test-book",
    title: "Test book",
    edition: 1,
    kind: "public",
    covers: {from: "1000-01"},
    sources: {test: {kind: "invented", title: "Made for a test"}},
    places: {somewhere: {name: "somewhere", look: "Look there.", effort: 1}},
    ...parts,
  });
}

/** A mark that is never lost or stray unless said otherwise. */
export function markOf(parts: Written): Written {
  return {name: "mark", place: "somewhere", stray: 0, lost: 0, source: cite, ...parts};
}

/** A scheme from its parts; its window is open unless said otherwise. */
export function schemeOf(parts: readonly Written[], rest: Written = {}): Scheme {
  return schemeSchema.parse({name: "scheme", parts, window: {}, source: cite, ...rest});
}

export interface Asked {
  readonly saw: Written;
  /** First and last month of the axis, like 1950-01. */
  readonly from: string;
  readonly until: string;
  readonly prior?: readonly number[];
  readonly maker?: string | readonly string[];
  readonly market?: string;
}

const monthNamed = (text: string): MonthIndex => parseMonth(text) ?? month(Number.NaN, 1);

/** Examines what was seen with some books; what does not read is an error of the test. */
export function findingOf(books: readonly Book[], asked: Asked): Finding {
  return outcomeOf(books, asked, "examine") as Finding;
}

/** As `findingOf`, for the date alone. */
export function briefOf(books: readonly Book[], asked: Asked): Brief {
  return outcomeOf(books, asked, "brief");
}

function outcomeOf(books: readonly Book[], {saw, from, until, prior, maker, market}: Asked, depth: "examine" | "brief"): Brief {
  const examiner = makeExaminer(books, {since: monthNamed(from), today: monthNamed(until), ...(prior ? {prior: Float64Array.from(prior)} : {})});
  const result = examiner[depth](garmentSchema.parse({garment: "test", saw, maker, market}));
  if (!result.finding) throw new Error(JSON.stringify(result.problems));
  return result.finding;
}

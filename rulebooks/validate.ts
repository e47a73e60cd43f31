// Text to a checked book or garment: whole, or not at all.
import type {z} from "zod";
import type {Problem} from "../engine/problem.ts";
import {garmentSchema, type Garment} from "../engine/rule/garment.ts";
import {bookSchema, type Book} from "../engine/rule/schema.ts";
import {checkNumbers} from "./check-numbers.ts";
import {checkReferences} from "./check-references.ts";
import {checkWindows} from "./check-windows.ts";
import {firstProblems, parseYaml} from "./parse-yaml.ts";
import type {Path, Where} from "./place.ts";
import {checkShape} from "./shape.ts";
import {checkSpans} from "./specimens.ts";

export type CheckedBook = {readonly book: Book; readonly where: Where; readonly problems?: undefined} | {readonly book?: undefined; readonly where?: undefined; readonly problems: readonly Problem[]};
export type CheckedGarment = {readonly garment: Garment; readonly problems?: undefined} | {readonly garment?: undefined; readonly problems: readonly Problem[]};

/**
 * Reads a rule book that stands in one file.
 * @param text  YAML or JSON, as text or as bytes in UTF-8
 * @param file  name for the heads of problems
 * @returns     the book with defaults filled in, and where its entries stand; or all problems and no book, never half
 */
export function validateBook(text: string | Uint8Array, file: string): CheckedBook {
  const shaped = readShape(bookSchema, text, file, printedInBook);
  if (shaped.problems) return {problems: shaped.problems};
  const problems = checkBook(shaped.fits, shaped.where);
  return problems.length > 0 ? {problems: firstProblems(problems, file)} : {book: shaped.fits, where: shaped.where};
}

/** Checks what a schema cannot tell: names that point at nothing, months and numbers that contradict each other. */
export function checkBook(book: Book, where: Where): Problem[] {
  return [...checkReferences(book, where), ...checkWindows(book, where), ...checkNumbers(book, where), ...checkSpans(book, where)];
}

/**
 * Reads a garment as its owner wrote it down. Whether the marks are known is up to the books it is examined with.
 * @param text  YAML or JSON, as text or as bytes in UTF-8
 */
export function validateGarment(text: string | Uint8Array, file: string): CheckedGarment {
  const {fits, problems} = readShape(garmentSchema, text, file, printedOnGarment);
  return fits ? {garment: fits} : {problems};
}

/** Numbers in a condition are codes, so they stay as printed: 021 is not 21. */
export const printedInBook = (path: Path) => path.includes("when");

// What was seen is text, however much it looks like a number; only weights are numbers.
const printedOnGarment = (path: Path) => path[0] === "garment" || (path[0] === "saw" && !path.includes("either"));

export type Shaped<T> = {readonly fits: T; readonly where: Where; readonly problems?: undefined} | {readonly fits?: undefined; readonly where?: undefined; readonly problems: Problem[]};

/** Text to a value that fits a schema, with the places of its entries; or all problems. */
export function readShape<T extends z.ZodType>(schema: T, text: string | Uint8Array, file: string, asPrinted: (path: Path) => boolean): Shaped<z.infer<T>> {
  const parsed = parseYaml(text, file, asPrinted);
  if (!parsed.where) return {problems: [...parsed.problems]};
  const shaped = checkShape(schema, parsed.value, parsed.where);
  const problems = [...parsed.problems, ...(shaped.problems ?? [])];
  if (shaped.problems || problems.length > 0) return {problems: firstProblems(problems, file)};
  return {fits: shaped.fits, where: parsed.where};
}

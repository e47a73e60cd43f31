// What all measurements work with: the books, an examiner and garments that were not warmed up with.
import {fileURLToPath} from "node:url";
import {makeExaminer, month, type Book, type Examiner, type Garment} from "../engine/index.ts";
import {shippedBooks} from "../rulebooks/load.ts";
import {drawGarments, thirdBook} from "./garments.ts";

export const today = month(2026, 6);

/** The command as its users run it. */
export const command = fileURLToPath(new URL("../bin/ticking.mjs", import.meta.url));

export interface BenchWorld {
  readonly books: readonly Book[];
  readonly examiner: Examiner;
  readonly garments: readonly Garment[];
  /** Others of the same kind, to warm up with. */
  readonly warming: readonly Garment[];
}

/** @param count  of garments to measure with */
export function benchWorld(count: number): BenchWorld {
  const {books: shipped} = shippedBooks();
  if (!shipped) throw new Error("the shipped books do not load");
  const books = [...shipped, thirdBook];
  const drawn = drawGarments(books, count + warmingCount, 1);
  return {books, examiner: makeExaminer(books, {today}), garments: drawn.slice(warmingCount), warming: drawn.slice(0, warmingCount)};
}

const warmingCount = 60;

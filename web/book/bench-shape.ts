// What the page and the worker behind the editor say to each other.
import type {Book} from "../../engine/rule/schema.ts";
import type {Garment} from "../../engine/rule/garment.ts";
import type {Problem} from "../../engine/problem.ts";

export interface BenchQuestion {
  /** Grows with each question; answers carry it back. */
  readonly turn: number;
  readonly yaml: string;
  /** The other books in use. */
  readonly others: readonly Book[];
  readonly example: Garment | null;
  /** The last month considered, like "2026-11". */
  readonly today: string;
}

/** What the example garment comes to. */
export interface BenchFinding {
  readonly words: string;
  readonly probability: number;
  readonly sentences: readonly string[];
}

export interface BenchAnswer {
  readonly turn: number;
  readonly problems: readonly Problem[];
  /** Null while the text has problems. */
  readonly book: Book | null;
  readonly finding: BenchFinding | null;
  /** Why the example cannot be examined with the book. */
  readonly slips: readonly Problem[];
}

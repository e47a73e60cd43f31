// What is wrong with an input, said so that the one who wrote it can mend it: the same object for files, terminal and network.

/** One thing that is wrong. Sentences carry no full stop; `printProblem` joins them. */
export interface Problem {
  /** Stable dotted name of the kind of problem: "window/reversed". */
  readonly code: string;
  /** File, line and path, or the name of the field. */
  readonly at: string;
  /** What was found. */
  readonly what: string;
  /** Why that cannot stand. */
  readonly why: string;
  /** How to mend it. */
  readonly fix: string;
  /** Where to read more. */
  readonly see?: string;
}

/**
 * Prints a problem on one line: "<at>: <what>; <why>. To fix: <fix>. More: <see>".
 * @example
 * printProblem({code: "window/reversed", at: "book.yaml:7", what: "ends before it begins", why: "it never holds", fix: "swap the months"})
 * // -> "book.yaml:7: ends before it begins; it never holds. To fix: swap the months."
 */
export function printProblem({at, what, why, fix, see}: Problem): string {
  return `${at}: ${what}; ${why}. To fix: ${fix}.${see === undefined ? "" : ` More: ${see}`}`;
}

// The wordings of what can be wrong with the input of a command, to be read in a row.
import type {Problem} from "../engine/index.ts";

const didYouMean = (near: string | null) => (near ? `did you mean ${near}? ` : "");
const some = (names: readonly string[], most = 12) => names.slice(0, most).join(", ") + (names.length > most ? ` and ${names.length - most} more` : "");

export const notPair = (at: string, text: string): Problem => ({
  code: "input/not-a-pair",
  at,
  what: `“${text}” does not say which mark was seen how`,
  why: "a mark and what was seen there belong together",
  fix: "write the mark, an equals sign and what was seen, like label=green-satin",
});

export const notMonth = (at: string, text: string): Problem => ({
  code: "input/not-a-month",
  at,
  what: `“${text}” is not a month`,
  why: "months are counted exactly",
  fix: "write the year with four figures, a dash and the month with two, like 1968-03",
});

export const monthsReversed = (at: string, since: string, today: string): Problem => ({
  code: "input/months-reversed",
  at,
  what: `the first month (${since}) comes after the last (${today})`,
  why: "no month is left in which the garment could have been made",
  fix: "give an earlier month",
});

export const unknownBook = (at: string, id: string, books: readonly string[], near: string | null): Problem => ({
  code: "input/unknown-book",
  at,
  what: `there is no rule book called ${id} at hand`,
  why: "nothing can be shown of it",
  fix: `${didYouMean(near)}Use one of: ${some(books)}, or give the path of a file or folder`,
});

export const unknownMark = (at: string, id: string, book: string, near: string | null): Problem => ({
  code: "input/unknown-mark",
  at,
  what: `the book ${book} has no mark called ${id}`,
  why: "nothing can be shown of it",
  fix: `${didYouMean(near)}List the marks with: ticking books show ${book}`,
});

export const badChart = (at: string, reason: string): Problem => ({
  code: "input/chart",
  at,
  what: reason,
  why: "the chart cannot be laid out",
  fix: "give months that run forwards, and a width from 480 to 6000",
});

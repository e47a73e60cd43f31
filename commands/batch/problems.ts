// The wordings of what can be wrong with a table or a list of garments, to be read in a row.
import type {Problem} from "../../engine/index.ts";

const quoted = (names: readonly string[]) => names.map((name) => `“${name}”`).join(", ");

export const empty = (at: string): Problem => ({
  code: "batch/empty", at, what: "nothing stands here", why: "there is no garment to date", fix: "give a table with a line of column names, or one garment as JSON on each line",
});

export const jsonList = (at: string): Problem => ({
  code: "batch/json-list", at, what: "the file is one JSON list", why: "a list must be held in memory as a whole before its first garment can be read", fix: "write each garment as JSON on a line of its own, without [ ] and without commas between lines",
});

export const notText = (at: string, what: string): Problem => ({
  code: "batch/not-text", at, what, why: "letters and figures would be read wrongly without a word", fix: "save the table again as CSV with the encoding UTF-8",
});

export const headerQuotes = (at: string): Problem => ({
  code: "batch/header-quotes", at, what: "a quote in the line of column names is not closed", why: "the columns cannot be told apart", fix: "close the quote, or take it out",
});

export const nameless = (at: string, column: number): Problem => ({
  code: "batch/column-without-name", at, what: `column ${column} has no name`, why: "it is not known what its cells say", fix: "give it the id of a mark, or take the column out",
});

export const twice = (at: string, names: readonly string[]): Problem => ({
  code: "batch/column-twice", at, what: `${quoted(names)} stands over more than one column`, why: "only one of them could count", fix: "take one out, or divide several values by | in one column",
});

export const unknownColumn = (at: string, name: string, near: string | null): Problem => ({
  code: "batch/unknown-column", at, what: `the column ${quoted([name])} is no mark of the rule books at hand`, why: "what was seen there would silently count for nothing",
  fix: `${near ? `did you mean ${near}? ` : ""}Use the id of a mark (ticking books show lists them), or carry the column along unread with --carry ${/^[\w-]+$/.test(name) ? name : `"${name}"`}`,
});

export const cellCount = (at: string, found: number, expected: number): Problem => ({
  code: "batch/cell-count", at, what: `${found} ${found === 1 ? "cell stands" : "cells stand"} here, the line of column names has ${expected}`, why: "it is not known which cell belongs to which column",
  fix: "put cells that hold the dividing sign in quotes, and leave missing cells empty",
});

export const openQuote = (at: string): Problem => ({
  code: "batch/open-quote", at, what: "a quoted cell is not closed, or goes on after its closing quote", why: "it is not known where the cell ends", fix: 'close the quote; write "" for a quote inside a quoted cell',
});

export const tooLong = (at: string, most: number): Problem => ({
  code: "batch/line-too-long", at, what: `the line is longer than ${most} bytes`, why: "no garment needs that, so it is a slip", fix: "look whether line breaks are missing",
});

export const notJson = (at: string, reason: string): Problem => ({
  code: "batch/not-json", at, what: `the line is not JSON (${reason})`, why: "the garment cannot be read", fix: "write one garment as JSON on each line",
});

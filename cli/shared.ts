// What all verbs share: the flags for books and months, and the world made from them.
import {readdirSync, statSync} from "node:fs";
import {join} from "node:path";
import {Command, Option} from "commander";
import type {z} from "zod";
import {defaultSince, parseMonth, printMonth, type Book, type MonthIndex} from "../engine/index.ts";
import {monthsReversed, notMonth} from "../commands/problems.ts";
import {makeWorld, type World} from "../commands/world.ts";
import {loadBook, shippedBooks} from "../rulebooks/load.ts";
import {twoBooks} from "../rulebooks/problems.ts";
import {NeedsMending} from "./ending.ts";
import {noBooksInFolder} from "./problems.ts";
import {thisMonth} from "./clock.ts";

export interface WorldFlags {
  readonly books?: readonly string[];
  /** False: without the books that come with the tool. */
  readonly shipped?: boolean;
  readonly today?: string;
  readonly since?: string;
}

/** A verb with its name and summary; errors of usage are thrown, not ended with. */
export function verb(name: string, summary: string): Command {
  return new Command(name).description(`${summary[0]!.toUpperCase()}${summary.slice(1)}.`).helpOption("-h, --help", "print this help").helpCommand(false).exitOverride().showSuggestionAfterError();
}

/** The help of a flag: the description of the input's field that it fills. */
export function helpOf(input: z.ZodObject, field: string): string {
  return input.shape[field]?.description ?? field;
}

/** Adds --books, --no-shipped, --today and --since. */
export function withWorld(command: Command): Command {
  return command
    .addOption(new Option("--books <file-or-folder>", "add a rule book of your own, or a folder of them (repeatable)").argParser(collected))
    .option("--no-shipped", "leave out the rule books that come with the tool")
    .option("--today <month>", "the last month considered, like 2026-11; this month when left out")
    .option("--since <month>", "the first month considered; 1900-01 when left out");
}

/** Gathers the values of a flag that can be given several times. */
export const collected = (value: string, before: readonly string[] | undefined) => [...(before ?? []), value];

/** Loads the books, looks at the clock. */
export function openWorld(flags: WorldFlags): World {
  const today = flags.today === undefined ? thisMonth() : monthOf("--today", flags.today);
  const since = flags.since === undefined ? defaultSince : monthOf("--since", flags.since);
  if (since > today) throw new NeedsMending([monthsReversed("--since", printMonth(since), printMonth(today))]);
  return makeWorld(openBooks(flags), today, since);
}

/** The books that come with the tool, and the owner's own. */
function openBooks({books: own, shipped}: WorldFlags): Book[] {
  const loaded = shipped === false ? {books: []} : shippedBooks();
  if (loaded.problems) throw new NeedsMending(loaded.problems);
  const books = [...loaded.books];
  for (const path of (own ?? []).flatMap(bookPaths)) {
    const {book, problems} = loadBook(path);
    if (problems) throw new NeedsMending(problems);
    if (books.some((other) => other.book === book.book)) throw new NeedsMending([twoBooks(path, book.book, "the books that are loaded already")]);
    books.push(book);
  }
  return books;
}

/** A folder without a book.yaml stands for all book files and book folders in it. */
export function bookPaths(path: string): string[] {
  if (!isFolder(path) || isBookFolder(path)) return [path];
  const inside = readdirSync(path).sort().map((name) => join(path, name));
  const books = inside.filter((one) => (isFolder(one) ? isBookFolder(one) : /\.ya?ml$/i.test(one)));
  if (books.length === 0) throw new NeedsMending([noBooksInFolder(path)]);
  return books;
}

const isFolder = (path: string) => statSync(path, {throwIfNoEntry: false})?.isDirectory() ?? false;
const isBookFolder = (path: string) => statSync(join(path, "book.yaml"), {throwIfNoEntry: false})?.isFile() ?? false;

function monthOf(flag: string, text: string): MonthIndex {
  const month = parseMonth(text);
  if (month === null) throw new NeedsMending([notMonth(flag, text)]);
  return month;
}

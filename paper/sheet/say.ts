// Small wordings that papers share: days, months, windows, makers.
import {parseMonth, sayMonth, type Book} from "../../engine/index.ts";
import {monthNames} from "../../engine/month/month.ts";

/** @example sayDay("2026-11-25") // -> "25 November 2026" */
export function sayDay(day: string): string {
  const [year, month, date] = day.split("-").map(Number) as [number, number, number];
  return `${date} ${monthNames[month - 1]} ${year}`;
}

/** @example shortMonth("1968-03") // -> "Mar 1968" */
export const shortMonth = (month: string): string => sayMonth(parseMonth(month)!).replace(/^(\w{3})\w*/, "$1");

/** @example sayUse("from 1968-03…1968-09 to 1977-01") // -> "In use from Mar 1968…Sep 1968 to Jan 1977." */
export const sayUse = (window: string | null): string => (window === null ? "" : `In use ${window.replace(", still in use", " on").replace(/\d{4}-\d{2}/g, shortMonth)}.`);

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** A sentence with its full stop. */
export const sentence = (words: string): string => (words === "" ? "" : `${capital(words)}${/[.!?…]$/.test(words) ? "" : "."}`);

/** A maker as a buyer would be told: the book's title up to its first comma, or what the owner wrote. */
export const makerName = (books: readonly Book[], id: string): string => books.find(({book}) => book === id)?.title.split(",")[0] ?? id;

/** @example listed(["a", "b", "c"]) // -> "a, b and c" */
export const listed = (names: readonly string[], last = "and"): string => (names.length < 2 ? (names[0] ?? "") : `${names.slice(0, -1).join(", ")} ${last} ${names.at(-1)}`);

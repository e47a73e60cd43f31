// Prints a day by a code scheme, section 3 of docs/model.md, with a calendar of its own.
import type {Part, Scheme} from "../../engine/rule/schema.ts";
import type {Stated} from "../../engine/scheme/stated.ts";
import {fits, heightAt, figures, refuse, type World} from "./world.ts";
import type {Random} from "./random.ts";

/** A date as printed: its text with separators, and what it states. Scheme null is a date written in an unknown way. */
export interface PrintedDate {
  readonly scheme: string | null;
  readonly text: string;
  readonly stated: Stated;
}

const dayLength = 86_400_000;

/** Weights of schemes in a month; those that the garment leaves out have none. */
export function schemeWeights(ids: readonly string[], t: number, world: World, label?: string): number[] {
  return ids.map((id) => {
    const {when, weight, window} = world.book.schemes[id]!;
    return fits(when, world, label) ? weight * heightAt(window, t) : 0;
  });
}

/** Draws the scheme of a row's date by the schemes' shares in a month, or null for an unknown way. */
export function drawScheme(ids: readonly string[], t: number, world: World, label: string): string | null {
  return ids[world.random.place([...schemeWeights(ids, t, world, label), unknownDates])!] ?? null;
}

/** Weight of dates written in an unknown way, section 3 of docs/model.md. */
const unknownDates = 0.1;

/** Prints the date of a garment of month t by a scheme: an even day of the month of the code, which lies a lag before. */
export function printDate(id: string, t: number, {book, random}: World): PrintedDate {
  const scheme = book.schemes[id]!;
  const month = t - drawLag(scheme, random);
  const year = 1900 + Math.floor(month / 12);
  const inYear = month - (year - 1900) * 12;
  const days = (Date.UTC(year, inYear + 1, 1) - Date.UTC(year, inYear, 1)) / dayLength;
  const day = new Date(Date.UTC(year, inYear, random.whole(1, days)));
  const printed = scheme.parts.map((part) => printPart(part, day, scheme, random));
  return {
    scheme: id,
    text: printed.map(({text}) => text).join(""),
    stated: Object.assign({}, ...printed.map(({stated}) => stated)) as Stated,
  };
}

function drawLag({lag}: Scheme, random: Random): number {
  if (!lag) return 0;
  const {usual, longest} = lag;
  return random.place(Array.from({length: longest + 1}, (_, d) => (d <= usual ? 1 : (longest + 1 - d) / (longest + 1 - usual))))!;
}

function printPart(part: Part, day: Date, {parts}: Scheme, random: Random): {text: string; stated: Stated} {
  const month = day.getUTCMonth() + 1;
  const padded = (n: number, how: string, width: number) => (how === "padded" ? String(n).padStart(width, "0") : String(n));
  if ("text" in part) return {text: part.text.toUpperCase(), stated: {}};
  if ("digits" in part) return {text: figures(drawFree(part.digits, random), random), stated: {}};
  if ("letters" in part) return {text: Array.from({length: drawFree(part.letters, random)}, () => "ABCDEFGHIJKLMNOPQRSTUVWXYZ"[random.whole(0, 25)]).join(""), stated: {}};
  if ("month" in part) return {text: typeof part.month === "string" ? padded(month, part.month, 2) : fromTable(part.month, month), stated: {month}};
  if ("quarter" in part) {
    const quarter = Math.ceil(month / 3);
    return {text: part.quarter === "plain" ? String(quarter) : "ABCD"[quarter - 1]!, stated: {quarter}};
  }
  if ("week" in part) return {text: padded(isoWeek(day).week, part.week, 2), stated: {week: isoWeek(day).week}};
  if ("day" in part) return {text: padded(day.getUTCDate(), part.day, 2), stated: {day: day.getUTCDate()}};
  if ("day of year" in part) {
    const dayOfYear = (day.getTime() - Date.UTC(day.getUTCFullYear(), 0, 1)) / dayLength + 1;
    return {text: padded(dayOfYear, part["day of year"], 3), stated: {dayOfYear}};
  }
  if ("fiscal year" in part) return printYear(part["fiscal year"], fiscalYear(day), true);
  const year = parts.some((other) => "week" in other) ? isoWeek(day).year : day.getUTCFullYear();
  if (typeof part.year === "string") return printYear(part.year, year, false);
  return printTableYear(part.year, year);
}

function printYear(how: "last figure" | "two figures" | "four figures", year: number, fiscal: boolean): {text: string; stated: Stated} {
  const width = how === "last figure" ? 1 : how === "two figures" ? 2 : 4;
  const modulus = width === 1 ? 10 : width === 2 ? 100 : 0;
  return {text: String(year).slice(-width), stated: {year: {value: modulus ? year % modulus : year, modulus, fiscal}}};
}

function printTableYear(table: Readonly<Record<string, number>>, year: number): {text: string; stated: Stated} {
  const known = new Set(Object.values(table));
  if (known.has(year)) return {text: fromTable(table, year), stated: {year: {value: year, modulus: 0, fiscal: false}}};
  const modulus = known.has(year % 100) && year % 100 >= 10 ? 100 : 10;
  return {text: fromTable(table, year % modulus), stated: {year: {value: year % modulus, modulus, fiscal: false}}};
}

function fromTable(table: Readonly<Record<string, number>>, value: number): string {
  return (Object.entries(table).find(([, meaning]) => meaning === value)?.[0] ?? refuse("no letter for this day")).toUpperCase();
}

const drawFree = (width: number | readonly [number, number], random: Random) => (typeof width === "number" ? width : random.whole(width[0], width[1]));

function fiscalYear(day: Date): number {
  const months = (day.getUTCFullYear() - 1900) * 12 + day.getUTCMonth();
  if (months >= 76 * 12 + 6 && months < 76 * 12 + 9) return 1976;
  return day.getUTCFullYear() + Number(day.getUTCMonth() >= (months < 76 * 12 + 6 ? 6 : 9));
}

/** ISO 8601: the week belongs to the year of its Thursday. */
function isoWeek(day: Date): {year: number; week: number} {
  const thursday = new Date(day.getTime() + (4 - (day.getUTCDay() || 7)) * dayLength);
  const year = thursday.getUTCFullYear();
  return {year, week: Math.floor((thursday.getTime() - Date.UTC(year, 0, 1)) / dayLength / 7) + 1};
}

// What the QR code of a sheet holds: which garment, the terms of the sheet, and its fingerprint.
import {shortLetters} from "./fingerprint.ts";
import type {SheetTerms} from "./facts.ts";

export interface SheetCode {
  /** Of the garment on the rack that made the sheet. */
  readonly id: string;
  readonly number: string;
  readonly terms: SheetTerms;
  readonly fingerprint: string;
}

/** What was read: a whole code, or the short fingerprint that stands on the sheet in letters. */
export type ReadCode = {readonly code: SheetCode; readonly short?: undefined} | {readonly code?: undefined; readonly short: string};

const start = "ticking:sheet/1?";

/**
 * A code as text.
 * @example
 * printCode({id: "k3…", number: "0147", terms: {on: "2026-11-25", photos: 2, grade: "good", worth: null}, fingerprint: "MZXW…"})
 * // -> "ticking:sheet/1?i=k3…&n=0147&d=2026-11-25&p=2&g=good&f=MZXW…"
 */
export function printCode({id, number, terms: {on, photos, grade, worth}, fingerprint}: SheetCode): string {
  const entries = {i: id, n: number, d: on, p: String(photos), ...(grade === null ? {} : {g: grade}), ...(worth === null ? {} : {w: worth}), f: fingerprint};
  return start + new URLSearchParams(entries).toString();
}

/** Reads a code or a short fingerprint, with blanks and dashes wherever somebody put them; null for anything else. */
export function readCode(text: string): ReadCode | null {
  const given = text.trim();
  if (!given.startsWith(start)) {
    const short = given.toUpperCase().replace(/[\s-]/g, "");
    return new RegExp(`^[A-Z2-7]{${shortLetters},52}$`).test(short) ? {short} : null;
  }
  const entries = new URLSearchParams(given.slice(start.length));
  const [id, number, on, photos, fingerprint] = ["i", "n", "d", "p", "f"].map((name) => entries.get(name) ?? "") as [string, string, string, string, string];
  const fits = number !== "" && /^\d{4}-\d{2}-\d{2}$/.test(on) && /^\d{1,2}$/.test(photos) && /^[A-Z2-7]{52}$/.test(fingerprint);
  return fits ? {code: {id, number, terms: {on, photos: Number(photos), grade: entries.get("g"), worth: entries.get("w")}, fingerprint}} : null;
}

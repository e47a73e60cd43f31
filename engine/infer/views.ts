// The possible makers of a garment, and the time axis that its marks ask for.
import {parseMonth} from "../month/month.ts";
import {nearest} from "../nearest.ts";
import {normalized} from "../num/vector.ts";
import type {Problem} from "../problem.ts";
import type {Garment} from "../rule/garment.ts";
import type {Book} from "../rule/schema.ts";
import {monthIndex, type MonthIndex} from "../units.ts";
import type {Span} from "../window/window.ts";
import type {MakerView, Seen} from "./evidence.ts";
import type {ReadyBook} from "./ready-book.ts";
import * as say from "./problems.ts";

/** A maker whose book is not at hand. */
export const unlisted = "unlisted";

/** The books that hold for each maker the owner thinks possible; null is a maker without a book. */
export function possibleMakers(garment: Garment, books: readonly Book[]): {makers: (string | null)[]; problems: Problem[]} {
  const known = books.filter(({kind}) => kind === "maker").map(({book}) => book);
  const problems: Problem[] = [];
  const named = garment.maker === undefined ? [unlisted] : typeof garment.maker === "string" ? [garment.maker] : garment.maker;
  const makers = [...new Set(named)].map((name) => {
    if (name === unlisted || name === "unknown") return null;
    if (!known.includes(name)) problems.push(say.unknownMaker("maker", name, known, nearest(name, known)));
    return name;
  });
  return {makers, problems};
}

/**
 * The first month to consider: `since`, or earlier when a mark that was seen had died out before.
 * A diamond mark of 1860 must be able to say 1860.
 */
export function firstMonth(seen: Seen, books: readonly Book[], since: MonthIndex): MonthIndex {
  let first: number = since;
  const consider = (begins: readonly [string, string] | null | undefined, ends: readonly [string, string] | null | undefined, covers: string) => {
    if (ends && parseMonth(ends[1])! < since) first = Math.min(first, parseMonth(begins?.[0] ?? covers)!);
  };
  for (const book of books) {
    for (const [id, observation] of seen.marks) {
      const mark = book.marks[id];
      if (mark?.kind === "choice" && observation.kind === "choice") {
        for (const [value] of observation.values) {
          const window = mark.values[value]?.window;
          if (window) consider(window.begins, window.ends, book.covers.from);
        }
      } else if (mark?.kind === "presence" && observation.kind === "presence" && observation.present) {
        consider(mark.window.begins, mark.window.ends, book.covers.from);
      } else if (mark?.kind === "coded" && observation.kind === "coded") {
        for (const scheme of mark.schemes) consider(book.schemes[scheme]!.window.begins, book.schemes[scheme]!.window.ends, book.covers.from);
      }
    }
  }
  return monthIndex(first);
}

/**
 * One view for each possible maker, all equally likely beforehand; null when a maker can have made it in no month.
 * @param prior  weight by month of the axis
 */
export function viewsOf(makers: readonly (string | null)[], open: readonly ReadyBook[], ownBook: (maker: string) => ReadyBook | null, axis: Span, prior: Float64Array): MakerView[] | null {
  const views: MakerView[] = [];
  for (const maker of makers) {
    const own = maker === null ? null : ownBook(maker);
    if (maker !== null && !own) return null;
    const span = own?.axis ?? axis;
    const months = prior.slice(span.from - axis.from, span.until - axis.from + 1);
    if (!months.some((p) => p > 0)) return null;
    views.push({maker, own, axis: span, books: own ? [own, ...open] : open, prior: normalized(months).map((p) => p / makers.length)});
  }
  return views;
}

/** Adds a vector of a view to one of the whole axis. */
export function addView(into: Float64Array, first: MonthIndex, view: MakerView, vector: Float64Array): void {
  const offset = view.axis.from - first;
  for (let t = 0; t < vector.length; t++) into[offset + t]! += vector[t]!;
}

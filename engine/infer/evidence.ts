// What was seen, sorted for one possible maker: ordinary marks, the label with its rows, and repeats of hidden codes.
import {versionsOf, type PrintedRow} from "../cell/printed-row.ts";
import type {Observation, SeenText} from "../mark/observation.ts";
import type {ReadyMark} from "../mark/ready-mark.ts";
import {chanceUnread} from "../row/free.ts";
import type {RepeatMark} from "../rule/schema.ts";
import type {MonthIndex} from "../units.ts";
import type {Span} from "../window/window.ts";
import {labelId, type ReadyBook} from "./ready-book.ts";

/** A garment in the engine's terms: observations by mark id, rows of the label, circumstances as far as known. */
export interface Seen {
  readonly marks: ReadonlyMap<string, Observation>;
  readonly rows: readonly PrintedRow[];
  readonly market: string | null;
  readonly type: string | null;
}

/** One possible maker: the books that then hold (the public ones and the maker's own) and how likely the maker is beforehand. */
export interface MakerView {
  /** Id of the maker's book; null is a maker whose book is not at hand. */
  readonly maker: string | null;
  readonly books: readonly ReadyBook[];
  readonly own: ReadyBook | null;
  /** The months in which this maker can have made it; all vectors of the view run over them. */
  readonly axis: Span;
  /** Prior over maker and months; all views together sum to 1. */
  readonly prior: Float64Array;
}

/** A vector of a book's axis cut to the months of a view. */
export function cutTo(view: MakerView, vector: Float64Array, from: MonthIndex): Float64Array {
  const n = view.prior.length;
  return vector.length === n ? vector : vector.subarray(view.axis.from - from, view.axis.from - from + n);
}

export interface SeenMark {
  readonly mark: ReadyMark;
  readonly seen: Observation;
}

export interface SeenRepeat {
  readonly mark: ReadyMark & {readonly mark: RepeatMark};
  readonly texts: readonly SeenText[];
}

export interface Evidence {
  readonly view: MakerView;
  readonly marks: readonly SeenMark[];
  readonly repeats: readonly SeenRepeat[];
  /** What was seen of the label kind; null when it was not looked at. */
  readonly label: Observation | null;
  readonly rows: readonly PrintedRow[];
  /** Ways to arrange the rows that hold less than this part of the best one are left out. */
  readonly trifle: number;
  /** Marks that only another maker's book knows: each had to come from elsewhere. */
  readonly foreign: readonly {readonly id: string; readonly chance: number}[];
}

/** The id under which the printed rows stand in ledgers. */
export const rowsId = "rows";

/** Finds a mark in the books of a view; the maker's own book speaks first. */
export function findMark(view: MakerView, id: string): ReadyMark | null {
  for (const book of view.own ? [view.own, ...view.books.filter((b) => b !== view.own)] : view.books) {
    const found = id === labelId ? book.label?.mark : book.marks.get(id);
    if (found) return found;
  }
  return null;
}

const knows = (mark: ReadyMark, seen: Observation): boolean => {
  if (seen.kind !== "choice") return true;
  const values = (mark.mark.kind === "choice" && mark.mark.values) || {};
  return seen.values.some(([id]) => id === "other" || id === "none" || id in values);
};

/** Nothing where only another maker puts a mark is what any other maker's garment shows. */
function isNothing(seen: Observation): boolean {
  if (seen.kind === "presence") return !seen.present;
  return seen.kind === "missing" || (seen.kind === "choice" && seen.values.some(([id]) => id === "none"));
}

/** Chance of rows on the label of a maker without a book: extra rows of unknown layout, the same in every month. */
function unlistedRows(rows: readonly PrintedRow[]): number {
  return rows.reduce((product, row) => product * usualExtra * versionsOf(row).reduce((sum, one) => sum + one.weight * chanceUnread(one.row), 0), 1 - usualExtra);
}

const usualExtra = 0.05;

/**
 * Sorts what was seen for one maker.
 * @param all     every view, so that a mark known only to another maker is weighed as that maker's, gone astray
 * @param trifle  see `Evidence`; the default keeps every month right to nine places
 */
export function evidenceFor(view: MakerView, seen: Seen, all: readonly MakerView[], trifle = 1e-12): Evidence {
  const marks: SeenMark[] = [];
  const repeats: SeenRepeat[] = [];
  const foreign: {id: string; chance: number}[] = [];
  let label: Observation | null = null;
  for (const [id, observation] of seen.marks) {
    const mark = findMark(view, id);
    if (!mark || !knows(mark, observation)) {
      const owner = all.map((other) => findMark(other, id)).find((other) => other && knows(other, observation));
      if (owner && !isNothing(observation)) foreign.push({id, chance: Math.max(owner.strayChance(observation, {}), 1e-12)});
    } else if (id === labelId) label = observation;
    else if (mark.mark.kind === "repeat" && observation.kind === "repeat") {
      repeats.push({mark: mark as SeenRepeat["mark"], texts: observation.texts});
    } else marks.push({mark, seen: observation});
  }
  const readable = seen.rows.filter((row) => row.cells.length > 0);
  if (!view.own && readable.length > 0) foreign.push({id: rowsId, chance: unlistedRows(readable)});
  return {view, marks, repeats, label, rows: view.own ? readable : [], trifle, foreign};
}

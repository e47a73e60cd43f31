// The dates that a stretch of cells can show: read once for a row, whatever line of a layout asks.
import {matchScheme} from "../scheme/match.ts";
import type {ReadyScheme} from "../scheme/scheme.ts";
import type {SparseMonths, Stated} from "../scheme/stated.ts";
import {unreadableCell} from "../cell/look-alike.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import {figureFits} from "./figures.ts";

/** One date that a scheme reads from the cells. */
export interface DateFit {
  /** Chance of the cells given the date. */
  readonly chance: number;
  readonly scheme: ReadyScheme;
  readonly stated: Stated;
  readonly months: SparseMonths;
}

/** Cells that can be a date, with every date that they can be. */
export interface DateSpan {
  readonly from: number;
  readonly until: number;
  readonly fits: readonly DateFit[];
  /** Chance of the cells as a date that no scheme explains. */
  readonly unknown: number;
  /** At least as much as the span comes to in any month. */
  readonly most: number;
}

/** Which schemes may date a label, with shares by month, and the share of dates written in an unknown way. */
export interface DateShares {
  readonly schemes: ReadonlyMap<ReadyScheme, Float64Array>;
  readonly unknown: Float64Array;
}

const unknownFigures = [2, 4] as const;

const known = new WeakMap<PrintedRow, Map<readonly ReadyScheme[], (readonly DateSpan[])[]>>();

/** Every stretch from a cell on that can be a date. */
export function dateSpans(row: PrintedRow, from: number, schemes: readonly ReadyScheme[]): readonly DateSpan[] {
  let bySchemes = known.get(row);
  if (!bySchemes) known.set(row, (bySchemes = new Map()));
  let byCell = bySchemes.get(schemes);
  if (!byCell) bySchemes.set(schemes, (byCell = []));
  return (byCell[from] ??= makeSpans(row, from, schemes));
}

function makeSpans(row: PrintedRow, from: number, schemes: readonly ReadyScheme[]): DateSpan[] {
  const fits = new Map<number, DateFit[]>();
  for (const scheme of schemes) {
    if (blank(row, from, from + scheme.widest)) continue;
    matchScheme(scheme, row, from, (until, chance, stated) => {
      if (blank(row, from, until)) return;
      const months = scheme.months(stated);
      if (months.at.length === 0) return;
      const list = fits.get(until);
      if (list) list.push({chance, scheme, stated, months});
      else fits.set(until, [{chance, scheme, stated, months}]);
    });
  }
  const unknown = new Map(figureFits(row, from, unknownFigures).map(({until, chance}) => [until, chance]));
  return [...new Set([...fits.keys(), ...unknown.keys()])]
    .sort((a, b) => a - b)
    .map((until) => {
      const list = fits.get(until) ?? [];
      const other = unknown.get(until) ?? 0;
      return {from, until, fits: list, unknown: other, most: list.reduce((sum, {chance}) => sum + chance, other)};
    });
}

/** Whether no cell of a stretch can be read at all: as a date it would say nothing, in very many ways. */
function blank(row: PrintedRow, from: number, until: number): boolean {
  for (let i = from; i < until && i < row.cells.length; i++) if (row.cells[i]!.weights !== unreadableCell) return false;
  return true;
}

const byMonth = new WeakMap<DateSpan, Map<DateShares, Float64Array>>();

/** Chance by month of the cells as a date. Remembered as long as the span. */
export function dateChance(span: DateSpan, shares: DateShares): Float64Array {
  let byShares = byMonth.get(span);
  if (!byShares) byMonth.set(span, (byShares = new Map()));
  let found = byShares.get(shares);
  if (!found) byShares.set(shares, (found = makeChance(span, shares)));
  return found;
}

function makeChance({fits, unknown}: DateSpan, shares: DateShares): Float64Array {
  const result = new Float64Array(shares.unknown.length);
  if (unknown > 0) for (let t = 0; t < result.length; t++) result[t] = unknown * shares.unknown[t]!;
  for (const {chance, scheme, months} of fits) {
    const share = shares.schemes.get(scheme);
    if (!share) continue;
    const {at, weight} = months;
    for (let i = 0; i < at.length; i++) result[at[i]!]! += chance * weight[i]! * share[at[i]!]!;
  }
  return result;
}

// What each field of a row can be: the ways it fits from a cell on, with chance and meaning.
import type {ReadyScheme} from "../scheme/scheme.ts";
import {boundaryChance, insideField, listedSeparator} from "../cell/boundary.ts";
import {noiseOf} from "../cell/noise.ts";
import {dateSpans, type DateSpan} from "./date-span.ts";
import {innerBoundaries} from "./figures.ts";
import type {CellSpan} from "./parse.ts";
import {isSeparator, type PrintedRow, type Separator} from "../cell/printed-row.ts";

export interface FieldFit {
  readonly until: number;
  /** Without what the cells of a date or a code themselves weigh. */
  readonly chance: number;
  readonly date?: DateSpan;
  readonly code?: CellSpan;
}

/** A code of the maker: its cells are weighed later, against the list; here only its boundaries and a prefix. */
export function codeFits(row: PrintedRow, from: number, widest: number, prefix: {share: number; figures: number} | undefined): FieldFit[] {
  const fits: FieldFit[] = [];
  const add = (start: number, base: number) => {
    for (let width = 1; width <= widest && start + width <= row.cells.length; width++) {
      const until = start + width;
      const chance = base * innerBoundaries(row, from, until);
      if (chance > 0) fits.push({until, chance, code: {from: start, until}});
    }
  };
  add(from, prefix ? 1 - prefix.share : 1);
  if (prefix && from + prefix.figures < row.cells.length) {
    let base = prefix.share;
    for (let i = 0; i < prefix.figures; i++) base *= noiseOf(row.cells[from + i]!.weights).digit;
    if (base > 0) add(from + prefix.figures, base);
  }
  return fits;
}

/** A date: every stretch that can be one; what it weighs is worked out later, by month. */
export function dateFits(row: PrintedRow, from: number, schemes: readonly ReadyScheme[]): FieldFit[] {
  return dateSpans(row, from, schemes).map((date) => ({until: date.until, chance: 1, date}));
}

/** Fixed characters; a separator among them is one that the layout lists. */
export function textFits(row: PrintedRow, from: number, text: string): FieldFit[] {
  let chance = 1;
  let at = from;
  let gap: Separator = "";
  for (const sign of text.toUpperCase()) {
    if (isSeparator(sign)) {
      gap = sign;
      continue;
    }
    if (!/[0-9A-Z]/.test(sign)) continue;
    const weight = row.cells[at]?.weights.get(sign);
    if (!weight) return [];
    chance *= weight;
    if (at > from) chance *= boundaryChance(row.boundaries[at - 1]!, gap === "" ? insideField : listedSeparator(gap));
    gap = "";
    at++;
  }
  return at > from ? [{until: at, chance}] : [];
}

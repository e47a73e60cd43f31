// What each field of a row can be: the ways it fits from a cell on, with chance and meaning.
import {matchScheme} from "../scheme/match.ts";
import type {ReadyScheme} from "../scheme/scheme.ts";
import {unreadableCell} from "../cell/look-alike.ts";
import {boundaryChance, insideField, listedSeparator} from "../cell/boundary.ts";
import {noiseOf} from "../cell/noise.ts";
import type {CellSpan, DateField} from "./parse.ts";
import {isSeparator, type PrintedRow, type Separator} from "../cell/printed-row.ts";

export interface FieldFit {
  readonly until: number;
  readonly chance: number;
  readonly date?: DateField;
  readonly code?: CellSpan;
}

/** Chance of the boundaries inside a field of the cells from..until. */
export function innerBoundaries(row: PrintedRow, from: number, until: number): number {
  let chance = 1;
  for (let i = from; i < until - 1; i++) chance *= boundaryChance(row.boundaries[i]!, insideField);
  return chance;
}

/** Random figures, a width evenly likely from least to most. */
export function figureFits(row: PrintedRow, from: number, [least, most]: readonly [number, number]): FieldFit[] {
  const fits: FieldFit[] = [];
  let chance = 1 / (most - least + 1);
  for (let width = 1; width <= most; width++) {
    const cell = row.cells[from + width - 1];
    if (!cell) break;
    chance *= noiseOf(cell.weights).digit;
    if (width > 1) chance *= boundaryChance(row.boundaries[from + width - 2]!, insideField);
    if (chance === 0) break;
    if (width >= least) fits.push({until: from + width, chance});
  }
  return fits;
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

/** Whether no cell of a stretch can be read at all: as a date it would say nothing, in very many ways. */
function blank(row: PrintedRow, from: number, until: number): boolean {
  for (let i = from; i < until && i < row.cells.length; i++) if (row.cells[i]!.weights !== unreadableCell) return false;
  return true;
}

/** A date: by every scheme, and as two to four figures in a way that no scheme explains. */
export function dateFits(row: PrintedRow, from: number, schemes: readonly ReadyScheme[]): FieldFit[] {
  const fits: FieldFit[] = [];
  for (const scheme of schemes) {
    if (blank(row, from, from + scheme.widest)) continue;
    matchScheme(scheme, row, from, (until, chance, stated) => {
      if (blank(row, from, until)) return;
      const months = scheme.months(stated);
      if (months.at.length > 0) fits.push({until, chance, date: {scheme, stated, months, span: {from, until}}});
    });
  }
  for (const fit of figureFits(row, from, [2, 4])) {
    fits.push({...fit, date: {scheme: null, stated: {}, months: null, span: {from, until: fit.until}}});
  }
  return fits;
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

// Cells held against a code list: which listed codes they can be, and what they weigh as an unlisted one.
import {addInto} from "../num/vector.ts";
import {noiseOf} from "../cell/noise.ts";
import {digits, type CellWeights} from "../cell/look-alike.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import type {CellSpan} from "./parse.ts";
import type {ReadyCodes} from "./code-list.ts";

/** Cells that show a code, with what a code would have to be to look like this. */
export interface CodeSight {
  readonly cells: readonly CellWeights[];
  /** Listed codes with a chance above 0: index into `codes`, chance of the cells. */
  readonly listed: readonly (readonly [number, number])[];
  /** Chance of the cells as random figures. */
  readonly unlisted: number;
  readonly shown: string;
}

/** Chance of the cells when the true code is `code`; 0 when the lengths differ. */
export function seenAs(cells: readonly CellWeights[], code: string): number {
  if (code.length !== cells.length) return 0;
  let chance = 1;
  for (let i = 0; i < cells.length && chance > 0; i++) chance *= cells[i]!.get(code[i]!) ?? 0;
  return chance;
}

const known = new WeakMap<PrintedRow, Map<ReadyCodes, CodeSight[]>>();

/** The cells of a span held against a list; remembered as long as the row. */
export function sightOf(row: PrintedRow, span: CellSpan, codes: ReadyCodes): CodeSight {
  let byList = known.get(row);
  if (!byList) known.set(row, (byList = new Map()));
  let bySpan = byList.get(codes);
  if (!bySpan) byList.set(codes, (bySpan = []));
  return (bySpan[span.from * (row.cells.length + 1) + span.until] ??= makeSight(row, span, codes));
}

function makeSight(row: PrintedRow, span: CellSpan, codes: ReadyCodes): CodeSight {
  const cells = row.cells.slice(span.from, span.until).map((cell) => cell.weights);
  const listed: [number, number][] = [];
  for (const [j, code] of codes.codes.entries()) {
    const chance = seenAs(cells, code);
    if (chance > 0) listed.push([j, chance]);
  }
  return {
    cells,
    listed,
    unlisted: cells.reduce((chance, cell) => chance * noiseOf(cell).digit, 1),
    shown: row.cells.slice(span.from, span.until).map((cell) => cell.shown).join(""),
  };
}

/** A vector over months with a factor: the chance of a code is a sum of a few such terms. */
export interface Term {
  readonly vector: Float64Array;
  readonly factor: number;
}

/** The chance by month that a garment's code, drawn like any other, looks like these cells: as terms. */
function codeTerms(sight: CodeSight, codes: ReadyCodes): Term[] {
  const terms = sight.listed.map(([j, chance]) => ({vector: codes.listed[j]!, factor: chance}));
  const width = codes.widths[sight.cells.length - 1];
  if (width && sight.unlisted > 0) terms.push({vector: width, factor: sight.unlisted});
  return terms;
}

const drawn = new WeakMap<CodeSight, Float64Array | null>();

/** `codeTerms` summed up; null when no code looks like this. Remembered as long as the sight. */
export function codeChance(sight: CodeSight, codes: ReadyCodes): Float64Array | null {
  let found = drawn.get(sight);
  if (found === undefined) drawn.set(sight, (found = sumTerms(codeTerms(sight, codes))));
  return found;
}

/** Terms summed up; null when there are none. */
export function sumTerms(terms: readonly Term[]): Float64Array | null {
  if (terms.length === 0) return null;
  const result = new Float64Array(terms[0]!.vector.length);
  for (const {vector, factor} of terms) addInto(result, vector, factor);
  return result;
}

/** Chance that two or more sights show one and the same random code. */
export function sameUnlisted(sights: readonly (readonly CellWeights[])[]): number {
  const length = sights[0]!.length;
  if (sights.some((cells) => cells.length !== length)) return 0;
  let chance = 1;
  for (let i = 0; i < length; i++) {
    let same = 0;
    for (const digit of digits) same += sights.reduce((product, cells) => product * (cells[i]!.get(digit) ?? 0), 0.1);
    chance *= same;
  }
  return chance;
}

// Plain figures in a row, and the boundaries inside a field.
import {boundaryChance, insideField} from "../cell/boundary.ts";
import {noiseOf} from "../cell/noise.ts";
import type {PrintedRow} from "../cell/printed-row.ts";

/** A stretch from some cell on, with the chance of its cells and inner boundaries. */
export interface FigureFit {
  readonly until: number;
  readonly chance: number;
}

/** Random figures, a width evenly likely from least to most. */
export function figureFits(row: PrintedRow, from: number, [least, most]: readonly [number, number]): FigureFit[] {
  const fits: FigureFit[] = [];
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

/** Chance of the boundaries inside a field of the cells from..until. */
export function innerBoundaries(row: PrintedRow, from: number, until: number): number {
  let chance = 1;
  for (let i = from; i < until - 1; i++) chance *= boundaryChance(row.boundaries[i]!, insideField);
  return chance;
}

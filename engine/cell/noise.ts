// Chance of cells that carry nothing of interest: figures 1/10 each, letters 1/26 each.
import {digits, letters, type CellWeights} from "./look-alike.ts";

interface CellNoise {
  readonly digit: number;
  readonly letter: number;
}

const known = new WeakMap<CellWeights, CellNoise>();

/** Chance of seeing the cell when the true character is a random figure, and when it is a random letter. */
export function noiseOf(cell: CellWeights): CellNoise {
  let noise = known.get(cell);
  if (!noise) {
    let digit = 0;
    let letter = 0;
    for (const [character, weight] of cell) {
      if (digits.includes(character)) digit += weight / 10;
      else if (letters.includes(character)) letter += weight / 26;
    }
    noise = {digit, letter};
    known.set(cell, noise);
  }
  return noise;
}

/** Chance of a cell in a run of noise: a figure four times in five. */
export function runNoise(cell: CellWeights): number {
  const {digit, letter} = noiseOf(cell);
  return 0.8 * digit + 0.2 * letter;
}

// What a recogniser says of every step along a line, cut down to the characters that labels carry; blanks are kept apart.

/** Chances step by step: `steps` rows of one number a class, class 0 being "nothing new here"; each row sums to 1. */
export interface Table {
  readonly steps: number;
  readonly classes: number;
  readonly p: Float64Array;
  /** At every step the recogniser's own chance of a blank, which counts as "nothing new" in `p`. */
  readonly blank: Float64Array;
  /** Of all that the recogniser says, the share that is in the alphabet: low where it sees no print, and makes up characters of other scripts. */
  readonly known: number;
  /** Heights of the line that one step goes along; null: not known. */
  readonly stride: number | null;
}

/** Which of a recogniser's classes are kept, and what they stand for. */
export interface Alphabet {
  /** Character of each class of a table; that of class 0 is "". No blank is among them. */
  readonly characters: readonly string[];
  /** The recogniser's own class of each. */
  readonly from: readonly number[];
  /** Its class of a blank; -1: it has none. */
  readonly blank: number;
}

const kept = ["", ..."0123456789", ..."ABCDEFGHIJKLMNOPQRSTUVWXYZ", "%", "-", ".", "/"];

/**
 * The characters of labels among a recogniser's own.
 * @param own  its classes in order, the first one being "nothing new here"
 */
export function labelAlphabet(own: readonly string[]): Alphabet {
  const places = new Map(own.map((character, i) => [i === 0 ? "" : character, i]));
  const characters = kept.filter((character) => places.has(character));
  return {characters, from: characters.map((character) => places.get(character)!), blank: places.get(" ") ?? -1};
}

/**
 * A recogniser's raw chances, cut down to an alphabet.
 * @param raw  steps × own classes, row by row
 */
export function cutDown(raw: ArrayLike<number>, steps: number, own: number, {from, blank: at}: Alphabet, stride: number | null): Table {
  const classes = from.length;
  const p = new Float64Array(steps * classes);
  const blank = new Float64Array(steps);
  let [inside, said] = [0, 1e-6];
  for (let step = 0; step < steps; step++) {
    const gap = at < 0 ? 0 : raw[step * own + at]!;
    let sum = 0;
    for (let k = 0; k < classes; k++) sum += p[step * classes + k] = raw[step * own + from[k]!]! + 1e-9 + (k === 0 ? gap : 0);
    inside += sum - p[step * classes]!;
    said += 1 - raw[step * own]! - gap;
    for (let k = 0; k < classes; k++) p[step * classes + k]! /= sum;
    blank[step] = gap / sum;
  }
  return {steps, classes, p, blank, known: Math.min(1, inside / said), stride};
}

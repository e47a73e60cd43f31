// What a recogniser says of every step along a line, cut down to the characters that labels carry.

/** Chances step by step: `steps` rows of one number a class, class 0 being "nothing new here"; each row sums to 1. */
export interface Table {
  readonly steps: number;
  readonly classes: number;
  readonly p: Float64Array;
}

/** Which of a recogniser's classes are kept, and what they stand for. */
export interface Alphabet {
  /** Character of each class of a table; that of class 0 is "". */
  readonly characters: readonly string[];
  /** The recogniser's own classes that count towards each of them. */
  readonly from: readonly (readonly number[])[];
  /** By how much each class is lifted before the rows are made to sum to 1. */
  readonly gain: readonly number[];
}

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
const kept = ["", ..."0123456789", ...letters, " ", "%", "-", ".", "/"];
/** Recognisers trained on running text skip the blanks that codes turn on: measured, docs/decisions/0019. */
const blankGain = 100;

/**
 * The characters of labels among a recogniser's own.
 * @param own  its classes in order, the first one being "nothing new here"
 */
export function labelAlphabet(own: readonly string[]): Alphabet {
  const places = new Map<string, number[]>();
  own.forEach((character, i) => i > 0 && places.set(character, [...(places.get(character) ?? []), i]));
  const characters = kept.filter((character) => character === "" || places.has(character));
  return {characters, from: characters.map((character) => (character === "" ? [0] : places.get(character)!)), gain: characters.map((character) => (character === " " ? blankGain : 1))};
}

/**
 * A recogniser's raw chances, cut down to an alphabet.
 * @param raw  steps × own classes, row by row
 */
export function cutDown(raw: ArrayLike<number>, steps: number, own: number, {from, gain}: Alphabet): Table {
  const classes = from.length;
  const p = new Float64Array(steps * classes);
  for (let step = 0; step < steps; step++) {
    let sum = 0;
    for (let k = 0; k < classes; k++) {
      let value = 1e-9;
      for (const i of from[k]!) value += raw[step * own + i]!;
      value *= gain[k]!;
      p[step * classes + k] = value;
      sum += value;
    }
    for (let k = 0; k < classes; k++) p[step * classes + k]! /= sum;
  }
  return {steps, classes, p};
}

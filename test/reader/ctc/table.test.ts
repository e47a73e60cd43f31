import {expect, test} from "vitest";
import {openRow} from "../../../reader/ctc/open-row.ts";
import {peaksOf, saidAt} from "../../../reader/ctc/peaks.ts";
import {cutDown, labelAlphabet} from "../../../reader/ctc/table.ts";
import {readRowSchema} from "../../../reader/model.ts";
import {drawnTable} from "./by-hand.ts";

const quad = [{x: 0, y: 0}, {x: 9, y: 0}, {x: 9, y: 4}, {x: 0, y: 4}];

test("the alphabet keeps digits, capitals and the signs of labels, in the recogniser's own places; blanks are kept apart", () => {
  const {characters, from, blank} = labelAlphabet(["", "的", "7", "a", "A", " "]);
  expect(characters).toEqual(["", "7", "A"]);
  expect(from).toEqual([0, 2, 4]);
  expect(blank).toBe(5);
  expect(labelAlphabet(["", "7"]).blank).toBe(-1);
});

test("every step of a table that is cut down sums to 1, keeps its order, and counts a blank as nothing new", () => {
  const alphabet = labelAlphabet(["", "的", "7", "3", " "]);
  const {p, steps, classes, blank} = cutDown([0.1, 0.4, 0.3, 0.1, 0.1, 0.6, 0.1, 0.05, 0.15, 0.1], 2, 5, alphabet, null);
  for (let step = 0; step < steps; step++) expect(p.slice(step * classes, (step + 1) * classes).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  expect(alphabet.characters[1]).toBe("3");
  expect(p[2]! / p[1]!).toBeCloseTo(3, 5);
  expect(p[0]! / p[2]!).toBeCloseTo(0.2 / 0.3, 5);
  expect(blank[0]! / p[2]!).toBeCloseTo(0.1 / 0.3, 5);
});

test("peaks stand in the order of the reading, one a character", () => {
  const table = drawnTable(4, 30, 6);
  const peaks = peaksOf(table, [1, 2, 2, 5])!;
  expect(peaks).toHaveLength(4);
  peaks.slice(1).forEach((step, i) => expect(step).toBeGreaterThan(peaks[i]!));
  expect(saidAt(table, peaks[0]!).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  expect(peaksOf(table, Array.from({length: 31}, () => 1))).toBeNull();
});

test("a row keeps its shape: weights fall, sum to 1 with what is left over, and every place belongs to a character of the best reading", () => {
  const alphabet = labelAlphabet(["", ..."01234 "]);
  for (let seed = 1; seed <= 20; seed++) {
    const {row, score} = openRow([drawnTable(seed, 20, 6), drawnTable(seed + 50, 24, 6)], alphabet, quad);
    readRowSchema.parse(row);
    expect(row.strings.reduce((sum, {p}) => sum + p, row.none)).toBeCloseTo(1, 9);
    expect(row.best).toBe(row.strings[0]!.text);
    expect(row.places).toHaveLength(row.best.length);
    for (const {text, p} of row.strings) expect(score(text)).toBeCloseTo(p, 12);
    for (const text of [" 1", "1 ", "1  2"]) expect(score(text)).toBe(0);
    expect(score("Q")).toBe(0);
  }
});

test("several looks are averaged: a reading is as likely as its mean over them", () => {
  const alphabet = labelAlphabet(["", ..."012"]);
  const [a, b] = [drawnTable(1, 8, 4), drawnTable(2, 8, 4)];
  const [one, other, both] = [openRow([a], alphabet, quad), openRow([b], alphabet, quad), openRow([a, b], alphabet, quad)];
  for (const text of ["0", "12", "021"]) expect(both.score(text)).toBeCloseTo((one.score(text) + other.score(text)) / 2, 12);
});

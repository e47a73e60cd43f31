// Forward sums against walking every path. Source: Graves, Fernández, Gomez, Schmidhuber, ICML 2006, section 4.1.
import {expect, test} from "vitest";
import {scoreOf} from "../../../reader/ctc/score.ts";
import {drawnTable, everyReading, readingOf} from "./by-hand.ts";

test("the score of every reading is the sum over all paths that read so", () => {
  for (let seed = 1; seed <= 20; seed++) {
    const table = drawnTable(seed, 6, 4);
    for (const [key, p] of everyReading(table)) expect(scoreOf(table, readingOf(key))).toBeCloseTo(p, 12);
  }
});

test("the scores of all readings sum to 1", () => {
  const table = drawnTable(7, 7, 3);
  const sum = [...everyReading(table).keys()].reduce((total, key) => total + scoreOf(table, readingOf(key)), 0);
  expect(sum).toBeCloseTo(1, 12);
});

test("a reading that needs more steps than the line has is impossible; a repeat needs a step between", () => {
  const table = drawnTable(3, 3, 4);
  expect(scoreOf(table, [1, 2, 3, 1])).toBe(0);
  expect(scoreOf(table, [1, 1])).toBeCloseTo(table.p[1]! * table.p[4]! * table.p[9]!, 12);
  expect(scoreOf(table, [1, 1, 1])).toBe(0);
});

test("a line without steps reads as nothing", () => {
  const none = {steps: 0, classes: 4, p: new Float64Array(0), blank: new Float64Array(0), known: 1, stride: null};
  expect(scoreOf(none, [])).toBe(1);
  expect(scoreOf(none, [2])).toBe(0);
});

test("long lines keep their digits: no chance sinks to nothing on the way", () => {
  const table = drawnTable(11, 400, 5);
  expect(scoreOf(table, Array.from({length: 100}, (_, i) => 1 + (i % 4)))).toBeGreaterThan(0);
});

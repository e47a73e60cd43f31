import {expect, test} from "vitest";
import {openRow} from "../../../reader/ctc/open-row.ts";
import {blanksAfter, spacingChance, spacings} from "../../../reader/ctc/spacing.ts";
import {labelAlphabet, type Table} from "../../../reader/ctc/table.ts";

const alphabet = labelAlphabet(["", ..."0123456789 "]);
const quad = [{x: 0, y: 0}, {x: 9, y: 0}, {x: 9, y: 4}, {x: 0, y: 4}];

/** A line that says digits at some steps, nearly surely, and a faint blank everywhere. */
function saying(text: string, at: readonly number[], blank = 0.0002): Table {
  const [steps, classes] = [at.at(-1)! + 4, alphabet.characters.length];
  const p = new Float64Array(steps * classes).fill(0.001);
  for (let step = 0; step < steps; step++) p[step * classes] = 1 - 0.001 * (classes - 1);
  at.forEach((step, i) => {
    const k = alphabet.characters.indexOf(text[i]!);
    p[step * classes] = 0.001;
    p[step * classes + k] = 1 - 0.001 * (classes - 1);
  });
  return {steps, classes, p, blank: new Float64Array(steps).fill(blank), known: 1, stride: 0.3};
}

test("characters further apart than their neighbours have a blank between them, evenly set ones have none", () => {
  const {row} = openRow([saying("4120318", [2, 4, 6, 11, 13, 15, 17])], alphabet, quad);
  expect(row.best).toBe("412 0318");
  expect(openRow([saying("4120318", [2, 4, 6, 8, 10, 12, 14])], alphabet, quad).row.best).toBe("4120318");
});

test("a blank that the recogniser itself sees counts, too, and the more so where distances are not known", () => {
  const reading = [5, 9];
  const chance = (table: Table) => blanksAfter(table, alphabet, reading, [2, 5])[0]!;
  expect(chance(saying("48", [2, 5], 0.0003))).toBeGreaterThan(chance(saying("48", [2, 5], 0.00001)));
  expect(chance(saying("48", [2, 5], 1))).toBeLessThanOrEqual(0.9);
  const unknown = (blank: number) => chance({...saying("48", [2, 5], blank), stride: null});
  expect(unknown(0.9)).toBeGreaterThan(0.9);
  expect(unknown(0.0001)).toBeLessThan(0.1);
});

test("both spacings of a doubtful gap are carried, and together they are as likely as the characters", () => {
  const {row, score} = openRow([saying("48", [2, 4], 0.0005)], alphabet, quad);
  expect(row.strings.map(({text}) => text)).toEqual(expect.arrayContaining(["48", "4 8"]));
  const [joint, apart] = [score("48"), score("4 8")];
  expect(Math.min(joint, apart)).toBeGreaterThan(0.0004);
  expect(joint + apart).toBeLessThanOrEqual(1);
  expect(joint + apart).toBeGreaterThan(0.8);
});

test("all ways to set blanks have chances that sum to 1, likeliest found first", () => {
  const blanks = [0.2, 0.7, 0.05];
  const all = spacings("1234", blanks, 8);
  expect(all.reduce((sum, {p}) => sum + p, 0)).toBeCloseTo(1, 12);
  for (const {text, p} of all) expect(spacingChance(text, blanks)).toBeCloseTo(p, 12);
  expect(all.reduce((best, one) => (one.p > best.p ? one : best)).text).toBe("12 34");
  expect(spacings("", [], 8)).toEqual([{text: "", p: 1}]);
});

import {expect, test} from "vitest";
import {binsOf, errorOf, fitMap, judgeMap, type KnownRow} from "../../reader/fit-map.ts";
import {defaultMap, mapRow, noMap, unmapRow} from "../../reader/map.ts";
import {readRowSchema, type ReadRow, type ReadingMap} from "../../reader/model.ts";
import {seeded} from "../simulate/random.ts";

const quad = [0, 1, 2, 3].map((i) => ({x: i, y: i * i}));
const row: ReadRow = {
  quad, best: "48", places: [[{character: "4", p: 0.9}, {character: "9", p: 0.1}], [{character: "8", p: 0.75}, {character: "3", p: 0.25}]],
  strings: [{text: "48", p: 0.6}, {text: "43", p: 0.2}, {text: "4 8", p: 0.05}], none: 0.15, mass: 0.85,
};

test("a mapped row keeps its order and shape, its chances sum to 1, and none is above the cap", () => {
  for (const map of [defaultMap, noMap, {temper: 2, mass: 1, places: 0.5, cap: 0.7}]) {
    const now = mapRow(row, map);
    readRowSchema.parse(now);
    expect(now.strings.map(({text}) => text)).toEqual(["48", "43", "4 8"]);
    expect(now.strings.reduce((sum, {p}) => sum + p, now.none)).toBeCloseTo(1, 12);
    expect(now.strings[0]!.p).toBeLessThanOrEqual(map.cap);
    expect(now.places.every((place) => place.reduce((sum, {p}) => sum + p, 0) <= map.cap ** (1 / 8) + 1e-12)).toBe(true);
  }
});

test("a low mass leaves more for none of the readings", () => {
  expect(mapRow({...row, mass: 0.3}, defaultMap).none).toBeGreaterThan(mapRow(row, defaultMap).none);
  expect(mapRow({...row, strings: [], mass: 0}, defaultMap).none).toBe(1);
});

test("a map can be taken back, so that another can be fitted on what was kept", () => {
  for (const map of [defaultMap, {temper: 1.6, mass: 0.4, places: 0.2, cap: 0.9}]) {
    const back = unmapRow(mapRow(row, map), map);
    back.strings.forEach(({p}, i) => expect(p).toBeCloseTo(row.strings[i]!.p, 9));
    back.places.forEach((place, i) => place.forEach(({p}, k) => expect(p).toBeCloseTo(row.places[i]![k]!.p, 9)));
    expect(back.none).toBeCloseTo(row.none, 9);
  }
});

/** Rows of a reader that is far too sure of itself: says 0.97, is right in six of ten. */
function tooSure(count: number): KnownRow[] {
  const random = seeded(9);
  return Array.from({length: count}, () => {
    const [right, wrong] = [String(random.whole(100, 499)), String(random.whole(500, 999))];
    const good = random.happens(0.6);
    const strings = good ? [{text: right, p: 0.97}, {text: wrong, p: 0.02}] : [{text: wrong, p: 0.97}, {text: right, p: 0.02}];
    return {row: {...row, best: strings[0]!.text, places: [...strings[0]!.text].map((character) => [{character, p: 0.99}]), strings, none: 0.01, mass: 0.99}, truth: right};
  });
}

test("a reader that is too sure is tempered: the truth surprises less, and what is said comes true as often", () => {
  const [known, fresh] = [tooSure(300), tooSure(400).slice(300)];
  const fitted = fitMap(known);
  expect(fitted.temper).toBeGreaterThan(1.5);
  expect(judgeMap(fresh, fitted).surprise).toBeLessThan(judgeMap(fresh, defaultMap).surprise);
  expect(judgeMap(fresh, fitted).rowError).toBeLessThan(judgeMap(fresh, defaultMap).rowError / 2);
});

test("few rows move the map little, and none leave it as it is", () => {
  const away = (map: ReadingMap) => Math.abs(Math.log(map.temper));
  expect(fitMap([])).toBe(defaultMap);
  expect(away(fitMap(tooSure(3)))).toBeLessThanOrEqual(away(fitMap(tooSure(300))));
});

test("the calibration error is the mean gap between said and so, by hand", () => {
  const bins = binsOf([[0.95, true], [0.95, true], [0.95, false], [0.95, true], [0.3, false], [0.3, true]]);
  expect(bins).toEqual([{from: 0.3, to: 0.4, count: 2, said: expect.closeTo(0.3), right: 0.5}, {from: 0.9, to: 1, count: 4, said: expect.closeTo(0.95), right: 0.75}]);
  expect(errorOf(bins)).toBeCloseTo((2 * 0.2 + 4 * 0.2) / 6, 12);
});

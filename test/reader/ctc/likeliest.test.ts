// Prefix search against the list of every reading, sorted.
import {expect, test} from "vitest";
import {likeliest} from "../../../reader/ctc/likeliest.ts";
import {scoreOf} from "../../../reader/ctc/score.ts";
import {drawnTable, everyReading} from "./by-hand.ts";

test("with room for all, the search finds the likeliest readings of every small table, with their exact chances", () => {
  for (let seed = 1; seed <= 30; seed++) {
    const table = drawnTable(seed, 6, 4);
    const all = [...everyReading(table)].sort((a, b) => b[1] - a[1]).slice(0, 10);
    const found = likeliest(table, 10, 4000);
    expect(found.map(({p}) => p.toFixed(9))).toEqual(all.map(([, p]) => p.toFixed(9)));
    expect(found[0]!.reading.join()).toBe(all[0]![0]);
  }
});

test("with little room the likeliest reading is still found, nearly always", () => {
  const seeds = Array.from({length: 60}, (_, i) => i + 100);
  const right = seeds.filter((seed) => {
    const table = drawnTable(seed, 7, 4);
    const best = [...everyReading(table)].reduce((a, b) => (b[1] > a[1] ? b : a));
    return likeliest(table, 8, 8)[0]!.reading.join() === best[0];
  });
  expect(right.length).toBeGreaterThanOrEqual(57);
});

test("chances are exact however few prefixes are kept, and fall down the list", () => {
  const table = drawnTable(5, 40, 12);
  const found = likeliest(table, 20);
  found.forEach(({reading, p}) => expect(p).toBeCloseTo(scoreOf(table, reading), 12));
  found.slice(1).forEach(({p}, i) => expect(p).toBeLessThanOrEqual(found[i]!.p));
  expect(new Set(found.map(({reading}) => reading.join())).size).toBe(found.length);
});

test("a line without steps has one reading, nothing", () => {
  expect(likeliest({steps: 0, classes: 4, p: new Float64Array(0), blank: new Float64Array(0), known: 1, stride: null}, 5)).toEqual([{reading: [], p: 1}]);
});

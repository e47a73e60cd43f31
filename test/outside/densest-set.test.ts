// The densest sets of months against highest-density regions: Hyndman 1996, The American Statistician 50:120-126.
import {describe, expect, test} from "vitest";
import {entropyBits, normalized} from "../../engine/num/vector.ts";
import {bounds, credibleSet} from "../../engine/range/credible.ts";
import {monthIndex} from "../../engine/units.ts";
import {close} from "../helper/close.ts";
import {readData, type Sourced} from "../helper/data.ts";

const zero = monthIndex(0);
const cellsOf = (runs: readonly {readonly from: number; readonly until: number}[]) =>
  runs.flatMap(({from, until}) => Array.from({length: until - from + 1}, (_, i) => from + i));

// By hand: cells by falling probability, ties to the earlier cell, until the share is held.
describe("twelve cells with a tie (by hand)", () => {
  const cells = Float64Array.of(0.02, 0.05, 0.1, 0.2, 0.16, 0.04, 0.03, 0.08, 0.18, 0.1, 0.03, 0.01);
  test.each([
    {share: 0.5, chosen: [3, 4, 8], mass: 0.54, runs: 2},
    {share: 0.8, chosen: [2, 3, 4, 7, 8, 9], mass: 0.82, runs: 2},
    {share: 0.9, chosen: [1, 2, 3, 4, 5, 7, 8, 9], mass: 0.91, runs: 2},
  ])("$share is held by the cells $chosen, in two runs", ({share, chosen, mass, runs}) => {
    const set = credibleSet(cells, share, zero);
    expect(cellsOf(set.runs)).toEqual(chosen);
    expect(set.runs).toHaveLength(runs);
    expect(set.months).toBe(chosen.length);
    close(set.mass, mass, {rel: 1e-14});
  });

  test("of cells alike the earlier is taken", () => {
    expect(cellsOf(credibleSet(Float64Array.of(0.3, 0.2, 0.2, 0.3), 0.7, zero).runs)).toEqual([0, 1, 3]);
    expect(cellsOf(credibleSet(new Float64Array(4).fill(0.25), 0.5, zero).runs)).toEqual([0, 1]);
  });

  test("a share that is met exactly takes no further cell, for all that tenths do not add up in binary", () => {
    expect(cellsOf(credibleSet(new Float64Array(10).fill(0.1), 0.3, zero).runs)).toEqual([0, 1, 2]);
    expect(cellsOf(credibleSet(new Float64Array(10).fill(0.1), 0.7, zero).runs)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  });

  test("its entropy is 3.1733042967725256 bits", () => close(entropyBits(cells), 3.1733042967725256, {rel: 1e-14}));

  test("no earlier than is the first cell past 2.5 %, no later than the first to reach 97.5 %", () => {
    expect(bounds(cells, 0.025, zero)).toEqual({noEarlier: 1, noLater: 10});
    expect(bounds(cells, 0.2, zero)).toEqual({noEarlier: 3, noLater: 8});
    expect(bounds(Float64Array.of(0, 0, 1, 0), 0.025, zero)).toEqual({noEarlier: 2, noLater: 2});
  });
});

describe("continuous densities on a fine grid (Hyndman 1996; SciPy 1.17.1)", () => {
  interface Densest extends Sourced {
    readonly mixture: readonly {readonly share: number; readonly intervals: readonly (readonly [number, number])[]}[];
    readonly beta: readonly {readonly a: number; readonly b: number; readonly share: number; readonly interval: readonly [number, number]}[];
    readonly gamma: readonly {readonly shape: number; readonly rate: number; readonly share: number; readonly interval: readonly [number, number]}[];
  }
  const data = readData<Densest>("densest-intervals");

  /** The densest set of a density cut into cells, as intervals; the tolerance is the width of two cells. */
  const check = (density: (x: number) => number, [low, high]: readonly [number, number], share: number, intervals: readonly (readonly [number, number])[]) => {
    const count = 20_000;
    const width = (high - low) / count;
    const cells = normalized(Float64Array.from({length: count}, (_, i) => density(low + (i + 0.5) * width)));
    const set = credibleSet(cells, share, zero);
    expect(set.runs).toHaveLength(intervals.length);
    set.runs.forEach(({from, until}, i) => {
      close(low + from * width, intervals[i]![0], {abs: 2 * width, because: "the width of two cells"});
      close(low + (until + 1) * width, intervals[i]![1], {abs: 2 * width, because: "the width of two cells"});
    });
    close(set.mass, share, {abs: Math.max(...cells), because: "the mass of one cell"});
  };

  const bell = (x: number, mean: number) => Math.exp(-((x - mean) ** 2) / 2);
  test.each(data.mixture)("two lumps, 0.5 N(0,1) + 0.5 N(4,1): $share is held by $intervals", ({share, intervals}) => {
    check((x) => bell(x, 0) + bell(x, 4), [-6, 10], share, intervals);
  });
  test.each(data.beta)("beta($a, $b): $share is held by $interval", ({a, b, share, interval}) => {
    check((x) => x ** (a - 1) * (1 - x) ** (b - 1), [0, 1], share, [interval]);
  });
  test.each(data.gamma)("gamma of shape $shape and rate $rate: $share is held by $interval", ({shape, rate, share, interval}) => {
    check((x) => x ** (shape - 1) * Math.exp(-rate * x), [0, 12], share, [interval]);
  });
});

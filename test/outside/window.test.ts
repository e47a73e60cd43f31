// Windows as archaeologists weigh them: spans spread evenly over their time (aoristic sums), and trapezoids that multiply.
import {describe, expect, test} from "vitest";
import {entropyBits} from "../../engine/num/vector.ts";
import {month, printMonth} from "../../engine/month/month.ts";
import {monthIndex} from "../../engine/units.ts";
import {height, heights, type Window} from "../../engine/window/window.ts";
import {allClose, close} from "../helper/close.ts";
import {readData, type Sourced} from "../helper/data.ts";
import {bookOf, briefOf, markOf, type Written} from "../helper/small-book.ts";

const origin = month(1900, 1);
/** Years of the published examples stand on the engine's months one to one: year `zero` is January 1900. */
const cell = (year: number, zero: number) => printMonth(monthIndex(origin + year - zero));

/** A mark carried by all garments of a window and, outside it, by the share `outside`. */
const window = (text: Written, outside = 0) => markOf({kind: "presence", window: text, inside: 1, outside});

describe("aoristic sums (Ratcliffe 2000; Johnson 2004; Crema 2012, J. Archaeol. Method Theory 19:440)", () => {
  interface Aoristic extends Sourced {
    readonly edges: readonly number[];
    readonly spans: readonly (readonly [number, number])[];
    readonly weights: readonly (readonly number[])[];
    readonly sum: readonly number[];
    readonly tenSpans: readonly (readonly [number, number])[];
    readonly oddSum: readonly number[];
    readonly evenSum: readonly number[];
  }
  const data = readData<Aoristic>("aoristic-sums");
  const [start, end] = [data.edges[0]!, data.edges.at(-1)!];
  const because = "mass, sums to 1";

  /** How much of an item dated to a span falls in each block, by examining it. */
  const blocksOf = ([from, until]: readonly [number, number]): number[] => {
    const step = {begins: [cell(from, start), cell(from, start)], ends: [cell(until - 1, start), cell(until - 1, start)]};
    const {posterior} = briefOf([bookOf({marks: {span: window(step)}})], {saw: {span: "present"}, from: cell(start, start), until: cell(end - 1, start)});
    return data.edges.slice(1).map((edge, i) => posterior.slice(data.edges[i]! - start, edge - start).reduce((sum, p) => sum + p, 0));
  };
  const sumOf = (spans: readonly (readonly [number, number])[]) => spans.map(blocksOf).reduce((sum, blocks) => sum.map((s, i) => s + blocks[i]!));

  test.each(data.spans.map((span, i) => ({span, weights: data.weights[i]!})))("the span $span is spread as $weights", ({span, weights}) => {
    allClose(blocksOf(span), weights, {abs: 1e-12, because});
  });
  test("the four spans add up to 1/4, 13/12, 13/12, 19/12", () => allClose(sumOf(data.spans), [1 / 4, 13 / 12, 13 / 12, 19 / 12], {abs: 1e-12, because}));
  test("ten spans in two groups add up as published, and to the number of items", () => {
    const [odd, even] = [sumOf(data.tenSpans.filter((_, i) => i % 2 === 0)), sumOf(data.tenSpans.filter((_, i) => i % 2 === 1))];
    allClose(odd, data.oddSum, {abs: 1e-12, because});
    allClose(even, data.evenSum, {abs: 1e-12, because});
    close([...odd, ...even].reduce((a, b) => a + b), 10, {rel: 1e-12});
  });
});

describe("both ends of a window count (datplot, inclusive convention: 1 / (last - first + 1))", () => {
  test.each([
    {from: -100, until: -100, each: 1},
    {from: 10, until: 11, each: 0.5},
    {from: 101, until: 110, each: 0.1},
    {from: 201, until: 300, each: 0.01},
  ])("from $from to $until each cell gets $each", ({from, until, each}) => {
    const step = {begins: [cell(from, -200), cell(from, -200)], ends: [cell(until, -200), cell(until, -200)]};
    const {posterior} = briefOf([bookOf({marks: {span: window(step)}})], {saw: {span: "present"}, from: cell(-200, -200), until: cell(400, -200)});
    posterior.forEach((p, i) => close(p, i - 200 >= from && i - 200 <= until ? each : 0, {rel: 1e-12}));
  });
});

// The trapezoid [a, b, c, d] is 0 at a, 1 from b to c, 0 at d, read at the middle of each cell. A window of the engine names whole months,
// both included, so that its last usual month is c - 1 and its last one d - 1.
describe("two trapezoids multiply (by hand, exact fractions)", () => {
  interface Trapezoids extends Sourced {
    readonly window1: readonly [number, number, number, number];
    readonly window2: readonly [number, number, number, number];
    readonly leak: number;
    readonly total: number;
    readonly posterior: readonly (readonly [number, string])[];
    readonly mean: number;
    readonly mode: number;
    readonly entropyBits: number;
    readonly leaky: readonly (readonly [number, number])[];
    readonly leakyMean: number;
  }
  const data = readData<Trapezoids>("trapezoids");
  const [from, until] = [1940, 1979];
  const trapezoid = ([a, b, c, d]: readonly number[]) => ({begins: [cell(a!, from), cell(b!, from)], ends: [cell(c! - 1, from), cell(d! - 1, from)]});
  const posteriorWith = (outside: number) =>
    briefOf([bookOf({marks: {one: window(trapezoid(data.window1), outside), two: window(trapezoid(data.window2), outside)}})], {
      saw: {one: "present", two: "present"},
      from: cell(from, from),
      until: cell(until, from),
    });
  const meanOf = (posterior: Float64Array) => posterior.reduce((sum, p, i) => sum + p * (from + i + 0.5), 0); // at mid-year, as the heights
  const value = (fraction: string) => fraction.split("/").map(Number).reduce((a, b) => a / b);

  test("the heights are those of the trapezoid, and their products add up to 7", () => {
    const windowOf = ([a, b, c, d]: readonly number[]): Window => ({begins: [index(a!), index(b!)], ends: [index(c! - 1), index(d! - 1)]});
    const index = (year: number) => monthIndex(year - from);
    const axis = {from: index(from), until: index(until)};
    const [one, two] = [heights(windowOf(data.window1), axis), heights(windowOf(data.window2), axis)];
    close(one.reduce((sum, h, i) => sum + h * two[i]!, 0), data.total, {rel: 1e-14});
    close(height(windowOf(data.window1), index(1944)), 1 / 12, {rel: 1e-14});
    close(height(windowOf(data.window1), index(1963)), 1 / 12, {rel: 1e-14});
  });

  test("the posterior is the exact fraction in every year", () => {
    const {posterior, best} = posteriorWith(0);
    const exact = new Map(data.posterior.map(([year, fraction]) => [year, value(fraction)]));
    posterior.forEach((p, i) => close(p, exact.get(from + i) ?? 0, {rel: 1e-12}));
    expect(best.month).toBe(origin + data.mode - from);
    close(meanOf(posterior), data.mean, {rel: 1e-12});
    close(entropyBits(posterior), data.entropyBits, {rel: 1e-12});
  });

  test("with a leak of 2 % outside the windows the posterior is the published one in all forty years", () => {
    const {posterior} = posteriorWith(data.leak);
    allClose(posterior, data.leaky.map(([, p]) => p), {rel: 1e-12});
    close(meanOf(posterior), data.leakyMean, {rel: 1e-12});
  });
});

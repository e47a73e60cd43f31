// How much sales count: most for one just like it, less for each difference, never nothing.
import {expect, test} from "vitest";
import {parseMonth} from "../../../engine/index.ts";
import {noMonth} from "../../../worth/price/columns.ts";
import {gradeLikeness, monthLikeness, timeLikeness} from "../../../worth/price/likeness.ts";
import {sizeLikeness} from "../../../worth/price/size.ts";
import {close} from "../../helper/close.ts";

const m = (text: string) => parseMonth(text)!;

test("a sale made in the very month counts fully, one of far away a little, a vague one in between", () => {
  const near = monthLikeness(m("1968-06"));
  close(near.of(m("1968-06"), m("1968-06")), 1, {rel: 1e-12});
  const [five, ten, far] = [near.of(m("1973-06"), m("1973-06")), near.of(m("1978-06"), m("1978-06")), near.of(m("1999-01"), m("1999-01"))];
  // One width away the bell stands at exp(-1/2).
  close(five, 0.05 + 0.95 * Math.exp(-0.5), {rel: 1e-12});
  expect(1 > five && five > ten && ten > far).toBe(true);
  close(far, 0.05, {rel: 1e-12});
  const vague = near.of(m("1960-01"), m("1976-12"));
  expect(vague < 1 && vague > far).toBe(true);
  expect(near.of(noMonth, noMonth)).toBe(0.3);
});

test("two possible times count by their chances", () => {
  const [a, b] = [m("1958-06"), m("1978-06")];
  const both = timeLikeness([a, b], [0.7, 0.3]);
  for (const at of ["1955-01", "1968-03", "1979-12"].map(m)) close(both.of(at, at + 6), 0.7 * monthLikeness(a).of(at, at + 6) + 0.3 * monthLikeness(b).of(at, at + 6), {rel: 1e-9});
});

test("grades count less the further apart they are", () => {
  const good = gradeLikeness(4);
  expect([good[4], good[3]! === good[5]!, good[3]! > good[2]!, good[2]! > good[1]!]).toEqual([1, true, true, true]);
  expect([...gradeLikeness(0)]).toEqual(Array(7).fill(1));
});

test("sizes are compared as they are said", () => {
  expect(sizeLikeness("W 34 L 32", "w 34 l 32")).toBe(1);
  expect(sizeLikeness("M", "L")).toBeGreaterThan(sizeLikeness("M", "XXL"));
  expect(sizeLikeness("W 34 L 32", "W 36 L 32")).toBeGreaterThan(sizeLikeness("W 34 L 32", "W 42 L 32"));
  expect(sizeLikeness("15 1/2", "15.5")).toBe(1);
  expect(sizeLikeness("W 34", "W 60")).toBeGreaterThanOrEqual(0.5);
  expect([sizeLikeness("", "M"), sizeLikeness("M", "W 34")]).toEqual([0.8, 0.8]);
});

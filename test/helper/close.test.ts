// The tests' own measure must be strict: a loose one would let a wrong engine pass.
import {expect, test} from "vitest";
import {allClose, close} from "./close.ts";

test("close lets pass what is within the tolerance, and nothing else", () => {
  close(1 + 1e-10, 1, {rel: 1e-9});
  close(0.1 + 0.2, 0.3, {abs: 1e-15, because: "one rounding"});
  expect(() => close(1 + 1e-8, 1, {rel: 1e-9})).toThrow("not close");
  expect(() => close(1e-60, 1e-52, {rel: 1e-4})).toThrow("not close");
  expect(() => close(1e-9, 0, {rel: 0.5})).toThrow("not close");
});

test("close never takes NaN or infinity for a number", () => {
  for (const [a, b] of [[Number.NaN, 1], [1, Number.NaN], [Number.NaN, Number.NaN], [Infinity, 1], [1, Infinity], [Infinity, Infinity]] as const) {
    expect(() => close(a, b, {rel: 1e-9})).toThrow("not close");
  }
});

test("allClose compares place by place and refuses lists of different length", () => {
  allClose([1, 2], Float64Array.of(1, 2), {rel: 0});
  expect(() => allClose([1, 2], [2, 1], {rel: 1e-9})).toThrow("not close");
  expect(() => allClose([1], [1, 2], {rel: 1e-9})).toThrow("1 numbers where 2");
});

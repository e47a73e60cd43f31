// The lopsided bell. Source of the quantiles of Student's t with 4 degrees of freedom: printed tables (0.741, 2.132, 2.776, 4.604).
import fc from "fast-check";
import {test} from "vitest";
import {below, quantileOf, t4At80, type Bell} from "../../../worth/price/bell.ts";
import {close} from "../../helper/close.ts";

const bell = (over: Partial<Bell> = {}): Bell => ({share: 1, at: 0, left: 1, right: 1, ...over});

test("an even bell is Student's t with four degrees of freedom", () => {
  for (const [x, p] of [[0, 0.5], [0.7407, 0.75], [2.1318, 0.95], [2.7764, 0.975], [4.6041, 0.995], [-2.1318, 0.05]] as const) close(below([bell()], x), p, {abs: 1e-5, because: "tables of four digits"});
  close(below([bell()], t4At80), 0.8, {abs: 1e-7, because: "the constant has seven digits"});
});

test("a quantile undoes the chance below, in every mixture, and each side has half of a bell", () => {
  const one = fc.record({share: fc.double({min: 0.01, max: 1, noNaN: true}), at: fc.double({min: -5, max: 5, noNaN: true}), left: fc.double({min: 0.03, max: 2, noNaN: true}), right: fc.double({min: 0.03, max: 2, noNaN: true})});
  fc.assert(
    fc.property(fc.array(one, {minLength: 1, maxLength: 6}), fc.double({min: 0.001, max: 0.999, noNaN: true}), (bells, p) => {
      close(below(bells, quantileOf(bells, p)), p, {abs: 2e-5, because: "the place is found to a few ten-millionths, and the narrowest bell rises 12 a unit"});
    }),
  );
  close(below([bell({left: 0.1, right: 3})], 0), 0.5, {rel: 1e-12});
});

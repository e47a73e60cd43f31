// Quantiles, weighted quantiles and time decay. Sources: Hyndman and Fan 1996 with R's quantile(); R Hmisc and matrixStats; Kish 1965.
import {expect, test} from "vitest";
import {quantile, type QuantileType} from "../../../worth/num/hyndman-fan.ts";
import {decay, effectiveNumber, weightedQuantile} from "../../../worth/num/weighted.ts";
import {allClose, close} from "../../helper/close.ts";
import {readData, type Sourced} from "../../helper/data.ts";

interface Quantiles extends Sourced {
  readonly values: readonly number[];
  readonly at: readonly number[];
  readonly types: Readonly<Record<string, readonly number[]>>;
  readonly oneToTenAt: readonly number[];
  readonly oneToTen: Readonly<Record<string, readonly number[]>>;
}

test("all nine types of sample quantiles are R's", () => {
  const {values, at, types, oneToTenAt, oneToTen} = readData<Quantiles>("sample-quantiles");
  const ten = Float64Array.from({length: 10}, (_, i) => i + 1);
  for (let type = 1; type <= 9; type++) {
    allClose(at.map((p) => quantile(values, p, type as QuantileType)), types[type]!, {rel: 1e-12});
    allClose(oneToTenAt.map((p) => quantile(ten, p, type as QuantileType)), oneToTen[type]!, {rel: 1e-12});
  }
});

interface Weighted extends Sourced {
  readonly values: readonly number[];
  readonly weights: readonly number[];
  readonly repeated: readonly number[];
  readonly quantiles: Readonly<Record<string, number>>;
  readonly effective: number;
}

test("whole weights are repeated values, and what they are worth is Kish's number", () => {
  const {values, weights, repeated, quantiles, effective} = readData<Weighted>("weighted-quantiles");
  for (const [p, expected] of Object.entries(quantiles)) {
    close(weightedQuantile(values, weights, Number(p)), expected, {rel: 1e-12});
    close(quantile(repeated, Number(p), 2), expected, {rel: 1e-12});
  }
  close(effectiveNumber(weights), effective, {rel: 1e-12});
  expect(weightedQuantile([1, 2, 3, 4], [1, 1, 1, 1], 0.5)).toBe(2.5);
  expect(weightedQuantile([1, 2], [0, 0], 0.5)).toBeNaN();
});

interface Decay extends Sourced {
  readonly halfLife: number;
  readonly ages: readonly number[];
  readonly weights: readonly number[];
  readonly effective: number;
}

test("a sale loses half of its weight in every half-life", () => {
  const {halfLife, ages, weights, effective} = readData<Decay>("decay");
  const found = ages.map((age) => decay(age, halfLife));
  allClose(found, weights, {rel: 1e-12});
  close(effectiveNumber(found), effective, {rel: 1e-12});
});

// Least squares against certified values. Source: NIST Statistical Reference Datasets (Norris, Pontius, NoInt1, Longley); R datasets::cars for intervals.
import {expect, test} from "vitest";
import {leastSquares} from "../../../worth/num/least-squares.ts";
import {allClose, close} from "../../helper/close.ts";
import {readData, type Sourced} from "../../helper/data.ts";

interface Certified extends Sourced {
  readonly [name: string]: unknown;
}

const certified = readData<Certified>("certified-fits");
const columnsOf = (name: string, powers = 1): {y: Float64Array; x: Float64Array[]; ones: Float64Array} => {
  const rows = certified[name] as readonly (readonly number[])[];
  const width = rows[0]!.length - 1;
  const x = Array.from({length: width}, (_, k) => Float64Array.from(rows, (row) => row[k + 1]!));
  return {y: Float64Array.from(rows, ([y]) => y!), x: powers === 2 ? [x[0]!, x[0]!.map((v) => v * v)] : x, ones: new Float64Array(rows.length).fill(1)};
};
const numbers = (name: string) => certified[name] as readonly number[];

/** Standard errors of the coefficients: sigma times the root of the leverage of a unit vector. */
const errorsOf = (fit: NonNullable<ReturnType<typeof leastSquares>>) => fit.coefficients.map((_, k) => fit.sigma * Math.sqrt(fit.leverage(fit.coefficients.map((__, j) => (j === k ? 1 : 0)))));

test("certified coefficients, their errors and the spread are met to nine digits", () => {
  for (const [name, powers] of [["norris", 1], ["pontius", 2], ["longley", 1]] as const) {
    const {y, x, ones} = columnsOf(name, powers);
    const fit = leastSquares([ones, ...x], y)!;
    allClose(fit.coefficients, numbers(`${name}Fit`), {rel: 1e-9});
    allClose(errorsOf(fit), numbers(`${name}Errors`), {rel: 1e-8});
    close(fit.sigma, certified[`${name}Sigma`] as number, {rel: 1e-8});
  }
});

test("a line without an intercept meets its certified values", () => {
  const {y, x} = columnsOf("noIntercept");
  const fit = leastSquares(x, y)!;
  close(fit.coefficients[0]!, certified["noInterceptFit"] as number, {rel: 1e-12});
  close(errorsOf(fit)[0]!, certified["noInterceptError"] as number, {rel: 1e-10});
  close(fit.sigma, certified["noInterceptSigma"] as number, {rel: 1e-10});
});

test("columns that depend on each other have no fit", () => {
  const x = Float64Array.of(1, 2, 3, 4);
  expect(leastSquares([x, x.map((v) => 2 * v)], Float64Array.of(1, 2, 3, 5))).toBeNull();
});

interface Cars extends Sourced {
  readonly speed: readonly number[];
  readonly distance: readonly number[];
  readonly fit: {readonly coef: readonly number[]; readonly sigma: number};
  readonly rows: Readonly<Record<string, {readonly speed: readonly number[]; readonly prediction: readonly (readonly number[])[]; readonly confidence: readonly (readonly number[])[]}>>;
  readonly weighted: {readonly coef: readonly number[]; readonly sigma: number; readonly pred15_newweight1: readonly (readonly number[])[]};
}

/** Student's t with 48 degrees of freedom, two-sided, by numerical integration of its density. */
const t48: Readonly<Record<string, number>> = {"0.8": 1.299438878671, "0.95": 2.010634757624};

test("prediction and confidence intervals are those of R, weighted ones too", () => {
  const cars = readData<Cars>("stopping-distance");
  const ones = new Float64Array(50).fill(1);
  const fit = leastSquares([ones, Float64Array.from(cars.speed)], cars.distance)!;
  allClose(fit.coefficients, cars.fit.coef, {rel: 1e-12});
  for (const [share, {speed, prediction, confidence}] of Object.entries(cars.rows)) {
    speed.forEach((v, i) => {
      const middle = fit.coefficients[0]! + fit.coefficients[1]! * v;
      const half = (own: number) => t48[share]! * fit.sigma * Math.sqrt(own + fit.leverage([1, v]));
      allClose([middle, middle - half(1), middle + half(1)], prediction[i]!, {rel: 1e-8});
      allClose([middle - half(0), middle + half(0)], confidence[i]!.slice(1), {rel: 1e-8});
    });
  }
  const weights = ones.map((_, i) => 0.5 ** (i / 10));
  const weighted = leastSquares([ones, Float64Array.from(cars.speed)], cars.distance, weights)!;
  allClose(weighted.coefficients, cars.weighted.coef, {rel: 1e-11});
  close(weighted.sigma, cars.weighted.sigma, {rel: 1e-11});
  const half = t48["0.95"]! * weighted.sigma * Math.sqrt(1 + weighted.leverage([1, 15]));
  close(weighted.coefficients[0]! + 15 * weighted.coefficients[1]! + half, cars.weighted.pred15_newweight1[0]![2]!, {rel: 1e-8});
});

// Quantile lines against published fits. Source: Koenker and Bassett 1982 (Engel's data), Koenker 2005 (stack loss), by R quantreg 5.94.
import {expect, test} from "vitest";
import {quantileRegression} from "../../../worth/num/quantile-regression.ts";
import {residualsOf} from "../../../worth/num/least-squares.ts";
import {allClose, close} from "../../helper/close.ts";
import {readData, type Sourced} from "../../helper/data.ts";

interface Engel extends Sourced {
  readonly income: readonly number[];
  readonly food: readonly number[];
  readonly lines: Readonly<Record<string, readonly [number, number, number]>>;
  readonly weightedMedian: readonly number[];
}

const engel = readData<Engel>("engel-lines");
const columns = [new Float64Array(engel.income.length).fill(1), Float64Array.from(engel.income)];
const lossOf = (residuals: Float64Array, tau: number) => residuals.reduce((sum, r) => sum + r * (r < 0 ? tau - 1 : tau), 0);

test("the seven lines through Engel's households are the published ones, and so is what they lose", () => {
  for (const [tau, [intercept, slope, loss]] of Object.entries(engel.lines)) {
    const found = quantileRegression(columns, engel.food, Number(tau))!;
    allClose(found, [intercept, slope], {rel: 1e-9});
    close(lossOf(residualsOf(columns, engel.food, found), Number(tau)), loss, {rel: 1e-11});
  }
  expect(Object.keys(engel.lines).length).toBe(7);
});

test("the weighted median line is R's", () => {
  const weights = engel.income.map((_, i) => 0.5 ** (i / 60));
  allClose(quantileRegression(columns, engel.food, 0.5, weights)!, engel.weightedMedian, {rel: 1e-9});
});

interface StackLoss extends Sourced {
  readonly air: readonly number[];
  readonly water: readonly number[];
  readonly acid: readonly number[];
  readonly loss: readonly number[];
  readonly medianLine: readonly number[];
  readonly medianLoss: number;
}

test("the median fit of stack loss on three columns is the published one, ties and all", () => {
  const {air, water, acid, loss, medianLine, medianLoss} = readData<StackLoss>("stack-loss");
  const design = [new Float64Array(21).fill(1), ...[air, water, acid].map((column) => Float64Array.from(column))];
  const found = quantileRegression(design, loss, 0.5)!;
  allClose(found, medianLine, {rel: 1e-9});
  // Published as half the sum of absolute residuals.
  close(lossOf(residualsOf(design, loss, found), 0.5), medianLoss, {rel: 1e-9});
});

// Robust fits and centres against R's MASS. Sources: Venables and Ripley, Modern Applied Statistics with S, 2002, 5.5 and 6.5; Brownlee's stack loss.
import {expect, test} from "vitest";
import {huberCentre} from "../../../worth/num/huber-location.ts";
import {huberRegression} from "../../../worth/num/huber.ts";
import {median, medianSpread} from "../../../worth/num/weighted.ts";
import {allClose, close} from "../../helper/close.ts";
import {readData, type Sourced} from "../../helper/data.ts";

interface Fits extends Sourced {
  readonly huber: readonly number[];
  readonly huberScale: number;
  readonly huberTight: readonly number[];
  readonly huberTightScale: number;
}
interface StackLoss extends Fits {
  readonly air: readonly number[];
  readonly water: readonly number[];
  readonly acid: readonly number[];
  readonly loss: readonly number[];
  readonly huberPulls: readonly number[];
}
interface Calls extends Fits {
  readonly year: readonly number[];
  readonly calls: readonly number[];
  readonly leastSquares: readonly number[];
}

const tight = {tolerance: 1e-13, mostRounds: 500};

test("Huber's fit of stack loss is that of rlm after as many rounds, and at its fixed point", () => {
  const {air, water, acid, loss, ...known} = readData<StackLoss>("stack-loss");
  const columns = [new Float64Array(21).fill(1), ...[air, water, acid].map((column) => Float64Array.from(column))];
  const early = huberRegression(columns, Float64Array.from(loss))!;
  allClose(early.coefficients, known.huber, {rel: 1e-9});
  close(early.scale, known.huberScale, {rel: 1e-9});
  allClose(early.pulls, known.huberPulls, {rel: 1e-9});
  const late = huberRegression(columns, Float64Array.from(loss), tight)!;
  allClose(late.coefficients, known.huberTight, {rel: 1e-6});
  close(late.scale, known.huberTightScale, {rel: 1e-6});
});

test("Huber's line through the calls is that of rlm, far from least squares", () => {
  const {year, calls, leastSquares, ...known} = readData<Calls>("phone-calls");
  const columns = [new Float64Array(24).fill(1), Float64Array.from(year)];
  // As in the book, up to fifty rounds, stopping at the tolerance of rlm.
  const early = huberRegression(columns, Float64Array.from(calls), {mostRounds: 50})!;
  allClose(early.coefficients, known.huber, {rel: 1e-9});
  const late = huberRegression(columns, Float64Array.from(calls), tight)!;
  allClose(late.coefficients, known.huberTight, {rel: 1e-6});
  close(late.scale, known.huberTightScale, {rel: 1e-6});
  expect(late.coefficients[1]!).toBeLessThan(leastSquares[1]! / 2);
});

interface Centres extends Sourced {
  readonly chem: readonly number[];
  readonly abbey: readonly number[];
  readonly chemCentres: Readonly<Record<string, number>>;
  readonly abbeyCentres: Readonly<Record<string, number>>;
}

test("centres and spreads of chem and abbey are those of hubers", () => {
  const data = readData<Centres>("robust-centres");
  for (const [values, known] of [[data.chem, data.chemCentres], [data.abbey, data.abbeyCentres]] as const) {
    close(median(values), known["median"]!, {rel: 1e-12});
    close(medianSpread(values), known["mad"]!, {rel: 1e-12});
    const {centre, spread} = huberCentre(values);
    allClose([centre, spread], [known["hubers_mu"]!, known["hubers_s"]!], {rel: 2e-6});
  }
});

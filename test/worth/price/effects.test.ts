// What sets prices apart is found again where it is known: in a made-up market.
import {expect, test} from "vitest";
import {makeComparables, priceGarment} from "../../../worth/index.ts";
import {termsSchema} from "../../../worth/model.ts";
import {dayOf, columnsOf} from "../../../worth/price/columns.ts";
import {learnEffects} from "../../../worth/price/effects.ts";
import {close} from "../../helper/close.ts";
import {marketDay, marketOf, subjectOf} from "../simulate/market.ts";

const sales = marketOf({sales: 4_000, seed: 41});
const columns = columnsOf(sales, dayOf(marketDay), null);

test("maker, state, time and drift are those of the market, far-off prices or not", () => {
  const effects = learnEffects(columns, columns.kinds.find("trousers"));
  const maker = (name: string) => effects.maker(columns.makers.find(name));
  // The market: 0.5 for the one, -0.1 for the other, and 0.35 more for early things of the first, which a third of its sales are.
  close(maker("marrowfield") - maker("dunmere"), 0.6 + 0.35 / 2.4, {abs: 0.12, because: "made of some hundred sales"});
  close(effects.grade(2) - effects.grade(4), 0.4, {abs: 0.06, because: "made of some hundred sales"});
  close(effects.made(600, 611) - effects.made(1020, 1031), 0.055 * 0.8 * 28, {abs: 0.2, because: "the curve bends in 1971, and early things of one maker bring more"});
  close(effects.drift, 0.04, {abs: 0.015, because: "six years of sales"});
  expect(effects.trust).toBeGreaterThan(0.98);
});

test("a dozen sales teach no effects at all", () => {
  const few = columnsOf(sales.slice(0, 12), dayOf(marketDay), null);
  expect(learnEffects(few, 1).trust).toBe(0);
});

test("the middle line over the time of the sale rises as the market does", () => {
  const comparables = makeComparables(sales, {currency: "EUR", today: marketDay});
  const subject = subjectOf(sales.find(({sale}) => sale.kind === "trousers" && sale.maker === "marrowfield" && sale.madeFrom !== null)!);
  const {trend} = priceGarment(comparables, subject, {terms: termsSchema.parse({currency: "EUR"})});
  expect(trend!.since < trend!.until).toBe(true);
  close(trend!.yearly, 1.04, {abs: 0.06, because: "a hundred and twenty sales of heavy noise"});
  for (const key of ["since", "until"] as const) expect(trend!.lines.map((line) => line[key])).toEqual(trend!.lines.map((line) => line[key]).sort((a, b) => a - b));
});

// Lots: a sum spreads as a sum does, what nobody looked at adds doubt of its own, and the asked price is shared out to the cent.
import {expect, test} from "vitest";
import {lotAnswerSchema, makeComparables, priceGarment, priceLot} from "../../../worth/index.ts";
import {sumOfDraws} from "../../../worth/lot/sum.ts";
import {termsSchema} from "../../../worth/model.ts";
import {close} from "../../helper/close.ts";
import {seeded} from "../../simulate/random.ts";
import {marketDay, marketOf, subjectOf} from "../simulate/market.ts";

const die = {steps: [100, 200, 300, 400, 500, 600], sampled: true};

// Closed form: ten dice have mean 35 and variance 10 · 35/12; the sum of many is near normal, whose nine tenths reach 1.645 standard deviations.
test("the sum of ten dice spreads as dice do", () => {
  const {range} = sumOfDraws(Array(10).fill(die), 0, seeded(3).next);
  const sd = 100 * Math.sqrt((10 * 35) / 12);
  close(range.mean, 3500, {rel: 0.01});
  const nine = range.ranges.find(({share}) => share === 0.9)!;
  close(nine.high - nine.low, 2 * 1.645 * sd, {rel: 0.06});
});

// Closed form: n looked at, each of value 0 or 1 and half of each, m more from Pólya's urn: beta-binomial of parameters n/2, n/2, whose variance is m/4 (n + m)/(n + 1).
test("what nobody looked at spreads more than as many looked at, by as much as an urn does", () => {
  const sample = [...Array(5).fill({steps: [0], sampled: true}), ...Array(5).fill({steps: [100], sampled: true})];
  const {range, below} = sumOfDraws(sample, 40, seeded(4).next);
  close(range.mean, 500 + 2000, {rel: 0.03});
  const sd = 100 * Math.sqrt(10 * ((10 + 40) / 11));
  const nine = range.ranges.find(({share}) => share === 0.9)!;
  close(nine.high - nine.low, 2 * 1.645 * sd, {rel: 0.1});
  expect(below(500)).toBe(0);
  expect(below(4_501)).toBe(1);
});

// Closed form: with one drawn and one place for something unlike it, how many of m are unlike is Pólya's urn with one ball of each kind: every number from 0 to m is equally likely.
test("a single one drawn says next to nothing of the rest", () => {
  const {range} = sumOfDraws([{steps: [0], sampled: true}], 40, seeded(9).next, [100]);
  const eight = range.ranges.find(({share}) => share === 0.8)!;
  close(eight.low, 400, {abs: 200, because: "a tenth of the numbers from 0 to 40 lies below 4; of 4,000 draws two standard errors are about 1"});
  close(eight.high, 3600, {abs: 200, because: "as for the lower end"});
  close(range.mean, 2000, {rel: 0.03});
});

const market = marketOf({sales: 700, seed: 31});
const comparables = makeComparables(market.slice(0, 600), {currency: "EUR", today: marketDay});
const terms = termsSchema.parse({currency: "EUR", feeFixed: 100});
const garments = market.slice(600, 606).map((sale) => ({id: sale.id, subject: subjectOf(sale)}));

test("a rail is worth about the sum of its garments, and the asked price falls on them to the cent", () => {
  const answer = lotAnswerSchema.parse(priceLot(comparables, garments, {terms, unexamined: 4, sampled: [], asked: 54_321, random: seeded(5).next}));
  const single = garments.map(({subject}) => priceGarment(comparables, subject, {terms}).price?.mean ?? 0).reduce((sum, mean) => sum + mean, 0);
  close(answer.examinedTotal!.mean, single, {rel: 0.05});
  close(answer.total!.mean, (single * 10) / 6, {rel: 0.1});
  expect(answer.garments.reduce((sum, {part}) => sum + part!, 0) + answer.unexaminedPart!).toBe(54_321);
  expect(answer.offer!.most).toBeLessThan(answer.total!.typical);
  expect(answer.cautions.join(" ")).toContain("drawn blindly");
  expect(priceLot(comparables, garments, {terms, unexamined: 4, sampled: [], asked: 54_321, random: seeded(5).next})).toEqual(answer);
});

test("only what was drawn blindly stands for the rest", () => {
  const dearest = [...garments].sort((a, b) => (priceGarment(comparables, b.subject, {terms}).price?.typical ?? 0) - (priceGarment(comparables, a.subject, {terms}).price?.typical ?? 0));
  const totalOf = (sampled: readonly string[]) => priceLot(comparables, garments, {terms, unexamined: 20, sampled, random: seeded(6).next}).total!.typical;
  expect(totalOf([dearest[0]!.id])).toBeGreaterThan(2 * totalOf([dearest.at(-1)!.id]));
});

test("garments without enough sales count as nothing and are named; a lot of nothing else has no price", () => {
  const strange = {id: "odd", subject: {...garments[0]!.subject, kind: "smock"}};
  const mixed = priceLot(comparables, [...garments, strange], {terms, unexamined: 0, sampled: [], random: seeded(7).next});
  expect([mixed.unpriced, mixed.garments.at(-1)!.typical]).toEqual([1, null]);
  expect(mixed.words[1]).toBe("1 of those looked at has too few sales and counts as nothing.");
  const none = priceLot(comparables, [strange], {terms, unexamined: 3, sampled: [], random: seeded(8).next});
  expect([none.total, none.offer]).toEqual([null, null]);
});

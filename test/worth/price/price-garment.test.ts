// The price of a garment: the laws it keeps, what it says when sales are few, and how it follows the date.
import {expect, test} from "vitest";
import {makeComparables, neededLike, priceGarment, worthAnswerSchema, type Subject} from "../../../worth/index.ts";
import {termsSchema} from "../../../worth/model.ts";
import {close} from "../../helper/close.ts";
import {marketDay, marketOf, subjectOf} from "../simulate/market.ts";

const sales = marketOf({sales: 900, seed: 21});
const terms = termsSchema.parse({currency: "EUR"});
const comparables = makeComparables(sales, {currency: "EUR", today: marketDay});
const subject: Subject = {
  garment: null, kind: "trousers", makers: [{maker: "marrowfield", probability: 1}], lot: null, size: "W 34 L 32", grade: "very good",
  years: {first: 1958, shares: [0, 1, 2, 2, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1]},
};

test("an answer has the shape that is promised, over all times the garment may be from", () => {
  const answer = worthAnswerSchema.parse(priceGarment(comparables, subject, {terms, asked: 12_000, country: "US"}));
  expect(answer.enough).toBe(true);
  expect(answer.branches.map(({words}) => words)).toEqual(["1959 to 1962", "1978 to 1979"]);
  close(answer.branches.reduce((sum, {share}) => sum + share, 0), 1, {rel: 1e-9});
  const [early, late] = answer.branches;
  expect(early!.price!.typical).toBeGreaterThan(1.4 * late!.price!.typical);
  expect(answer.price!.typical).toBeGreaterThan(late!.price!.typical);
  expect(answer.price!.typical).toBeLessThan(early!.price!.typical);
  close(answer.years.reduce((sum, {share}) => sum + share, 0), 1, {rel: 1e-9});
  expect(answer.used.length).toBe(12);
  expect(answer.used.map(({share}) => share)).toEqual([...answer.used.map(({share}) => share)].sort((a, b) => b - a));
  expect(answer.words[0]).toMatch(/^As it stands: EUR [\d,]+, and eight in ten between EUR [\d,]+ and EUR [\d,]+\.$/);
  expect(answer.cautions.join(" ")).toContain("not a certified appraisal");
  expect(answer.cautions.join(" ")).toContain("Form 8283");
  expect(answer.trend!.lines.map(({share}) => share)).toEqual([0.1, 0.5, 0.9]);
});

test("ranges lie within each other, steps rise, and the typical price is the middle step", () => {
  for (const sale of sales.slice(0, 60)) {
    const {price} = priceGarment(comparables, subjectOf(sale), {terms});
    if (!price) continue;
    expect([...price.steps].sort((a, b) => a - b)).toEqual(price.steps);
    expect(price.steps[9]).toBe(price.typical);
    for (const {low, high} of price.ranges) expect(low <= price.typical && price.typical <= high).toBe(true);
    for (let i = 1; i < price.ranges.length; i++) {
      expect(price.ranges[i]!.low).toBeLessThanOrEqual(price.ranges[i - 1]!.low);
      expect(price.ranges[i]!.high).toBeGreaterThanOrEqual(price.ranges[i - 1]!.high);
    }
  }
});

test("prices ten times as high make an answer ten times as high", () => {
  const dear = makeComparables(sales.map((kept) => ({...kept, sale: {...kept.sale, price: {...kept.sale.price, cents: 10 * kept.sale.price.cents}}})), {currency: "EUR", today: marketDay});
  const [plain, ten] = [priceGarment(comparables, subject, {terms}).price!, priceGarment(dear, subject, {terms}).price!];
  for (const key of ["typical", "low", "high", "mean"] as const) close(ten[key], 10 * plain[key], {rel: 1e-4});
});

test("the order in which sales are kept makes no difference, and the same question has the same answer", () => {
  const turned = makeComparables([...sales].reverse(), {currency: "EUR", today: marketDay});
  const [plain, other] = [priceGarment(comparables, subject, {terms}).price!, priceGarment(turned, subject, {terms}).price!];
  close(other.typical, plain.typical, {rel: 1e-3});
  expect(priceGarment(comparables, subject, {terms, asked: 9_000})).toEqual(priceGarment(comparables, subject, {terms, asked: 9_000}));
});

test("a better state and a dearer maker bring more", () => {
  const typical = (over: Partial<Subject>) => priceGarment(comparables, {...subject, ...over}, {terms}).price!.typical;
  const byGrade = (["excellent", "very good", "good", "fair"] as const).map((grade) => typical({grade}));
  expect(byGrade).toEqual([...byGrade].sort((a, b) => b - a));
  expect(typical({makers: [{maker: "marrowfield", probability: 1}]})).toBeGreaterThan(typical({makers: [{maker: "dunmere", probability: 1}]}));
  const [sure, none] = [typical({}), typical({makers: [{maker: "dunmere", probability: 1}]})];
  const half = typical({makers: [{maker: "marrowfield", probability: 0.5}, {maker: "dunmere", probability: 0.5}]});
  expect(half > none && half < sure).toBe(true);
});

test("too few sales are told with what they amount to, and nothing is made up", () => {
  const few = makeComparables(sales.slice(0, 12), {currency: "EUR", today: marketDay});
  const answer = worthAnswerSchema.parse(priceGarment(few, {...subject, kind: "overalls"}, {terms, asked: 5_000}));
  expect(answer.enough).toBe(false);
  expect([answer.price, answer.offer, answer.looks]).toEqual([null, null, null]);
  expect(answer.sales.like).toBeLessThan(neededLike);
  const none = priceGarment(few, {...subject, kind: "smock"}, {terms});
  expect(none.words[0]).toBe("No sales of smock are kept, so there is no price to name.");
});

test("a garment's own sale does not set its price", () => {
  const own = sales.find(({sale}) => sale.kind === "trousers")!;
  const dear = {...own, garment: "g1", sale: {...own.sale, price: {cents: own.sale.price.cents * 8, currency: "EUR"}}};
  const rest = sales.filter((kept) => kept !== own);
  const withOwn = makeComparables([dear, ...rest], {currency: "EUR", today: marketDay});
  const answer = priceGarment(withOwn, {...subjectOf(own), garment: "g1"}, {terms});
  expect(answer.used.every(({id}) => id !== own.id)).toBe(true);
  expect(priceGarment(withOwn, subjectOf(own), {terms}).used.some(({id}) => id === own.id)).toBe(true);
});

test("looking is worth money only where it can turn the decision", () => {
  const looks = [{mark: "zip", name: "the zip", effort: 1, opensSeam: false, outcomes: [{probability: 6 / 8, years: {first: 1958, shares: [0, 1, 2, 2, 1]}}, {probability: 2 / 8, years: {first: 1978, shares: [1, 1]}}]}];
  const {branches, price} = priceGarment(comparables, subject, {terms});
  const between = Math.round((branches[0]!.most! + branches[1]!.most!) / 2);
  const torn = priceGarment(comparables, subject, {terms, asked: between, looks}).looks!;
  expect(torn.looks[0]!.worth).toBeGreaterThan(0);
  expect(torn.looks[0]!.worth).toBeLessThanOrEqual(torn.knowing + 1);
  const cheap = priceGarment(comparables, subject, {terms, asked: Math.round(price!.typical / 50), looks}).looks!;
  expect([cheap.knowing, cheap.looks[0]!.worth, cheap.looks[0]!.turns]).toEqual([0, 0, 0]);
});

test("terms in another currency than the sales are a fault of the caller", () => {
  expect(() => priceGarment(comparables, subject, {terms: termsSchema.parse({currency: "USD"})})).toThrow("terms in USD, sales in EUR");
});

test("a date without any likely year counts as unknown, and is said so", () => {
  const {enough, method, looks} = priceGarment(comparables, {...subject, years: {first: 1960, shares: [0, 0]}}, {terms, asked: 9_000});
  expect([enough, looks]).toEqual([true, null]);
  expect(method.words.join(" ")).toContain("Nothing is known of when it was made");
});

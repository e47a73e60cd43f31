// The shop's books: sums that a dealer can check with a pencil, months without holes, currencies apart.
import fc from "fast-check";
import {expect, test} from "vitest";
import {bookTheShop, shopBooksSchema, type ShopGarment} from "../../../worth/index.ts";
import {moneyStorySchema} from "../../../worth/model.ts";

const usd = (cents: number) => ({cents, currency: "USD"});
const today = "2026-06-01";
const garment = (id: string, over: Partial<ShopGarment>): ShopGarment => ({id, number: id, kind: "trousers", maker: "marrowfield", year: 1966, paid: usd(5_000), asked: null, money: null, offered: true, ...over});

const shop: readonly ShopGarment[] = [
  garment("a", {money: moneyStorySchema.parse({boughtOn: "2026-01-10", costs: [{what: "cleaning", amount: usd(800), on: "2026-01-12"}], listedOn: "2026-01-20", sold: {on: "2026-03-10", price: usd(20_000), fees: usd(2_000), postage: usd(600), channel: "auction"}})}),
  garment("b", {kind: "jacket", maker: null, year: null, paid: usd(9_000), asked: usd(20_000), money: moneyStorySchema.parse({boughtOn: "2026-01-15", listedOn: "2026-02-01"})}),
  garment("c", {paid: null, money: moneyStorySchema.parse({sold: {on: "2026-03-20", price: usd(4_000), channel: ""}})}),
  garment("d", {kind: "shirt", paid: {cents: 3_000, currency: "EUR"}, money: moneyStorySchema.parse({boughtOn: "2026-02-02"})}),
  garment("e", {paid: usd(100), asked: {cents: 9_000, currency: "EUR"}}),
  garment("f", {paid: usd(1_000), offered: false, money: moneyStorySchema.parse({boughtOn: "2025-12-01"})}),
];

test("the books are the sums that a pencil makes", () => {
  const books = shopBooksSchema.parse(bookTheShop(shop, {today, from: null, until: null}));
  expect(books.books.map(({currency}) => currency)).toEqual(["EUR", "USD"]);
  const dollars = books.books[1]!;
  expect(dollars).toMatchObject({spent: 15_000, laidOut: 3_400, taken: 24_000, profit: 11_600, margin: 0.58, tied: 9_000, unknownPaid: 1});
  expect(dollars.byKind).toEqual([
    {name: "trousers", bought: 3, sold: 2, paid: 5_000, costs: 3_400, taken: 24_000, profit: 11_600, margin: 0.58, days: 59},
    {name: "jacket", bought: 1, sold: 0, paid: 0, costs: 0, taken: 0, profit: 0, margin: null, days: null},
  ]);
  expect(dollars.byDecade.map(({name}) => name)).toEqual(["1960s", "not dated"]);
  expect(dollars.months.map(({month, bought, sold, taken}) => [month, bought, sold, taken])).toEqual([["2025-12", 1, 0, 0], ["2026-01", 2, 0, 0], ["2026-02", 0, 0, 0], ["2026-03", 0, 2, 24_000]]);
  expect(dollars.slow).toEqual([{id: "b", number: "b", kind: "jacket", days: 120, usual: null, paid: 9_000, asked: 20_000}]);
  expect(books.notes.join(" ")).toContain("1 garments have amounts of several currencies");
});

test("a stretch of time counts only what falls into it", () => {
  const [, dollars] = bookTheShop(shop, {today, from: "2026-03-15", until: "2026-03-31"}).books;
  expect(dollars).toMatchObject({spent: 0, laidOut: 0, taken: 4_000, profit: 0, unknownPaid: 1});
  expect(dollars!.months.length).toBe(1);
});

test("kinds, makers and decades each add up to the whole, and so do the months", () => {
  const day = fc.integer({min: 0, max: 700}).map((n) => new Date(Date.UTC(2024, 6, 1) + n * 86_400_000).toISOString().slice(0, 10));
  const amount = fc.nat(50_000);
  const one = fc.record({kind: fc.constantFrom("trousers", "jacket"), maker: fc.constantFrom("marrowfield", null), year: fc.constantFrom(1955, 1968, null), paid: amount, cost: amount, bought: day, sold: fc.option(fc.record({on: day, price: amount, fees: amount}))});
  fc.assert(
    fc.property(fc.array(one, {maxLength: 20}), (list) => {
      const rack = list.map(({kind, maker, year, paid, cost, bought, sold}, i) =>
        garment(`g${i}`, {kind, maker, year, paid: usd(paid), money: moneyStorySchema.parse({boughtOn: bought, costs: [{what: "mending", amount: usd(cost)}], sold: sold && {on: sold.on, price: usd(sold.price), fees: usd(sold.fees)}})}));
      for (const book of bookTheShop(rack, {today, from: null, until: null}).books) {
        for (const accounts of [book.byKind, book.byMaker, book.byDecade]) {
          expect(accounts.reduce((sum, {profit}) => sum + profit, 0)).toBe(book.profit);
          expect(accounts.reduce((sum, {taken}) => sum + taken, 0)).toBe(book.taken);
        }
        for (const key of ["spent", "laidOut", "taken", "profit"] as const) expect(book.months.reduce((sum, month) => sum + month[key], 0)).toBe(book[key]);
      }
    }),
  );
});

// What cannot be of a sale is told all at once, in a dealer's words.
import {expect, test} from "vitest";
import {checkSale} from "../../worth/index.ts";
import {saleSchema, type Sale} from "../../worth/model.ts";

const today = "2026-06-01";
const sale = (over: Partial<Sale>) => saleSchema.parse({soldOn: "2026-05-01", price: {cents: 10_000, currency: "USD"}, kind: "jacket", ...over});
const codes = (over: Partial<Sale>) => checkSale(sale(over), "line 3", today).map(({code, at}) => `${at} ${code}`);

test("a sale that can be has nothing wrong with it", () => {
  expect(codes({fees: {cents: 1_000, currency: "USD"}, madeFrom: "1966-01", madeUntil: "1966-12"})).toEqual([]);
});

test("each thing that cannot be has its word", () => {
  expect(codes({price: {cents: 10_000, currency: "XQZ"}})).toEqual(["line 3.price sale/currency"]);
  expect(codes({price: {cents: 0, currency: "USD"}})).toEqual(["line 3.price sale/price"]);
  expect(codes({price: {cents: -5, currency: "USD"}})).toEqual(["line 3.price sale/price"]);
  expect(codes({price: {cents: 1_000_000_100, currency: "USD"}})).toEqual(["line 3.price sale/absurd-price"]);
  expect(codes({price: {cents: 900_000_000, currency: "JPY"}})).toEqual([]);
  expect(codes({fees: {cents: -1, currency: "USD"}})).toEqual(["line 3.fees sale/negative-fees"]);
  expect(codes({fees: {cents: 10_001, currency: "USD"}})).toEqual(["line 3.fees sale/fees-above-price"]);
  expect(codes({fees: {cents: 1, currency: "EUR"}})).toEqual(["line 3.fees sale/mixed-currencies"]);
  expect(codes({soldOn: "2026-06-02"})).toEqual(["line 3.soldOn sale/later"]);
  expect(codes({soldOn: "1899-12-31"})).toEqual(["line 3.soldOn sale/long-ago"]);
  expect(codes({madeFrom: "1968-03", madeUntil: "1968-02"})).toEqual(["line 3.madeUntil sale/made-reversed"]);
  expect(codes({madeFrom: "2026-06"})).toEqual(["line 3.madeFrom sale/made-after-sold"]);
  expect(codes({kind: "  "})).toEqual(["line 3.kind sale/no-kind"]);
});

test("everything wrong is told at once", () => {
  expect(codes({price: {cents: 0, currency: "USD"}, fees: {cents: -2, currency: "USD"}, soldOn: "2030-01-01", kind: ""}).length).toBe(4);
});

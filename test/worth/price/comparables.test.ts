// Which sales count: those that can, in money of today; the others are counted with the reason.
import {expect, test} from "vitest";
import {cpiUs} from "../../../worth/index/cpi-us.ts";
import {makeComparables} from "../../../worth/index.ts";
import {saleSchema, type Sale} from "../../../worth/model.ts";
import {close} from "../../helper/close.ts";

let made = 0;
const kept = (over: Partial<Sale>, more: {removed?: boolean; garment?: string} = {}) => ({
  id: `s${made++}`, garment: more.garment ?? null, removed: more.removed ?? false,
  sale: saleSchema.parse({soldOn: "2026-05-01", price: {cents: 10_000, currency: "USD"}, kind: "jacket", ...over}),
});
const today = "2026-06-01";

test("sales that cannot be used are left out by reason; removed ones without a word", () => {
  const sales = [
    ...Array.from({length: 20}, () => kept({})), kept({price: {cents: 9_000, currency: "EUR"}}), kept({price: {cents: 0, currency: "USD"}}), kept({soldOn: "2026-06-02"}), kept({madeFrom: "1970-01", madeUntil: "1960-01"}),
    kept({price: {cents: 10_000_000, currency: "USD"}}), kept({}, {removed: true}),
  ];
  const {size, leftOut} = makeComparables(sales, {currency: "USD", today});
  expect(size).toBe(20);
  expect(new Map(leftOut.map(({why, count}) => [why, count]))).toEqual(new Map([
    ["in another currency than USD", 1], ["without a price above nothing", 1], ["sold after today", 1], ["made until before made from", 1], ["priced far from all others of their kind: look for a slip of the pen", 1],
  ]));
});

// Source of the two index values: US Bureau of Labor Statistics, CPI-U, June 2022 296.311 and May 2026 335.123 (the last one known).
test("prices count in money of today by the index of their currency, and as they were paid without one", () => {
  const old = [kept({soldOn: "2022-06-10"})];
  const {columns, index} = makeComparables(old, {currency: "USD", today});
  expect(index).toBe(cpiUs);
  close(Math.exp(columns.log[0]!), (10_000 * 335.123) / 296.311, {rel: 1e-12});
  const plain = makeComparables(old, {currency: "USD", today, index: null});
  close(Math.exp(plain.columns.log[0]!), 10_000, {rel: 1e-12});
});

test("kinds and makers are the same whatever their case", () => {
  const {columns} = makeComparables([kept({kind: "Jacket ", maker: "Marrowfield"}), kept({kind: "jacket", maker: "marrowfield"})], {currency: "USD", today});
  expect([columns.kind[0], columns.maker[0]]).toEqual([columns.kind[1], columns.maker[1]]);
});

// The demo's shop: always the same invented sales; prices are alive from the start and say that they rest on invented ones; with sales of one's own it is no demo any more.
import {readFileSync} from "node:fs";
import {expect, test} from "vitest";
import {demoGarments, demoShop} from "../../rulebooks/load.ts";
import {demoShopText} from "../../scripts/demo/shop-text.ts";
import {hangDemo, isDemoOnly} from "../../server/demo.ts";
import {checkSale, type WorthAnswer} from "../../worth/index.ts";
import type {Sale} from "../../worth/model.ts";
import type {SalePage} from "../../store/model.ts";
import {testApp} from "./test-app.ts";

const now = "2026-11-05T00:00:00.000Z";

test("the file of the demo's shop is what its story makes", () => {
  expect(readFileSync(new URL("../../rulebooks/demo/shop.json", import.meta.url), "utf8")).toBe(demoShopText());
});

test("every invented sale can be, says that it is invented, and none stands twice; every story is of a garment of the demo", () => {
  const {sales, garments} = demoShop() as {sales: Sale[]; garments: object};
  expect(sales.length).toBeGreaterThanOrEqual(150);
  for (const sale of sales) expect([sale.note, checkSale(sale, "sale", "2026-11-05")]).toEqual(["Invented for the demo.", []]);
  expect(new Set(sales.map((sale) => JSON.stringify(sale))).size).toBe(sales.length);
  const numbers = demoGarments().map(({garment}) => garment);
  expect(Object.keys(garments).filter((number) => !numbers.includes(number))).toEqual([]);
});

test("a fresh rack has sales to price by, of both kinds; and each price says that invented ones are among them", async () => {
  const t = testApp();
  const {store} = t.options;
  const ids = await hangDemo(store, demoGarments(), now, demoShop());
  const {total} = await t.expectJson<SalePage>(200, "GET", "/api/sales");
  const {total: own} = await t.expectJson<SalePage>(200, "GET", "/api/sales?own=true");
  expect([own > 3, total - own]).toEqual([true, demoShop().sales.length]);
  expect(await isDemoOnly(store, ids.length)).toBe(true);
  const answer = await t.expectJson<WorthAnswer>(200, "POST", "/api/worth", {content: {garment: {garment: "x", type: "trousers", saw: {}}}});
  expect(answer.enough).toBe(true);
  expect(answer.cautions[0]).toContain("are invented for the demo");
  await t.expectJson(201, "POST", "/api/sales", {sale: {soldOn: "2026-03-02", price: {cents: 12000, currency: "USD"}, kind: "trousers"}});
  expect(await isDemoOnly(store, ids.length)).toBe(false);
  expect(await hangDemo(store, demoGarments(), now, demoShop())).toEqual([]);
});

// Prices over HTTP: from the sales that are kept, never from the garment's own; with terms, looks, lots and the books of the shop.
import {beforeAll, expect, test} from "vitest";
import {saleSchema} from "../../worth/model.ts";
import type {LotAnswer, ShopBooks, WorthAnswer} from "../../worth/index.ts";
import {storeInMemory, testApp, type TestApp} from "./test-app.ts";

const usd = (cents: number) => ({cents, currency: "USD"});
const garment = (number: string, more: object = {}) => ({garment: {garment: number, maker: "wickerlow", type: "trousers", saw: {label: "grey-tape", rows: ["3 8 21"]}, ...more}});
const worth = (t: TestApp, question: object, status = 200) => t.expectJson<WorthAnswer & {problems: {code: string}[]}>(status, "POST", "/api/worth", question);

/** Forty sales of trousers that get dearer the older they are. */
const sales = Array.from({length: 40}, (_, i) =>
  saleSchema.parse({soldOn: `2026-0${1 + (i % 9)}-11`, price: usd(10_000 + 3_000 * (i % 5) + (i < 20 ? 12_000 : 0)), kind: "trousers", maker: "wickerlow", madeFrom: i < 20 ? "1966-01" : "1982-01", madeUntil: i < 20 ? "1969-12" : "1985-12", grade: "good", note: String(i)}));

async function withSales(more: Parameters<typeof testApp>[0] = {}): Promise<TestApp> {
  const t = testApp(more);
  await t.options.store.saveSales(sales.map((sale) => ({id: null, base: 0, sale, who: "owner", what: "added", at: "2026-10-01T00:00:00.000Z"})));
  return t;
}

let shared: TestApp;
beforeAll(async () => void (shared = await withSales()));

test("a garment is priced by its id and by what is being written down of it alike, over its years", async () => {
  const {id} = await shared.add("1", garment("1"));
  const kept = await worth(shared, {id});
  expect(kept).toMatchObject({currency: "USD", enough: true, sales: {kind: 40, leftOut: []}, offer: {most: expect.any(Number) as number}});
  expect(kept.price!.typical).toBeGreaterThan(20_000);
  expect(await worth(shared, {content: garment("1")})).toEqual(kept);
  expect(kept.years.reduce((sum, {share}) => sum + share, 0)).toBeCloseTo(1, 6);
  const other = await worth(shared, {content: garment("2", {saw: {"zip-date": "1984"}, maker: undefined})}, 200);
  expect(other.enough).toBe(true);
});

test("what is asked brings an answer on it, and what looking further is worth", async () => {
  const open = {garment: {garment: "3", maker: "wickerlow", type: "trousers", saw: {}}};
  expect((await worth(shared, {content: open})).looks).toBeNull();
  const {offer, looks} = await worth(shared, {content: open, asked: 9_000});
  expect(offer!.atAsked).toMatchObject({asked: 9_000, buy: expect.any(Boolean) as boolean});
  expect(looks!.looks.length).toBeGreaterThan(0);
  for (const look of looks!.looks) expect(look.worth).toBeLessThanOrEqual(looks!.knowing + 1);
});

test("other terms hold for one question; saved ones for all", async () => {
  const t = await withSales();
  const usual = await worth(t, {content: garment("1")});
  const wanting = await worth(t, {content: garment("1"), terms: {margin: 0.7}});
  expect(wanting.offer!.most).toBeLessThan(usual.offer!.most);
  expect(await worth(t, {content: garment("1"), terms: {}})).toEqual(usual);
  await t.expectJson(200, "PUT", "/api/settings/terms", {base: 0, value: {margin: 0.7}});
  expect((await worth(t, {content: garment("1")})).offer!.most).toBe(wanting.offer!.most);
  await worth(t, {content: garment("1"), terms: {margin: 3}}, 422);
});

test("a garment that is sold counts for others at once, and never for itself", async () => {
  const t = await withSales();
  const [one, two] = [await t.add("1", garment("1")), await t.add("2", garment("2"))];
  const before = await worth(t, {id: one.id});
  await t.expectJson(200, "POST", `/api/garments/${one.id}/sold`, {base: 1, on: "2026-11-01", price: usd(38_000)});
  const itself = await worth(t, {id: one.id});
  expect([itself.price!.typical, itself.used.some(({id}) => id === one.id)]).toEqual([before.price!.typical, false]);
  const other = await worth(t, {id: two.id});
  expect(other.sales.kind).toBe(41);
  expect(other.used.some(({id}) => id === one.id)).toBe(true);
  await t.expectJson(200, "DELETE", `/api/garments/${one.id}?base=2`);
  expect((await worth(t, {id: two.id})).sales.kind).toBe(40);
});

test("a sale that was written down and is told by a garment, too, counts once", async () => {
  const t = await withSales();
  await t.expectJson(201, "POST", "/api/sales", {sale: {soldOn: "2026-11-01", price: usd(20_000), kind: "trousers"}});
  const one = await t.add("1", garment("1"));
  await t.expectJson(200, "POST", `/api/garments/${one.id}/sold`, {base: 1, on: "2026-11-01", price: usd(20_000)});
  const other = await worth(t, {content: garment("2")});
  expect(other.sales.kind).toBe(41);
  // For the garment itself neither of the two counts.
  expect((await worth(t, {id: one.id})).used.every(({soldOn}) => soldOn !== "2026-11-01")).toBe(true);
});

test("sales that another program writes down count at once", async () => {
  const store = storeInMemory();
  const [here, there] = [await withSales({store}), testApp({store})];
  expect((await worth(here, {content: garment("1")})).sales.kind).toBe(40);
  const {id} = await there.expectJson<{id: string}>(201, "POST", "/api/sales", {sale: {soldOn: "2026-10-01", price: usd(20_000), kind: "trousers"}});
  expect((await worth(here, {content: garment("1")})).sales.kind).toBe(41);
  await there.expectJson(200, "DELETE", `/api/sales/${id}?base=1`);
  expect((await worth(here, {content: garment("1")})).sales.kind).toBe(40);
});

test("too few sales, another currency, or no such kind are told instead of a price", async () => {
  const t = await withSales();
  await t.expectJson(201, "POST", "/api/sales", {sale: {soldOn: "2026-10-01", price: {cents: 20_000, currency: "EUR"}, kind: "trousers"}});
  expect((await worth(t, {content: garment("1")})).sales.leftOut).toEqual([{why: "in another currency than USD", count: 1}]);
  const euro = await worth(t, {content: garment("1"), terms: {currency: "EUR"}});
  expect(euro).toMatchObject({currency: "EUR", enough: false, price: null, offer: null, sales: {leftOut: [{why: "in another currency than EUR", count: 40}]}});
  expect((await worth(t, {content: garment("1", {type: "hat"})})).words[0]).toContain("No sales of hat");
});

test("a garment that cannot be dated is priced as one of unknown time", async () => {
  const {id} = await shared.add("odd", garment("odd", {saw: {"no-such-mark": "x"}}));
  expect(await worth(shared, {id})).toMatchObject({enough: true, branches: expect.any(Array) as unknown[]});
});

test("nothing to price, and no such garment, are refused", async () => {
  expect((await worth(shared, {}, 422)).problems.map(({code}) => code)).toEqual(["worth/nothing-to-price"]);
  expect((await worth(shared, {id: "nothing0here0"}, 404)).problems.map(({code}) => code)).toEqual(["rack/no-garment"]);
  await worth(shared, {content: garment("1"), asked: -5}, 422);
});

test("a lot is the sum of its garments with its spread, the same whenever it is asked", async () => {
  const ids = [];
  for (const number of ["a", "b", "c"]) ids.push((await shared.add(number, garment(number))).id);
  const lot = (question: object, status = 200) => shared.expectJson<LotAnswer & {problems: {code: string}[]}>(status, "POST", "/api/worth/lot", question);
  const three = await lot({ids, asked: 10_000});
  expect(three.garments.map(({id}) => id)).toEqual(ids);
  const each = three.garments.reduce((sum, {typical}) => sum + typical!, 0);
  expect(Math.abs(three.total!.typical - each) / each).toBeLessThan(0.15);
  const more = await lot({ids, unexamined: 10, sampled: [ids[0]]});
  expect(more.total!.typical).toBeGreaterThan(3 * three.total!.typical);
  expect(await lot({ids, unexamined: 10, sampled: [ids[0]]})).toEqual(more);
  expect((await lot({ids: [ids[0], ids[0]], sampled: [ids[1]]}, 422)).problems.map(({code}) => code)).toEqual(["worth/lot-twice", "worth/not-in-lot"]);
  expect((await lot({ids: ["nothing0here0"]}, 404)).problems.map(({code}) => code)).toEqual(["rack/no-garment"]);
});

test("the books of the shop tell what was bought, laid out and sold; what is off the rack or not sold after all does not count", async () => {
  const t = testApp();
  const money = {boughtOn: "2026-02-01", costs: [{what: "washing", amount: usd(500), on: "2026-02-03"}], listedOn: "2026-02-10"};
  const sold = {on: "2026-03-01", price: usd(9_000), fees: usd(900)};
  const {id} = await t.add("1", {...garment("1"), paid: usd(3_000), money});
  await t.expectJson(200, "POST", `/api/garments/${id}/sold`, {base: 1, ...sold});
  await t.add("2", {...garment("2"), paid: usd(2_000), money, standing: "for sale"});
  await t.add("3", {...garment("3"), paid: usd(1_000), standing: "for sale", money: {...money, sold}});
  const gone = await t.add("4", {...garment("4"), paid: usd(7_000), money, standing: "sold"});
  await t.expectJson(200, "DELETE", `/api/garments/${gone.id}?base=1`);
  const {books: [book]} = await t.expectJson<ShopBooks>(200, "GET", "/api/shop");
  expect(book).toMatchObject({currency: "USD", spent: 6_000, taken: 9_000, profit: 9_000 - 900 - 500 - 3_000, byKind: [{name: "trousers", bought: 3, sold: 1}], slow: [{number: expect.any(String) as string}, {}]});
  expect((await t.expectJson<ShopBooks>(200, "GET", "/api/shop?from=2026-04-01")).books[0]).toMatchObject({taken: 0, spent: 0});
  expect((await t.expectJson<{problems: {code: string}[]}>(422, "GET", "/api/shop?from=2026-04-01&until=2026-03-01")).problems.map(({code}) => code)).toEqual(["worth/span-reversed"]);
});

test("money that cannot be is refused when a garment is saved, and what is kept already is not looked at again", async () => {
  const t = testApp();
  const refused = async (more: object) => (await t.expectJson<{problems: {at: string; code: string}[]}>(422, "POST", "/api/garments", {content: {...garment("1"), ...more}})).problems.map(({at, code}) => `${at} ${code}`);
  expect(await refused({paid: {cents: 5, currency: "ABC"}})).toEqual(["paid money/unknown-currency"]);
  expect(await refused({money: {boughtOn: "2031-01-01", costs: [{what: "x", amount: usd(-1)}]}})).toEqual(["money.costs #1 money/below-nothing", "money.boughtOn money/day-ahead"]);
  const old = {...garment("1"), paid: {cents: 5, currency: "ABC"}};
  const [kept] = await t.options.store.saveAll([{id: null, base: 0, content: {...(await t.add("0")).content, ...old} as never, who: "owner", what: "imported", at: "2020-01-01T00:00:00.000Z"}]);
  await t.expectJson(200, "PUT", `/api/garments/${kept!.saved!.id}`, {base: 1, content: {...kept!.saved!.content, place: "attic"}});
});

// Sales over HTTP: written down, changed, removed and put back; brought in all or none, with every problem by its line; handed out and read back.
import {parse} from "csv-parse/sync";
import {expect, test} from "vitest";
import type {SalePage} from "../../store/model.ts";
import type {Sale, SaleRecord} from "../../worth/model.ts";
import {testApp, type TestApp} from "./test-app.ts";

interface Imported {
  readonly columns?: readonly {readonly name: string; readonly target: string | null; readonly samples: readonly string[]}[];
  readonly ready: number;
  readonly problems: readonly {readonly code: string; readonly at: string}[];
  readonly rows: readonly {readonly line: number; readonly sale: Sale}[];
  readonly ids: readonly string[];
}

const usd = (cents: number) => ({cents, currency: "USD"});
const sale = (more: object = {}) => ({soldOn: "2026-03-02", price: usd(12000), kind: "trousers", ...more});
const page = (t: TestApp, query = "") => t.expectJson<SalePage>(200, "GET", `/api/sales${query}`);
const add = (t: TestApp, more: object = {}) => t.expectJson<SaleRecord>(201, "POST", "/api/sales", {sale: sale(more)});
const bringIn = (t: TestApp, text: string, more: object = {}, status = 200) => t.expectJson<Imported>(status, "POST", "/api/sales/import", {format: "csv", text, ...more});
const codes = ({problems}: {readonly problems: readonly {readonly code: string; readonly at: string}[]}) => problems.map(({at, code}) => `${at} ${code}`);

test("a sale is written down, shown, changed, removed, put back, and tells its history", async () => {
  const t = testApp();
  const {id} = await add(t, {maker: "wickerlow", grade: "good"});
  expect(await t.expectJson(200, "GET", `/api/sales/${id}`)).toMatchObject({rev: 1, garment: null, sale: {maker: "wickerlow", grade: "good", fees: null, note: ""}});
  await t.expectJson(200, "PUT", `/api/sales/${id}`, {base: 1, sale: sale({price: usd(13000)})});
  const refused = await t.expectJson(409, "PUT", `/api/sales/${id}`, {base: 1, sale: sale({price: usd(14000)})});
  expect(refused).toMatchObject({problems: [{code: "sale/saved-between"}], now: {rev: 2}, base: {price: usd(12000)}});
  expect(await t.expectJson(200, "DELETE", `/api/sales/${id}?base=2`)).toMatchObject({removed: true, rev: 3});
  expect((await page(t)).total).toBe(0);
  expect((await page(t, "?removed=true")).total).toBe(1);
  expect(await t.expectJson(200, "POST", `/api/sales/${id}/put-back`, {base: 3})).toMatchObject({removed: false, rev: 4, sale: {price: usd(13000)}});
  expect((await t.expectJson<{what: string}[]>(200, "GET", `/api/sales/${id}/history`)).map(({what}) => what)).toEqual(["added", "changed", "removed", "put back"]);
  for (const path of ["/api/sales/nothing0here0", "/api/sales/nothing0here0/history"]) await t.expectJson(404, "GET", path);
  await t.expectJson(404, "DELETE", "/api/sales/nothing0here0?base=1");
});

test("what cannot be of a sale is refused with a word on each", async () => {
  const t = testApp();
  const cases: [object, string][] = [
    [{price: usd(0)}, "sale/price"], [{price: usd(-5)}, "sale/price"], [{price: usd(9e11)}, "sale/absurd-price"], [{price: {cents: 5, currency: "ABC"}}, "sale/currency"],
    [{soldOn: "2031-01-01"}, "sale/later"], [{fees: usd(-1)}, "sale/negative-fees"], [{fees: {cents: 5, currency: "EUR"}}, "sale/mixed-currencies"], [{fees: usd(13000)}, "sale/fees-above-price"],
    [{kind: " "}, "sale/no-kind"], [{madeFrom: "1970-01", madeUntil: "1960-01"}, "sale/made-reversed"],
  ];
  for (const [more, code] of cases) expect([more, (await t.expectJson<Imported>(422, "POST", "/api/sales", {sale: sale(more)})).problems.map((problem) => problem.code)]).toEqual([more, [code]]);
  expect((await page(t)).total).toBe(0);
});

test("the same sale is not kept twice, unless a note tells two like ones apart", async () => {
  const t = testApp();
  const {id} = await add(t);
  expect(codes(await t.expectJson<Imported>(422, "POST", "/api/sales", {sale: sale()}))).toEqual(["sale sale/kept-already"]);
  await add(t, {note: "the second of two"});
  await t.expectJson(200, "PUT", `/api/sales/${id}`, {base: 1, sale: sale()});
});

test("the sale of a garment on the rack is listed, is no one else's to write down, and is changed on the garment", async () => {
  const t = testApp();
  const garment = await t.add("0147", {garment: {garment: "0147", maker: "wickerlow", type: "trousers", saw: {label: "grey-tape"}}});
  const sold = await t.expectJson<{rev: number; content: {standing: string}}>(200, "POST", `/api/garments/${garment.id}/sold`, {base: garment.rev, on: "2026-03-02", price: usd(12000), channel: "market stall"});
  expect(sold).toMatchObject({rev: 2, content: {standing: "sold", money: {sold: {on: "2026-03-02", price: usd(12000), channel: "market stall"}}}});
  expect((await page(t, "?own=true")).rows).toMatchObject([{id: garment.id, garment: garment.id, sale: {kind: "trousers", maker: "wickerlow"}}]);
  expect(codes(await t.expectJson<Imported>(422, "POST", "/api/sales", {sale: sale()}))).toEqual(["sale sale/on-the-rack"]);
  expect(codes(await t.expectJson<Imported>(422, "PUT", `/api/sales/${garment.id}`, {base: 2, sale: sale({note: "x"})}))).toEqual(["id sale/of-garment"]);
  expect(codes(await t.expectJson<Imported>(422, "DELETE", `/api/sales/${garment.id}?base=2`))).toEqual(["id sale/of-garment"]);
  expect(codes(await t.expectJson<Imported>(422, "POST", `/api/garments/${garment.id}/sold`, {base: 2, on: "2026-03-03", price: usd(1)}))).toEqual(["id money/sold-already"]);
  await t.expectJson(409, "POST", `/api/garments/${garment.id}/sold`, {base: 1, on: "2026-03-03", price: usd(1)});
});

test("a garment is not sold for nothing, ahead of time, or before it was bought, and nothing of that is kept", async () => {
  const t = testApp();
  const {id, rev} = await t.add("1", {money: {boughtOn: "2026-02-01"}});
  const refused = async (more: object) => codes(await t.expectJson<Imported>(422, "POST", `/api/garments/${id}/sold`, {base: rev, on: "2026-03-01", price: usd(100), ...more}));
  expect(await refused({price: usd(0)})).toEqual(["money.sold.price sale/price"]);
  expect(await refused({on: "2031-01-01"})).toEqual(["money.sold.soldOn sale/later"]);
  expect(await refused({on: "2026-01-31"})).toEqual(["money.sold.on money/sold-before-bought"]);
  expect(await refused({postage: {cents: 5, currency: "EUR"}})).toEqual(["money.sold.postage money/other-postage"]);
  expect(await t.expectJson(200, "GET", `/api/garments/${id}`)).toMatchObject({rev, content: {standing: "to examine"}});
  expect((await page(t)).total).toBe(0);
});

const table = "sold on,price,kind,maker,made from,grade,weather\n2026-03-14,180.00 USD,Trousers,wickerlow,1966-1969,Good,fair\n14.2.2026,\"1.250,50 EUR\",jacket,-,1960s,,\n";

test("trying a table of sales out says what its columns are taken as and saves nothing; then it is taken over whole", async () => {
  const t = testApp();
  const tried = await bringIn(t, table);
  expect(tried.columns!.map(({target}) => target)).toEqual(["soldOn", "price", "kind", "maker", "madeFrom", "grade", null]);
  expect(codes(tried)).toEqual(["mapping weather sale/no-such-entry"]);
  const mapped = await bringIn(t, table, {mapping: {weather: ""}});
  expect(mapped).toMatchObject({ready: 2, problems: [], rows: [
    {line: 2, sale: {soldOn: "2026-03-14", price: usd(18000), kind: "trousers", maker: "wickerlow", madeFrom: "1966-01", madeUntil: "1969-12", grade: "good"}},
    {line: 3, sale: {soldOn: "2026-02-14", price: {cents: 125050, currency: "EUR"}, maker: null, madeFrom: "1960-01", madeUntil: "1969-12", grade: null}},
  ]});
  expect((await page(t)).total).toBe(0);
  const done = await bringIn(t, table, {mapping: {weather: ""}, try: false});
  expect((await page(t)).rows.map(({id}) => id).sort()).toEqual([...done.ids].sort());
});

test("one bad line among many and no sale is taken over; every problem names its line", async () => {
  const t = testApp();
  await add(t, {kind: "coat", soldOn: "2026-05-01"});
  const bad = [
    "soldOn,price,kind,made from,grade,fees,note",
    "2026-03-14,180 USD,trousers,1968,good,,",
    "3/4/2026,180 USD,trousers,,,,",
    "31/4/2026,180 USD,trousers,,,,",
    "2026-03-14,a lot,trousers,,,,",
    "2026-03-14,180,trousers,,,,",
    "2026-03-14,180 XQX,trousers,,,,",
    "2026-03-14,180 USD,trousers,long ago,nice,,",
    "2026-03-14,180 USD,trousers",
    "2027-03-14,180 USD,trousers,,,,",
    "2026-03-14,180 USD,,,,,",
    "2026-03-14,180 USD,trousers,,,200 USD,",
    "2026-05-01,120 USD,coat,,,,",
    "2026-03-14,180 USD,trousers,1968,good,,",
    "2026-03-14,,trousers,,,,",
  ].join("\r\n");
  const refused = await bringIn(t, bad, {try: false}, 422);
  expect(codes(refused)).toEqual([
    "line 3 soldOn sale/either-day",
    "line 4 soldOn sale/not-day",
    "line 5 price sale/not-price",
    "line 6 price sale/no-currency",
    "line 7 price sale/not-price",
    "line 8 madeFrom sale/not-made",
    "line 8 grade sale/not-grade",
    "line 9 batch/cell-count",
    "line 10 soldOn sale/later",
    "line 11 kind sale/no-kind",
    "line 12 fees sale/fees-above-price",
    "line 13 sale/kept-already",
    "line 14 sale/stands-twice",
    "line 15 price sale/not-price",
  ]);
  expect((await page(t)).total).toBe(1);
});

test("a currency and the order of days can be said for the whole table", async () => {
  const t = testApp();
  const text = "date,amount,what\n3/4/2026,\"1,250\",coat\n";
  const mapping = {date: "soldOn", amount: "price", what: "kind"};
  expect((await bringIn(t, text, {mapping, currency: "GBP", days: "day first"})).rows[0]!.sale).toMatchObject({soldOn: "2026-04-03", price: {cents: 125000, currency: "GBP"}});
  expect((await bringIn(t, text, {mapping, currency: "JPY", days: "month first"})).rows[0]!.sale).toMatchObject({soldOn: "2026-03-04", price: {cents: 1250, currency: "JPY"}});
  expect(codes(await bringIn(t, text, {mapping: {...mapping, what: ""}}))).toEqual(["mapping sale/no-column"]);
  expect(codes(await bringIn(t, text, {mapping: {...mapping, what: "price"}})).sort()).toEqual(["mapping rack/mapped-twice", "mapping sale/no-column"]);
  expect(codes(await bringIn(t, ""))).toEqual(["line 1 batch/empty"]);
  expect(codes(await bringIn(t, "soldOn,price,kind"))).toEqual(["text sale/nothing-to-import"]);
});

test("JSON is taken over as a list and line by line, problems by their place", async () => {
  const t = testApp();
  const good = [sale(), {id: "x", sale: sale({note: "kept elsewhere"})}];
  expect(await bringIn(t, JSON.stringify(good), {format: "json", try: false})).toMatchObject({ready: 2, problems: []});
  const refused = await bringIn(t, `${JSON.stringify(sale({kind: "coat"}))}\n{"soldOn": "yesterday"}\n{`, {format: "jsonl", try: false}, 422);
  expect([...new Set(refused.problems.map(({at}) => at.split(" ").slice(0, 2).join(" ")))]).toEqual(["line 2", "line 3"]);
  expect((await page(t)).total).toBe(2);
});

// Source: RFC 4180, by the csv-parse package; OWASP, CSV Injection.
test("sales handed out as a table read back to the same sales, and no cell can run as a formula", async () => {
  const t = testApp();
  const odd = ["=1+1", "+2", "-3", "@x", "plain, with comma", 'a "quote"', "two\nlines"];
  for (const note of odd) await add(t, {note, channel: note.replace("\n", " "), fees: usd(150), maker: "wickerlow", madeFrom: "1968-03", madeUntil: "1969-01", size: "W 34", grade: "very good", lot: "=lot"});
  const text = await (await t.ask("GET", "/api/sales/export?format=csv&sort=changed&descending=false")).text();
  const cells = (parse(text) as string[][]).slice(1);
  expect(cells).toHaveLength(odd.length);
  for (const row of cells) for (const cell of row) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
  const other = testApp();
  expect(await bringIn(other, text, {try: false})).toMatchObject({ready: odd.length, problems: []});
  const bodies = async (app: TestApp) => (await page(app, "?sort=changed&descending=false")).rows.map((row) => row.sale).sort((a, b) => (a.note < b.note ? -1 : 1));
  expect(await bodies(other)).toEqual(await bodies(t));
  for (const format of ["json", "jsonl"]) {
    const third = testApp();
    const given = await (await t.ask("GET", `/api/sales/export?format=${format}`)).text();
    await bringIn(third, given, {format, try: false});
    expect(await bodies(third)).toEqual(await bodies(t));
  }
  expect(codes(await bringIn(t, text)).every((code) => code.endsWith("sale/kept-already"))).toBe(true);
  expect(await (await t.ask("GET", "/api/sales/export?format=json&kind=nothing")).json()).toEqual([]);
});

// Tables and lists: garments out and in again without loss, mapping columns, everything that has to be mended by its line, all or nothing.
import {parse} from "csv-parse/sync";
import {expect, test} from "vitest";
import type {Content} from "../../store/model.ts";
import {testApp, type TestApp} from "./test-app.ts";

interface Imported {
  readonly columns?: readonly {readonly name: string; readonly target: string | null; readonly samples: readonly string[]}[];
  readonly ready: number;
  readonly problems: readonly {readonly code: string; readonly at: string}[];
  readonly rows: readonly {readonly line: number; readonly content: Content}[];
  readonly ids: readonly string[];
}

const total = async ({expectJson}: TestApp) => (await expectJson<{total: number}>(200, "GET", "/api/rack")).total;
const table = "garment,maker,label,rows,asked,tags,shelf\n7,wickerlow,grey-tape,3 8|21,120.00 EUR,winter|rare,4\n8,wickerlow,-,,,,\n";
const csv = (text: string, more: object = {}) => ({format: "csv", text, ...more});

test("trying a table out says what its columns are taken as and saves nothing", async () => {
  const t = testApp();
  const tried = await t.expectJson<Imported>(200, "POST", "/api/rack/import", csv(table));
  expect(tried.columns!.map(({target}) => target)).toEqual(["garment", "maker", "label", "rows", "asked", "tags", null]);
  expect(tried.columns!.at(-1)).toEqual({name: "shelf", target: null, samples: ["4"]});
  expect(tried.problems.map(({code}) => code)).toEqual(["rack/no-such-target"]);
  const mapped = await t.expectJson<Imported>(200, "POST", "/api/rack/import", csv(table, {mapping: {shelf: "place"}}));
  expect(mapped).toMatchObject({ready: 2, problems: [], rows: [{line: 2, content: {place: "4", asked: {cents: 12000, currency: "EUR"}, tags: ["winter", "rare"], garment: {saw: {label: "grey-tape", rows: ["3 8", "21"]}}}}, {line: 3, content: {garment: {garment: "8", saw: {}}}}]});
  expect(await total(t)).toBe(0);
});

test("a table without problems is taken over whole, and its garments are handed on to be dated", async () => {
  const later: string[] = [];
  const t = testApp({dateLater: (ids) => later.push(...ids)});
  const done = await t.expectJson<Imported>(200, "POST", "/api/rack/import", csv(table, {mapping: {shelf: ""}, try: false}));
  expect(await total(t)).toBe(2);
  expect(later).toEqual(done.ids);
});

test("one bad line among many and nothing is taken over; every problem names its line", async () => {
  const t = testApp();
  await t.add("9");
  const bad = [
    "garment,maker,label,rows,asked,standing",
    "1,wickerlow,grey-tape,3 8 21,,",
    "2,wickerlow,grey-tap,,,",
    "3,nobody,,,,",
    '4,wickerlow,"blue',
    "satin\",,,",
    "5,wickerlow,,3 (8/ 21,twelve,lost",
    ",wickerlow,,,,",
    "1,wickerlow,,,,",
    "9,wickerlow,,,,",
    "6,wickerlow",
    "10,wickerlow,,,5.001 EUR,",
  ].join("\r\n");
  const refused = await t.expectJson<Imported>(422, "POST", "/api/rack/import", csv(bad, {try: false}));
  expect(refused.problems.map(({at, code}) => `${at} ${code}`)).toEqual([
    "line 3 saw.label garment/unknown-value",
    "line 4 maker garment/unknown-maker",
    "line 5 saw.label garment/unknown-value",
    "line 7 asked rack/bad-money",
    "line 7 standing shape/not-one-of",
    "line 8 rack/no-number",
    "line 9 rack/number-twice",
    "line 10 rack/number-taken",
    "line 11 batch/cell-count",
    "line 12 asked rack/bad-money",
  ]);
  expect(await total(t)).toBe(1);
});

test("a mapping must name columns that are there and things a column can be, each once, and a number", async () => {
  const t = testApp();
  const problems = async (given: object) => (await t.expectJson<Imported>(200, "POST", "/api/rack/import", given)).problems.map(({code}) => code);
  expect(await problems(csv(table, {mapping: {shelf: "cupboard"}}))).toEqual(["rack/no-such-target"]);
  expect(await problems(csv(table, {mapping: {shelf: "maker"}}))).toEqual(["rack/mapped-twice"]);
  expect(await problems(csv(table, {mapping: {shelf: "", nothing: "place"}}))).toEqual(["rack/no-such-column"]);
  expect(await problems(csv(table, {mapping: {shelf: "", garment: ""}}))).toEqual(["rack/no-number-column"]);
  expect(await problems(csv(""))).toEqual(["batch/empty"]);
  expect(await problems(csv("garment,title"))).toEqual(["rack/nothing-to-import"]);
  expect(await problems({format: "json", text: "[{"})).toEqual(["rack/not-json"]);
  expect(await problems({format: "jsonl", text: '{"garment":"1"}\nnot json\n'})).toEqual(["rack/not-json"]);
});

test("amounts without a currency take the one that is given", async () => {
  const t = testApp();
  const {rows} = await t.expectJson<Imported>(200, "POST", "/api/rack/import", csv("garment;asked;paid\n1;12,5;JPY 900\n", {currency: "EUR"}));
  expect(rows[0]!.content).toMatchObject({asked: {cents: 1250, currency: "EUR"}, paid: {cents: 900, currency: "JPY"}});
});

const awkward = {
  garment: {
    garment: "=1+1", title: '+cmd|" /C calc"!A0', maker: ["wickerlow", "unlisted"], type: "trousers", note: "first line\nsecond; \"quoted\", end",
    saw: {label: {either: {"grey-tape": 3, "blue-satin": 1}}, rows: ["3 (8:80/3:20) 21", {text: "W 34", at: "back"}], "button-stamp": ["21", "38"], "hem-tape": "present"},
  },
  place: "@shelf", standing: "for sale", paid: {cents: 5, currency: "EUR"}, asked: {cents: 1200, currency: "JPY"}, tags: ["-rare", "old"],
};

test("a table read by another program holds no cell that a spreadsheet would run", async () => {
  const t = testApp();
  await t.expectJson(201, "POST", "/api/garments", {content: awkward});
  const response = await t.ask("GET", "/api/rack/export?format=csv");
  expect(response.headers.get("content-disposition")).toBe('attachment; filename="rack-2026-11-05.csv"');
  expect(response.headers.get("content-type")).toBe("text/csv; charset=utf-8");
  const records = parse(await response.text()) as string[][];
  expect(records).toHaveLength(2);
  // Source: OWASP, CSV Injection: cells must not begin with = + - @, tab or carriage return.
  expect(records.flat().filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
  expect(records[1]![0]).toBe("'=1+1");
});

test.each(["csv", "json", "jsonl"])("garments handed out as %s come in again the same elsewhere", async (format) => {
  const [here, there] = [testApp(), testApp()];
  await here.expectJson(201, "POST", "/api/garments", {content: awkward});
  await here.expectJson(201, "POST", "/api/garments", {content: {garment: {garment: "2", saw: {rows: ["3 8"]}}}});
  const text = await (await here.ask("GET", `/api/rack/export?format=${format}`)).text();
  const done = await there.expectJson<Imported>(200, "POST", "/api/rack/import", {format, text, try: false});
  expect(done.problems).toEqual([]);
  const came = await Promise.all(done.ids.map(async (id) => (await there.options.store.get(id))!.content));
  const went = (await here.options.store.walk(null, 10)).map(({content}) => ({...content, dating: null}));
  expect(came.toSorted((a, b) => (a.garment.garment < b.garment.garment ? -1 : 1))).toEqual(went.toSorted((a, b) => (a.garment.garment < b.garment.garment ? -1 : 1)));
});

test("an export holds what the query finds", async () => {
  const t = testApp();
  await t.add("1", {place: "attic"});
  await t.add("2", {place: "cellar"});
  const got = (await (await t.ask("GET", "/api/rack/export?format=json&place=attic")).json()) as Content[];
  expect(got.map(({garment}) => garment.garment)).toEqual(["1"]);
  await t.expectJson(422, "GET", "/api/rack/export?format=xls");
});

test("ten thousand lines are taken over in one step", async () => {
  const t = testApp();
  const text = `garment,maker,label\n${Array.from({length: 10_000}, (_, i) => `n${i},wickerlow,grey-tape`).join("\n")}`;
  const done = await t.expectJson<Imported>(200, "POST", "/api/rack/import", csv(text, {try: false}));
  expect(done.ids).toHaveLength(10_000);
  const again = await t.expectJson<Imported>(422, "POST", "/api/rack/import", csv(`garment\n${Array.from({length: 50_001}, (_, i) => i).join("\n")}`, {try: false}));
  expect(again.problems.map(({code}) => code)).toEqual(["rack/too-many-lines"]);
});

test("money that cannot be stops a list of garments, by line", async () => {
  const t = testApp();
  const line = (number: string, more: object) => JSON.stringify({garment: {garment: number, saw: {}}, ...more});
  const text = [line("1", {}), line("2", {paid: {cents: 5, currency: "ABC"}}), line("3", {standing: "sold", money: {sold: {on: "2031-01-01", price: {cents: 100, currency: "USD"}}}})].join("\n");
  const refused = await t.expectJson<Imported>(422, "POST", "/api/rack/import", {format: "jsonl", text, try: false});
  expect(refused.problems.map(({at, code}) => `${at} ${code}`)).toEqual(["line 2 paid money/unknown-currency", "line 3 money.sold.soldOn sale/later"]);
  expect(await total(t)).toBe(0);
});

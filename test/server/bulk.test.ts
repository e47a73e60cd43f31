// Many garments at once: edited, dated again, found to be there twice.
import {expect, test} from "vitest";
import type {GarmentRecord} from "../../store/model.ts";
import {testApp, type TestApp} from "./test-app.ts";

const lines = async (response: Response) => (await response.text()).trimEnd().split("\n").map((line) => JSON.parse(line) as Record<string, unknown>);

const some = (t: TestApp, n: number) => Promise.all(Array.from({length: n}, (_, i) => t.add(String(i + 1))));

test("a price in a currency that is none is refused for all of them", async () => {
  const t = testApp();
  const {id} = await t.add("1");
  const refused = await t.expectJson<{problems: {code: string}[]}>(422, "POST", "/api/rack/edit", {ids: [id], change: {asked: {cents: 5, currency: "ABC"}}});
  expect(refused.problems.map(({code}) => code)).toEqual(["money/unknown-currency"]);
  expect(await t.expectJson(200, "GET", `/api/garments/${id}`)).toMatchObject({rev: 1});
});

test("many garments are edited in one step", async () => {
  const t = testApp();
  const ids = (await some(t, 5)).map(({id}) => id);
  const change = {place: "attic", standing: "for sale", asked: {cents: 9000, currency: "EUR"}, addTags: ["winter", "winter"]};
  expect(await t.expectJson(200, "POST", "/api/rack/edit", {ids, change})).toEqual({changed: 5, problems: []});
  const one = await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${ids[3]}`);
  expect(one.content).toMatchObject({place: "attic", standing: "for sale", asked: {cents: 9000, currency: "EUR"}, tags: ["winter"]});
  expect(await t.expectJson(200, "POST", "/api/rack/edit", {ids: [ids[0], ids[0]], change: {removeTags: ["winter"], asked: null}})).toEqual({changed: 1, problems: []});
  expect((await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${ids[0]}`)).content).toMatchObject({tags: [], asked: null});
  expect(await t.expectJson(200, "POST", "/api/rack/edit", {ids, change: {place: "attic"}})).toEqual({changed: 0, problems: []});
});

test("when one garment cannot be edited, none is", async () => {
  const t = testApp();
  const [one, full] = [await t.add("1"), await t.add("2", {tags: Array.from({length: 40}, (_, i) => `tag ${i}`)})];
  const refused = await t.expectJson<{problems: {code: string}[]}>(422, "POST", "/api/rack/edit", {ids: [one.id, full.id], change: {addTags: ["one more"]}});
  expect(refused.problems.map(({code}) => code)).toEqual(["rack/too-many-tags"]);
  await t.expectJson(404, "POST", "/api/rack/edit", {ids: [one.id, "aaaaaaaaaaaa"], change: {place: "attic"}});
  await t.expectJson(422, "POST", "/api/rack/edit", {ids: [one.id], change: {}});
  expect((await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${one.id}`)).rev).toBe(1);
});

interface Changeable {
  edition: number;
  labels: {kinds: Record<string, {window: object}>};
  plants: {codes: Record<string, {window: object}>};
  marks: Record<string, unknown>;
}

/** Saves an edition of the test book with something changed; JSON is YAML, too. */
async function saveChanged(t: TestApp, change: (book: Changeable) => void): Promise<void> {
  const {book} = await t.expectJson<{book: Changeable}>(200, "GET", "/api/books/wickerlow/1");
  change(book);
  expect(await t.expectJson(201, "POST", "/api/books", {yaml: JSON.stringify(book)})).toMatchObject({book: "wickerlow", edition: 2, yaml: expect.stringContaining('"edition":2')});
}

test("dating again says line by line how far it is, what moved and which rule moved it; garments keep the edition they were dated with until then", async () => {
  const t = testApp();
  const {id} = await t.add("7", {garment: {garment: "7", maker: "wickerlow", saw: {label: "grey-tape", rows: ["3 8 21"]}}});
  const still = await t.add("8", {garment: {garment: "8", maker: "wickerlow", saw: {"hem-tape": "present"}}});
  await saveChanged(t, ({labels: {kinds}, plants}) => {
    kinds["grey-tape"]!.window = {ends: ["1979-06", "1980-06"]};
    kinds["blue-satin"]!.window = {begins: ["1979-06", "1980-06"]};
    plants.codes["21"]!.window = {begins: ["1976-01", "1977-01"]};
  });
  expect((await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${id}`)).content.dating!.books).toEqual([{book: "wickerlow", edition: 1}]);
  const response = await t.ask("POST", "/api/rack/redate", {});
  expect(response.headers.get("content-type")).toBe("application/x-ndjson; charset=utf-8");
  const [first, ...rest] = await lines(response);
  expect(first).toEqual({done: 0, of: 2});
  expect(rest.at(-2)).toEqual({done: 2, of: 2});
  expect(rest.at(-1)).toMatchObject({same: 1, problems: [], moved: [{id, number: "7", from: "March 1968", to: "March 1978", why: expect.stringContaining("edition 1 → 2: window of grey-tape ends 1969-06..1970-06 → 1979-06..1980-06")}]});
  const dated = await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${id}`);
  expect(dated).toMatchObject({rev: 2, content: {dating: {words: "March 1978", books: [{book: "wickerlow", edition: 2}]}}});
  expect((await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${still.id}`)).content.dating!.books).toEqual([{book: "wickerlow", edition: 2}]);
  const again = (await lines(await t.ask("POST", "/api/rack/redate", {ids: [id]}))).at(-1);
  expect(again).toEqual({moved: [], same: 1, problems: []});
  expect((await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${id}`)).rev).toBe(2);
});

test("a garment that the books in use cannot date keeps its old dating and is told", async () => {
  const t = testApp();
  const {id} = await t.add("7", {garment: {garment: "7", maker: "wickerlow", saw: {"hem-tape": "present"}}});
  await saveChanged(t, ({marks}) => delete marks["hem-tape"]);
  const result = (await lines(await t.ask("POST", "/api/rack/redate", {}))).at(-1) as {problems: {at: string}[]};
  expect(result.problems[0]!.at).toBe("garment 7 saw.hem-tape");
  expect((await t.expectJson<GarmentRecord>(200, "GET", `/api/garments/${id}`)).rev).toBe(1);
});

test("likely duplicates are found by number, photo, rows and marks, and it is said why", async () => {
  const t = testApp();
  const photo = "ab".repeat(32);
  await t.options.store.addPhoto({photo, mime: "image/jpeg", bytes: 1, width: 1, height: 1, addedAt: "2026-11-05T00:00:00.000Z"});
  const worn = (number: string, saw: object, more: object = {}) => t.add(number, {garment: {garment: number, maker: "wickerlow", saw}, ...more});
  const [a, b] = [await worn("1", {rows: ["412-0318", "3 8 21"]}), await worn("2", {rows: ["3 8 21", "4120318"]})];
  const [c, d] = [await worn("3", {}, {photos: [{photo}]}), await worn("4", {}, {photos: [{photo}]})];
  const [e, f] = [await worn("17", {}), await worn("17 ", {})];
  const six = {label: "grey-tape", "button-stamp": "21", one: "a", two: "b", three: "c", four: "d"};
  const [g, h] = [await worn("50", six), await worn("51", {...six, four: "x"})];
  await worn("60", {label: "grey-tape"});
  const found = await t.expectJson<{ids: string[]; why: string; likeness: number}[]>(200, "GET", "/api/rack/duplicates");
  const why = (...ids: string[]) => found.find((group) => group.ids.toSorted().join() === ids.toSorted().join())?.why;
  expect(why(a.id, b.id)).toMatch(/same rows of the label/);
  expect(why(c.id, d.id)).toBe("they share a photo");
  expect(why(e.id, f.id)).toBe("both carry the number 17");
  expect(why(g.id, h.id)).toBe("all marks but one are the same");
  expect(found).toHaveLength(4);
});

test("a size that many garments carry makes no duplicates of them, and the time grows with the rack alone", async () => {
  const t = testApp();
  const {store} = t.options;
  const {content} = await t.add("0");
  await store.saveAll(Array.from({length: 20_000}, (_, i) => ({
    id: null, base: 0, who: "owner", what: "added", at: "2026-11-05T00:00:00.000Z", content: {...content, garment: {garment: `n${i}`, maker: "wickerlow", saw: {rows: [`${100000 + (i % 19_999)}-77`, "W34 L32 500"], label: "grey-tape"}}},
  })));
  const start = performance.now();
  const found = await t.expectJson<{ids: string[]}[]>(200, "GET", "/api/rack/duplicates");
  expect(found.map(({ids}) => ids.length)).toEqual([2]);
  expect(performance.now() - start).toBeLessThan(5000);
});

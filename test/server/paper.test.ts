// Papers over the wire: what comes back for what is asked, and every refusal as a problem that can be mended.
import {afterAll, beforeAll, expect, test} from "vitest";
import {makeBooksUsed} from "../../server/books-used.ts";
import {rackOf} from "../../server/app.ts";
import {inThisThread} from "../../server/examiners.ts";
import {paperFiles, type PaperFiles} from "../../server/paper-files.ts";
import {makePress, type Press} from "../../server/paper-press.ts";
import {paperRoutes} from "../../server/paper-routes.ts";
import {checkAnswer} from "../../server/paper-shapes.ts";
import type {GarmentRecord} from "../../store/model.ts";
import {world} from "../commands/small-world.ts";
import {pagesOf} from "../paper/pdf-pages.ts";
import {codesIn} from "../paper/read-codes.ts";
import {storeInMemory, testApp, type TestApp} from "./test-app.ts";

let press: Press;
let files: PaperFiles;
let t: TestApp;
let one: GarmentRecord;
let two: GarmentRecord;
beforeAll(async () => {
  press = makePress();
  files = paperFiles();
  const store = storeInMemory();
  const used = makeBooksUsed(store, world.books, () => new Date(Date.UTC(2026, 10, 25)));
  const rack = async () => rackOf({store, world: await used.world(), shipped: world.books, now: "2026-11-25T12:00:00.000Z", who: "owner"}, inThisThread);
  t = testApp({store, used, more: paperRoutes({rack, press, files, readPhoto: async () => null})});
  one = await t.add("0147", {asked: {cents: 8500, currency: "EUR"}});
  two = await t.add("0149");
});
afterAll(async () => {
  await press.close();
  await files.close();
});
const post = (path: string, body: unknown) => t.ask("POST", `/api/paper/${path}`, body);
const bytesOf = async (response: Response) => new Uint8Array(await response.arrayBuffer());

test("sheets come as one PDF, drawn by the worker, with the code of each", async () => {
  const response = await post("sheet", {ids: [one.id, two.id], size: "letter"});
  expect([response.status, response.headers.get("content-type"), response.headers.get("content-disposition")]).toEqual([200, "application/pdf", 'inline; filename="dating-sheets.pdf"']);
  const pages = await pagesOf(await bytesOf(response));
  const found = (await Promise.all(pages.map(async (page) => codesIn(await page.render(2.5))))).flat();
  expect(found.map(({text}) => new URLSearchParams(text.split("?")[1]).get("i"))).toEqual([one.id, two.id]);
  const answer = await t.expectJson(200, "POST", "/api/paper/check", {code: found[1]!.text});
  expect(checkAnswer.parse(answer)).toMatchObject({result: "same", garment: {id: two.id, number: "0149"}, on: "2026-11-25"});
});

test("a sheet as a page has its look at an address of the server and photos by their addresses", async () => {
  const page = await t.ask("GET", `/api/paper/sheet/${one.id}.html?photos=2`);
  expect([page.status, page.headers.get("content-type")]).toEqual([200, "text/html; charset=utf-8"]);
  const text = await page.text();
  expect(text).toContain('<link rel="stylesheet" href="/api/paper/style.css">');
  expect(text).toContain("Dating sheet 0147-");
  // The content policy of the server refuses whatever stands in a page as style or script.
  expect(text).not.toMatch(/<style|<script| style="/);
  const style = await t.ask("GET", "/api/paper/style.css");
  expect([style.status, style.headers.get("content-type")]).toEqual([200, "text/css; charset=utf-8"]);
});

test("tags, a tag as a drawing, and a wall chart", async () => {
  const tags = await post("tags", {ids: [one.id, two.id], format: "ticket", code: "bars", size: "a4"});
  const [page] = await pagesOf(await bytesOf(tags));
  expect((await codesIn(await page!.render(4))).map(({text}) => text).sort()).toEqual(["0147", "0149"]);
  const tag = await t.ask("GET", `/api/paper/tag/${one.id}?format=stub&price=false`);
  expect([tag.status, tag.headers.get("content-type")]).toEqual([200, "image/svg+xml"]);
  expect(await tag.text()).not.toContain("85.00");
  const chart = await t.ask("GET", "/api/paper/chart/wickerlow?size=a2");
  expect((await pagesOf(await bytesOf(chart)))[0]!.width).toBeGreaterThan(1190);
});

test("listing text in its three forms, and by a template that is tried", async () => {
  const plain = await t.ask("GET", `/api/paper/listing/${one.id}`);
  expect([plain.status, plain.headers.get("content-type")]).toEqual([200, "text/plain; charset=utf-8"]);
  expect(await plain.text()).toMatch(/^No\. 0147\n/);
  expect(await (await t.ask("GET", `/api/paper/listing/${one.id}?form=markdown`)).text()).toMatch(/^# /);
  expect(JSON.parse(await (await t.ask("GET", `/api/paper/listing/${one.id}?form=json`)).text())).toMatchObject({"@type": "Product", sku: "0147"});
  const tried = await post("listing", {id: one.id, template: {intro: "No. {number}!", blocks: []}});
  expect(await tried.text()).toMatch(/^No\. 0147!/);
  await t.expectJson(200, "PUT", "/api/settings/listing-template", {base: 0, value: {outro: "Thanks from {number}."}});
  expect(await (await t.ask("GET", `/api/paper/listing/${one.id}`)).text()).toContain("Thanks from 0147.");
});

test("many papers come with a line for each, then a file that is fetched by its name", async () => {
  for (const [what, mime] of [["sheet", "application/pdf"], ["tags", "application/pdf"], ["listing", "text/plain; charset=utf-8"]] as const) {
    const lines = (await (await post("batch", {what, ids: [one.id, two.id]})).text()).trim().split("\n").map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines.slice(0, 2)).toEqual([{done: 1, of: 2}, {done: 2, of: 2}]);
    expect(lines[2]).toMatchObject({problems: []});
    const file = await t.ask("GET", `/api/paper/file/${String(lines[2]!.file)}`);
    expect([file.status, file.headers.get("content-type"), (await file.arrayBuffer()).byteLength]).toEqual([200, mime, lines[2]!.bytes]);
  }
});

test("what cannot be made is refused with what to do", async () => {
  const refusal = async (response: Response) => [response.status, ((await response.json()) as {problems: {code: string}[]}).problems[0]!.code];
  expect(await refusal(await post("sheet", {ids: ["zzzzzzzzzzzzzzzz"]}))).toEqual([404, "rack/no-garment"]);
  expect((await post("sheet", {ids: []})).status).toBe(422);
  expect((await post("sheet", {ids: [one.id], size: "a5"})).status).toBe(422);
  expect((await post("tags", {ids: [one.id], format: "round"})).status).toBe(422);
  expect((await post("listing", {id: one.id, template: {intro: "{nonsense}"}})).status).toBe(422);
  expect(await refusal(await t.ask("GET", "/api/paper/chart/nobody"))).toEqual([404, "input/unknown-book"]);
  expect(await refusal(await post("check", {code: "hello"}))).toEqual([422, "paper/not-code"]);
  expect(await refusal(await post("check", {code: "AAAA-BBBB-CCCC", number: "9999", on: "2026-11-25"}))).toEqual([404, "paper/no-such-garment"]);
  for (const name of ["gone-000000000000.pdf", "..%2F..%2Fpackage.json", "%2Fetc%2Fpasswd"]) expect((await t.ask("GET", `/api/paper/file/${name}`)).status, name).toBe(404);
  expect((await t.ask("GET", "/api/paper/sheet/passwd.html")).status).toBe(422);
  expect(t.faults).toEqual([]);
});

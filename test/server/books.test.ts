// Rule books over the wire: those in use, their editions, checking, saving and comparing.
import {expect, test} from "vitest";
import {printBook} from "../../rulebooks/print-book.ts";
import {shippedBooks} from "../../rulebooks/load.ts";
import {validateBook} from "../../rulebooks/validate.ts";
import type {Book} from "../../engine/index.ts";
import {testApp} from "./test-app.ts";

const edition = (t: ReturnType<typeof testApp>, n = 1) => t.expectJson<{book: Book; yaml: string}>(200, "GET", `/api/books/wickerlow/${n}`);

test("the books in use come with a tag that changes when an edition is saved", async () => {
  const t = testApp();
  const first = await t.ask("GET", "/api/books/used");
  const tag = first.headers.get("etag")!;
  expect((await first.json()) as Book[]).toMatchObject([{book: "wickerlow", edition: 1}]);
  expect((await t.ask("GET", "/api/books/used", undefined, {"if-none-match": tag})).status).toBe(304);
  const {yaml} = await edition(t);
  await t.expectJson(201, "POST", "/api/books", {yaml: yaml.replace("Wickerlow Overall Works", "Wickerlow Works")});
  const second = await t.ask("GET", "/api/books/used", undefined, {"if-none-match": tag});
  expect(second.status).toBe(200);
  expect((await second.json()) as Book[]).toMatchObject([{book: "wickerlow", edition: 2}]);
});

test("saving makes a new edition with the next free number, whatever number the text carried, and touches nothing else of it", async () => {
  const t = testApp();
  const {yaml} = await edition(t);
  const text = `# my notes\n${yaml.replace("edition: 1", "edition:   7   # mine")}`;
  const saved = await t.expectJson<{edition: number; yaml: string}>(201, "POST", "/api/books", {yaml: text});
  expect(saved).toMatchObject({book: "wickerlow", edition: 2, savedBy: "owner", yaml: text.replace("edition:   7", "edition:   2")});
  expect((await edition(t, 2)).yaml).toBe(saved.yaml);
  expect(await t.expectJson(201, "POST", "/api/books", {yaml: text})).toMatchObject({edition: 3});
  expect(await t.expectJson(200, "GET", "/api/books")).toMatchObject([{book: "wickerlow", edition: 3, own: true, editions: [1, 2, 3]}]);
});

test("two who save at the same moment get two editions", async () => {
  const t = testApp();
  const {yaml} = await edition(t);
  const saved = await Promise.all([1, 2, 3].map(() => t.expectJson<{edition: number}>(201, "POST", "/api/books", {yaml})));
  expect(saved.map((one) => one.edition).sort()).toEqual([2, 3, 4]);
});

test("a book that needs mending is checked with all its problems, and not saved", async () => {
  const t = testApp();
  const {yaml} = await edition(t);
  const bad = yaml.replace("kind: presence", "kind: sometimes").replace("title: Wickerlow", "titel: Wickerlow");
  const checked = await t.expectJson<{problems: {at: string}[]; book: null}>(200, "POST", "/api/books/check", {yaml: bad});
  expect(checked.problems.length).toBeGreaterThan(1);
  expect(checked).toMatchObject({book: null});
  await t.expectJson(422, "POST", "/api/books", {yaml: bad});
  expect(await t.expectJson(200, "POST", "/api/books/check", {yaml})).toMatchObject({problems: [], book: {book: "wickerlow"}});
  expect(await t.expectJson(200, "GET", "/api/books")).toMatchObject([{edition: 1, own: false}]);
});

test("a book of the owner's own stands beside the others", async () => {
  const t = testApp();
  const {yaml} = await edition(t);
  expect(await t.expectJson(201, "POST", "/api/books", {yaml: yaml.replace("book: wickerlow", "book: my-own")})).toMatchObject({book: "my-own", edition: 1});
  expect(await t.expectJson(200, "GET", "/api/books")).toMatchObject([{book: "wickerlow", own: false}, {book: "my-own", own: true}]);
});

test("two editions are compared in sentences; unknown ones are not found", async () => {
  const t = testApp();
  const {yaml} = await edition(t);
  await t.expectJson(201, "POST", "/api/books", {yaml: yaml.replace("inside: 0.9", "inside: 0.8")});
  const changes = await t.expectJson<{says: string}[]>(200, "GET", "/api/books/wickerlow/compare/1/2");
  expect(changes.map(({says}) => says)).toEqual(["edition 1 → 2", "inside of hem-tape 0.9 → 0.8"]);
  await t.expectJson(404, "GET", "/api/books/wickerlow/compare/1/9");
  await t.expectJson(404, "GET", "/api/books/nobody/1");
  await t.expectJson(422, "GET", "/api/books/wickerlow/first");
});

test("an edition that today's program can no longer read is passed over for an older one", async () => {
  const t = testApp();
  const {yaml} = await edition(t);
  await t.expectJson(201, "POST", "/api/books", {yaml});
  await t.options.store.addEdition({book: "wickerlow", edition: 3, title: "?", yaml: "book: [", savedAt: "2026-11-05T00:00:00.000Z", savedBy: "owner"});
  await t.options.store.setSetting("books.saved", "by another program");
  expect((await (await t.ask("GET", "/api/books/used")).json()) as Book[]).toMatchObject([{edition: 2}]);
});

test("every book that comes with the tool reads back from its printed text to the same book", () => {
  for (const book of shippedBooks().books!) expect(validateBook(printBook(book), book.book).book).toEqual(book);
});

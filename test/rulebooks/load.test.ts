// Loading: a folder is one book or none, problems name the subject file, and the books that come with the tool are sound.
import {mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {dirname, join} from "node:path";
import {afterEach, beforeEach, describe, expect, test} from "vitest";
import {loadBook, loadBooks, loadGarment, shippedBooks} from "../../rulebooks/load.ts";

const head = `book: facts
title: Facts
edition: 1
kind: public
covers: { from: 1900-01 }
sources: { law: { kind: law, title: A law } }
places: { label: { name: label, look: Look inside., effort: 1 } }
`;
const care = `subject: Care
marks:
  symbol: { kind: presence, name: symbols, place: label, source: { ref: law, how: read }, window: {}, inside: 0.9, outside: 0.01 }
  code: { kind: coded, name: code, place: label, source: { ref: law, how: read }, schemes: [week, uk.post.code] }
schemes:
  week: { name: week, parts: [{ week: padded }], window: {}, source: { ref: law, how: read } }
groups:
  together: { marks: [symbol, code, uk.post.town], temper: 0.5 }
`;
const post = `subject: Post
sources: { post: { kind: published, title: A list } }
marks:
  town: { kind: presence, name: town, place: label, source: { ref: post, how: read }, window: {}, inside: 0.9, outside: 0.01 }
schemes:
  code: { name: year, parts: [{ year: two figures }], window: {}, source: { ref: post, how: read } }
`;

let folder: string;
const write = (files: Record<string, string>) => {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), {recursive: true});
    writeFileSync(join(folder, name), text);
  }
};
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "book-"));
});
afterEach(() => rmSync(folder, {recursive: true}));

describe("a folder of subject files", () => {
  test("is one book; paths come before the names of marks, schemes and groups, short names point inside the file first", () => {
    write({"book.yaml": head, "us/care/label.yaml": care, "uk/post.yaml": post, "README.md": "not a rule"});
    const {book} = loadBook(folder);
    expect(Object.keys(book!.marks).sort()).toEqual(["uk.post.town", "us.care.label.code", "us.care.label.symbol"]);
    expect(Object.keys(book!.schemes).sort()).toEqual(["uk.post.code", "us.care.label.week"]);
    expect(book!.marks["us.care.label.code"]).toMatchObject({schemes: ["us.care.label.week", "uk.post.code"]});
    expect(book!.groups).toEqual({"us.care.label.together": {marks: ["us.care.label.symbol", "us.care.label.code", "uk.post.town"], temper: 0.5}});
    expect(Object.keys(book!.sources)).toEqual(["law", "post"]);
  });

  test("with a broken subject file does not load at all", () => {
    write({"book.yaml": head, "us/care/label.yaml": care.replace("symbols", "symbols: [")});
    const checked = loadBook(folder);
    expect(checked.book).toBeUndefined();
    expect(checked.problems?.[0]?.at).toContain("us/care/label.yaml:3:");
  });

  test("tells every problem of every file, with file and line", () => {
    write({"book.yaml": head.replace("edition: 1", "edition: one"), "a.yaml": care.replace("inside: 0.9", "inside: 9"), "b.yaml": post.replace("subject: Post", "subjekt: Post")});
    const column = care.split("\n")[2]!.indexOf("0.9") + 1;
    expect(loadBook(folder).problems?.map(({at, code}) => `${at.replace(`${folder}/`, "")} ${code}`)).toEqual([
      "book.yaml:3:10 edition shape/wrong-kind",
      `a.yaml:3:${column} marks.symbol.inside shape/out-of-range`,
      "b.yaml:1:1 shape/missing",
      "b.yaml:1:1 subjekt shape/unknown-name",
    ]);
  });

  test("names the subject file and its own path when files contradict each other", () => {
    write({"book.yaml": head, "us/care.yaml": care.replace("ref: law", "ref: lore"), "uk/post.yaml": post});
    const [problem] = loadBook(folder).problems!;
    const column = care.split("\n")[2]!.indexOf("law") + 1;
    expect(problem?.at).toBe(`${join(folder, "us/care.yaml")}:3:${column} marks.symbol.source.ref`);
    expect(problem?.what).toContain('no source "lore"');
  });

  test("refuses a name that two files give away, however the path comes about", () => {
    write({"book.yaml": head, "uk.yaml": post.replace("  town:", "  post.town:").replace("post: {", "other: {").replaceAll("ref: post", "ref: other"), "uk/post.yaml": post, "us/care.yaml": care});
    expect(loadBook(folder).problems?.map(({code, what}) => `${code} ${what.split(" stands")[0]}`)).toEqual(['book/in-two-files the mark "uk.post.town"']);
    write({"uk/again.yaml": "subject: Again\nsources: { law: { kind: law, title: A law } }\n"});
    expect(loadBook(folder).problems?.map(({what}) => what.split(" stands")[0])).toContain('the source "law"');
  });

  test("refuses file names that cannot be part of a rule's name", () => {
    write({"book.yaml": head, "Care Label.yaml": "subject: x", "care.yml": "subject: x"});
    expect(loadBook(folder).problems?.map(({code}) => code)).toEqual(["book/bad-file-name", "book/bad-file-name"]);
  });

  test("needs a head", () => {
    write({"us/care/label.yaml": care});
    expect(loadBook(folder).problems?.map(({code}) => code)).toEqual(["book/no-head"]);
  });

  test("does not follow links in a circle", () => {
    write({"book.yaml": head});
    symlinkSync(folder, join(folder, "again"));
    expect(loadBook(folder).problems).toBeUndefined();
  });
});

test("what cannot be opened is a problem, not an exception", () => {
  write({"wide.yaml": "a".repeat(2_000_001)});
  expect(loadBook(join(folder, "none.yaml")).problems?.[0]?.code).toBe("file/not-found");
  expect(loadBook(join(folder, "wide.yaml")).problems?.[0]?.code).toBe("file/too-large");
  expect(loadBook(join(folder, "wide.yaml", "below")).problems?.[0]?.code).toBe("file/not-found");
  expect(loadGarment(folder).problems?.[0]?.code).toBe("file/not-readable");
  expect(loadBook("/dev/null").problems?.[0]?.code).toBe("file/not-readable");
});

test("a garment is read from YAML and from JSON", () => {
  write({"a.yaml": 'garment: "1"\nsaw: { rows: "38 21", zip: brass, rivets: true }\n', "a.json": '{"garment": "1", "saw": {"rows": "38 21", "zip": "brass", "rivets": true}}'});
  const [yaml, json] = ["a.yaml", "a.json"].map((name) => loadGarment(join(folder, name)).garment);
  expect(yaml).toEqual({garment: "1", saw: {rows: ["38 21"], zip: "brass", rivets: "present"}});
  expect(json).toEqual(yaml);
});

test("two books of one name are not used together", () => {
  write({"a.yaml": head, "b.yaml": head});
  expect(loadBooks([join(folder, "a.yaml"), join(folder, "b.yaml")]).problems?.map(({code}) => code)).toEqual(["book/two-of-a-name"]);
});

test("the books that come with the tool load without a problem, the public one first", () => {
  const {books, problems} = shippedBooks();
  expect(problems).toBeUndefined();
  expect(books?.[0]?.kind).toBe("public");
  expect(books?.slice(1).every(({kind}) => kind === "maker")).toBe(true);
});

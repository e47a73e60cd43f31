// A book in reading order: every dated rule of it is there, with its window in words and its source.
import {expect, test} from "vitest";
import {datedRules} from "../../../rulebooks/dated-rules.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";
import {findIn, sayWindowAloud, sectionsOf} from "../../../web/book/section.ts";

const books = shippedBooks().books!;

test.each(books.map((book) => [book.book, book] as const))("every dated rule of %s stands in a section, with a source that the book has", (_, book) => {
  const rules = sectionsOf(book).flatMap(({rules}) => rules);
  const keys = new Set(rules.map(({key}) => key));
  expect(datedRules(book).filter(({path}) => !keys.has(path.slice(0, -1).join(".")))).toEqual([]);
  expect(rules.filter(({source}) => source === null)).toEqual([]);
});

test("a window is said with its soft ends, and a hard end in one month", () => {
  expect(sayWindowAloud({begins: ["1968-03", "1968-09"], ends: ["1977-01", "1977-01"]})).toBe("first seen March 1968, usual from September 1968; to January 1977");
  expect(sayWindowAloud({})).toBe("at any time");
});

test("a search keeps the marks that speak of all the words, and only the rules that do", () => {
  const sections = sectionsOf(books.find(({book}) => book === "marrowfield")!);
  const found = findIn(sections, "satin green");
  expect(found.length).toBeGreaterThan(0);
  expect(found.flatMap(({rules}) => rules).every((rule) => /satin/i.test(JSON.stringify(rule)) || /satin/i.test(JSON.stringify(found)))).toBe(true);
  expect(findIn(sections, "no such word at all")).toEqual([]);
});

// Specimens pass when a reading lies within what they must read as; with the engine's reader, those of the shipped books do.
import {readFileSync} from "node:fs";
import {expect, test} from "vitest";
import {printDay} from "../../engine/month/month.ts";
import type {Book} from "../../engine/rule/schema.ts";
import {loneScheme, readCode} from "../../engine/scheme/code.ts";
import {shippedBooks} from "../../rulebooks/load.ts";
import {checkSpecimens} from "../../rulebooks/specimens.ts";
import {validateBook} from "../../rulebooks/validate.ts";

const text = readFileSync(new URL("../bad/none.yaml", import.meta.url), "utf8");
const bookOf = (specimens: string): Book => {
  const {book, problems} = validateBook(text.replace('reads: { "0368": 1968-03 }', specimens), "book.yaml");
  expect(problems).toBeUndefined();
  return book!;
};
const march = {from: "1968-03-01", until: "1968-03-31"};
const week = {from: "1968-03-25", until: "1968-03-31"};
const turn = {from: "1968-03-25", until: "1968-04-02"};

test.each([
  ["a month, read as that month", '"1": 1968-03', [march], []],
  ["a month, read as a week in it", '"1": 1968-03', [week], []],
  ["a month, one of several readings", '"1": 1968-03', [{from: "1958-03-01", until: "1958-03-31"}, march], []],
  ["a month, read as a week that leaves it", '"1": 1968-03', [turn], ["scheme/specimen-astray"]],
  ["two months, read as a week across them", '"1": 1968-03..1968-04', [turn], []],
  ["a day, read as that day", '"1": 1968-03-09', [{from: "1968-03-09", until: "1968-03-09"}], []],
  ["a day, read as its month", '"1": 1968-03-09', [march], ["scheme/specimen-astray"]],
  ["days, read as a week in them", '"1": 1968-03-20..1968-03-31', [week], []],
  ["a month, not read", '"1": 1968-03', [], ["scheme/specimen-unread"]],
])("%s", (_, specimen, readings, codes) => {
  expect(checkSpecimens(bookOf(`reads: { ${specimen} }`), () => readings).map(({code}) => code)).toEqual(codes);
});

test("a specimen under never reads must have no reading, and the message says which it had", () => {
  const [problem] = checkSpecimens(bookOf('never reads: ["1368"]'), () => [march]);
  expect(problem).toMatchObject({code: "scheme/specimen-reads", at: "schemes.month-year.never reads #1", what: 'the specimen "1368" reads as 1968-03-01..1968-03-31'});
  expect(checkSpecimens(bookOf('never reads: ["1368"]'), () => [])).toEqual([]);
});

test.each(["1968", "1968-3", "1968-02-30", "1968-04..1968-03", "1968-03..", "1968-03...1968-04", "1968-03-00"])("%s is no month, day or span", (span) => {
  const {problems} = validateBook(text.replace("1968-03 }", `"${span}" }`), "book.yaml");
  expect(problems?.map(({code}) => code)).toEqual(["scheme/specimen-span"]);
});

test("every specimen of the shipped books reads, or does not, as it says", () => {
  const books = shippedBooks().books!;
  const problems = books.flatMap((book) =>
    checkSpecimens(book, (scheme, code) => readCode(loneScheme(scheme), code).flatMap(({spans}) => spans.map(({from, until}) => ({from: printDay(from), until: printDay(until)})))),
  );
  expect(problems).toEqual([]);
  expect(books.flatMap(({schemes}) => Object.values(schemes)).length).toBeGreaterThan(5);
});

// Wall charts: every label kind, code and place of a book can be read on one page of the wanted size.
import {expect, test} from "vitest";
import {month} from "../../../engine/index.ts";
import {layOut} from "../../../paper/chart/lay-out.ts";
import {textBlock} from "../../../paper/chart/blocks.ts";
import {sayParts, specimens} from "../../../paper/chart/scheme-words.ts";
import {printChart} from "../../../paper/print.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";
import {today} from "../material.ts";
import {pagesOf} from "../pdf-pages.ts";

const books = shippedBooks().books!;
const maker = books.find(({book}) => book === "marrowfield")!;
const options = {on: today, author: ""};
const flat = (text: string) => text.replace(/[\s\ufffe-]+/g, "").toLowerCase();

test.each([["a3", 842, 1191], ["a2", 1191, 1684]] as const)("on %s a maker's book takes one page and leaves nothing out", async (size, width, height) => {
  const pages = await pagesOf(await printChart(maker, month(2026, 11), size, options));
  expect(pages).toHaveLength(1);
  expect(Math.abs(pages[0]!.width - width)).toBeLessThan(1);
  expect(Math.abs(pages[0]!.height - height)).toBeLessThan(1);
  const text = flat(pages[0]!.text);
  const said = [
    maker.title, ...Object.values(maker.labels!.kinds).map(({name}) => name), ...Object.values(maker.schemes).flatMap(({name, reads}) => [name, ...Object.keys(reads)]),
    ...Object.entries(maker.plants!.codes).map(([code, {name}]) => `${code} ${name}`), ...Object.values(maker.places).filter(({name}) => name !== "").slice(0, 4).map(({look}) => look), "March 1968", "cloth", "INSP",
  ];
  for (const one of said) expect(text, one).toContain(flat(one));
});

test("a book of many facts goes on over sheets that say so, each fact once", async () => {
  const pages = await pagesOf(await printChart(books.find(({kind}) => kind === "public")!, month(2026, 11), "a3", options));
  expect(pages.length).toBeGreaterThan(1);
  pages.forEach((page, i) => expect(page.text).toContain(`Sheet ${i + 1} of ${pages.length}`));
});

test("schemes are said part by part, and their specimens with what they mean", () => {
  expect(sayParts([{month: "plain"}, {text: " "}, {year: "last figure"}])).toBe("month from 1 to 12, a gap, then last figure of the year");
  expect(sayParts([{quarter: "letters"}, {digits: [2, 4]}])).toBe("quarter as A to D and 2 to 4 figures that say nothing of the date");
  expect(sayParts([{month: {A: 1, B: 2}}, {"fiscal year": "two figures"}, {letters: 1}])).toBe("a sign for the month: A 1, B 2, two figures of the fiscal year, which begins in October, then 1 letter that say nothing of the date");
  expect(specimens({reads: {"3 8": "1968-03", "8C": "1958-07..1958-09"}})).toEqual([{code: "3 8", means: "March 1968"}, {code: "8C", means: "Jul to Sep 1958"}]);
});

test("blocks fill columns from the top, headings stay with what they stand above, and type is as large as fits", () => {
  const of = (count: number) => (width: number) => Array.from({length: count}, (_, i) => textBlock(`line ${i}`, width, {bold: i % 5 === 0, keep: i % 5 === 0}));
  const room = {width: 800, height: 600, column: 300};
  const few = layOut(of(20), room);
  const many = layOut(of(150), room);
  expect(few.pages).toBe(1);
  expect(few.scale).toBeGreaterThan(many.scale);
  for (const {placed, scale} of [few, many]) {
    for (const [i, {block, x, y}] of placed.entries()) {
      expect(y + block.height * scale).toBeLessThanOrEqual(room.height + 1e-6);
      if (block.keep) expect(placed[i + 1]).toMatchObject({x});
    }
  }
  expect(layOut(of(2000), room).pages).toBeGreaterThan(1);
});

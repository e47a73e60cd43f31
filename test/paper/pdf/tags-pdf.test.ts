// Hang tags: codes read off the rendered page by an outside reader, in every format and on both pages; nothing leaves its tag.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {tagCodes} from "../../../commands/paper/choices.ts";
import {pageSizes, tagFormats, tagsOn} from "../../../commands/paper/tag-format.ts";
import {mm} from "../../../paper/draw/svg-page.ts";
import {printTags} from "../../../paper/print.ts";
import {drawTag} from "../../../paper/tag/draw-tag.ts";
import {composeTag, type Tag} from "../../../paper/tag/tag.ts";
import {contentOf, today} from "../material.ts";
import {pagesOf} from "../pdf-pages.ts";
import {codesIn} from "../read-codes.ts";

const tag = (number: string, more: Partial<Tag> = {}): Tag => ({shop: "Tannery Row", number, title: "Straight-leg trousers, worn label", made: "March 1968", sure: "estimate, 77 in 100", facts: ["size W 34 L 32", "good"], price: "85.00 EUR", ...more});
const tags = ["0147", "0149", "H-2026/118", "7"].map((number) => tag(number));

const ways = tagFormats.flatMap(({id}) => tagCodes.flatMap((code) => (["a4", "letter"] as const).map((size) => [id, code, size] as const)));
test.each(ways)("tags %s with %s on %s carry the numbers", async (format, code, size) => {
  const pages = await pagesOf(await printTags(tags, {format, code, size}, {on: today, author: ""}));
  const found = (await Promise.all(pages.map(async (page) => codesIn(await page.render(300 / 72))))).flat();
  expect(found.map(({text}) => text).sort()).toEqual(tags.map(({number}) => number).sort());
  if (code === "qr") expect(found.every((one) => one.format === "QRCode")).toBe(true);
  else expect(found.filter((one) => one.format === "Code128").map(({text}) => text)).toEqual(expect.arrayContaining(["0147", "0149", "7"]));
  const text = pages.map((page) => page.text).join(" ");
  for (const {number, price} of tags) for (const said of [number, price]) expect(text).toContain(said);
  expect(text).toContain("March 1968");
});

test("a number that bars cannot hold is carried by a square code", async () => {
  const [page] = await pagesOf(await printTags([tag("Nº 47 – Źdźbło")], {format: "hand", code: "bars", size: "a4"}, {on: today, author: ""}));
  expect(await codesIn(await page!.render(4))).toEqual([{format: "QRCode", text: "Nº 47 – Źdźbło"}]);
});

test("as many tags as a page holds go on it, the next begins another, and each page keeps 10 mm at its edges", async () => {
  for (const format of tagFormats) {
    for (const size of ["a4", "letter"] as const) {
      const {columns, rows, left, top} = tagsOn(format, pageSizes[size]);
      expect(Math.min(left, top)).toBeGreaterThanOrEqual(10);
      expect(left + columns * format.width).toBeLessThanOrEqual(pageSizes[size].width - 10 + 1e-9);
      expect(top + rows * format.height).toBeLessThanOrEqual(pageSizes[size].height - 10 + 1e-9);
    }
  }
  const {columns, rows} = tagsOn(tagFormats[0]!, pageSizes.a4);
  const pages = await pagesOf(await printTags(Array.from({length: columns * rows + 1}, (_, i) => tag(String(1000 + i))), {format: "hand", code: "qr", size: "a4"}, {on: today, author: ""}));
  expect(pages.map(({text}) => text.match(/Tannery Row/g)?.length)).toEqual([columns * rows, 1]);
});

test("whatever is written on a tag, its words begin inside and the number and price always stand", () => {
  const said = fc.string({maxLength: 120}).filter((text) => text.isWellFormed());
  const any = fc.record({shop: said, number: fc.string({minLength: 1, maxLength: 100}).filter((text) => text.trim() !== "" && text.isWellFormed()), title: said, made: said, sure: said, facts: fc.array(said, {maxLength: 2}), price: fc.constantFrom("", "1250.00 USD", "999999999.99 EUR")});
  fc.assert(fc.property(any, fc.constantFrom(...tagFormats), fc.constantFrom(...tagCodes), (given, format, code) => {
    const {inside} = drawTag(given, format, code);
    for (const [, x, y] of inside.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"/g)) {
      expect(Number(x)).toBeGreaterThanOrEqual(0);
      expect(Number(x)).toBeLessThan(mm(format.width));
      expect(Number(y)).toBeGreaterThan(0);
      expect(Number(y)).toBeLessThanOrEqual(mm(format.height));
    }
    if (given.price !== "") expect(inside).toContain(`>${given.price}<`);
  }), {numRuns: 60});
});

test("a tag says what is kept: how sure the date is, and no price when it is left out or none is asked", () => {
  const content = contentOf("0147");
  const dating = {at: "", books: [], kind: "one date" as const, words: "the 1970s", sentence: "", sureness: "likely" as const, probability: 0.91, best: "1974-01", noEarlier: "1970-01", noLater: "1979-12", maker: null, plant: null, odd: 0, years: {first: 1970, shares: [1]}};
  expect(composeTag({...content, dating}, {shop: "", grade: "good", price: true})).toMatchObject({made: "The 1970s", sure: "estimate, 91 in 100", facts: ["size W 34 L 32", "good"], price: "85.00 EUR"});
  expect(composeTag({...content, dating: {...dating, kind: "cannot tell"}}, {shop: "", grade: null, price: false})).toMatchObject({made: "not dated", sure: "", price: ""});
  expect(composeTag({...content, dating: {...dating, kind: "two dates", words: "made 1998, in the look of 1955"}, asked: null}, {shop: "", grade: null, price: true})).toMatchObject({made: "Made 1998, in the look of 1955", sure: "a later one in an older look, 91 in 100", price: ""});
});

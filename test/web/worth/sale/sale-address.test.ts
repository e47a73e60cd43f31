// Which sales are shown stands in the address, and any address shows something.
import fc from "fast-check";
import {expect, test} from "vitest";
import {grades} from "../../../../state/model.ts";
import {saleQuerySchema, saleSorts} from "../../../../store/model.ts";
import {allSales, readSaleAddress, saleFiltersSet, writeSaleAddress, writeSaleQuestion, type SaleView} from "../../../../web/worth/sale/sale-address.ts";

const words = fc.option(fc.string({minLength: 1, maxLength: 20}));
const day = fc.option(fc.integer({min: 0, max: 30_000}).map((days) => new Date(days * 86_400_000).toISOString().slice(0, 10)));
const view: fc.Arbitrary<SaleView> = fc.record({
  text: fc.string({maxLength: 40}), kind: words, maker: words, grade: fc.option(fc.constantFrom(...grades)), channel: words, from: day, until: day, own: fc.option(fc.boolean()), removed: fc.boolean(), sort: fc.constantFrom(...saleSorts), descending: fc.boolean(),
});

test("an address reads back to what it was written from", () => {
  fc.assert(fc.property(view, (one) => void expect(readSaleAddress(writeSaleAddress(one))).toEqual(one)));
});

test("all sales have an empty address", () => expect(writeSaleAddress(allSales)).toBe(""));

test("what is none of our words is left aside", () => {
  fc.assert(fc.property(fc.webQueryParameters(), (search) => void expect(() => saleQuerySchema.omit({offset: true, limit: true}).parse(readSaleAddress(search))).not.toThrow()));
  expect(readSaleAddress("?from=then&until=2026-02-31&sort=colour&grade=fine&own=perhaps")).toEqual(allSales);
});

test("the question carries the page, and filters are counted without words and sorting", () => {
  expect(new URLSearchParams(writeSaleQuestion({...allSales, own: false}, 200, 100)).toString()).toBe("own=false&offset=200&limit=100");
  expect(saleFiltersSet({...allSales, text: "zip", sort: "price", descending: false, kind: "jacket", own: true})).toBe(2);
});

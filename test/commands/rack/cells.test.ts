// Cells of a rack's table: money and marks, out and in without loss.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {isFormula} from "../../../commands/batch/cells.ts";
import {printRows, printSeen, readRows, readSeen} from "../../../commands/rack/table/mark-cell.ts";
import {printMoney, readMoney} from "../../../commands/rack/table/money-cell.ts";
import {garmentSchema} from "../../../engine/rule/garment.ts";

// Figures behind the point; source: ISO 4217, minor units: JPY 0, EUR 2, KWD 3.
test.each([
  ["120.00 EUR", 12000, "EUR"],
  ["0.05 EUR", 5, "EUR"],
  ["900 JPY", 900, "JPY"],
  ["1.250 KWD", 1250, "KWD"],
])("%s is %i of the smallest unit of %s, both ways", (text, cents, currency) => {
  expect(readMoney(text, null)).toEqual({cents, currency});
  expect(printMoney({cents, currency})).toBe(text);
});

test("a currency may stand before, in small letters, or be left out when it is known; the decimal sign may be a comma", () => {
  expect(readMoney("eur 12,5", null)).toEqual({cents: 1250, currency: "EUR"});
  expect(readMoney(" 12 ", "USD")).toEqual({cents: 1200, currency: "USD"});
});

test.each(["12", "EUR", "12.345 EUR", "1,000.00 EUR", "1.5 JPY", "EUR 5 USD", "-5 EUR", "5 E", "about 90 EUR", "12.0.0 EUR", ""])("“%s” is no amount", (text) => {
  expect(readMoney(text, null)).toBeNull();
});

test("any amount is read back as it was printed, and no cell of it could run as a formula", () => {
  fc.assert(fc.property(fc.integer({min: 0, max: 1e12}), fc.constantFrom("EUR", "USD", "JPY", "KWD", "XXX"), (cents, currency) => {
    const text = printMoney({cents, currency});
    expect(isFormula(text)).toBe(false);
    if (cents <= 9_999_999_999) expect(readMoney(text, null)).toEqual({cents, currency});
  }));
});

const word = fc.oneof(fc.string({maxLength: 12}), fc.constantFrom("-", "", "a|b", "[x", '{"a":1}', '"', " x ", "3 (8/3) 21", "=1+1", "present"));
const weights = fc.record({either: fc.dictionary(fc.string({minLength: 1, maxLength: 4}).filter((key) => key !== "__proto__"), fc.double({min: 0, max: 9, noNaN: true}), {minKeys: 1, maxKeys: 3})});
const seen = fc.oneof(word, fc.array(word, {minLength: 1, maxLength: 4}), weights);

test("whatever was seen at a mark is read back from its cell the same", () => {
  fc.assert(fc.property(seen, (value) => {
    const {saw} = garmentSchema.parse({garment: "1", saw: {mark: value}});
    expect(readSeen(printSeen(saw.mark))).toEqual(saw.mark);
  }));
});

test("whatever rows were printed are read back from their cell the same", () => {
  const row = fc.oneof(word, fc.record({text: word, at: fc.constantFrom("face" as const, "back" as const)}), fc.record({cells: fc.array(fc.constantFrom("3", " ", {either: {"8": 1}}), {maxLength: 4})}));
  fc.assert(fc.property(fc.array(row, {minLength: 1, maxLength: 4}), (rows) => {
    const {saw} = garmentSchema.parse({garment: "1", saw: {rows}});
    expect(readRows(printRows(saw.rows!))).toEqual(saw.rows);
  }));
});

test("an empty cell and a dash were not looked at", () => {
  expect([readSeen(""), readSeen("-"), readRows(""), readRows("-")]).toEqual([undefined, undefined, undefined, undefined]);
});

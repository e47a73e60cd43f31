// Money is read as it is written, in the forms of many languages, and never leaves whole smallest units.
import fc from "fast-check";
import {expect, test} from "vitest";
import {currencies, digitsOf} from "../../../worth/money/currencies.ts";
import {readAmount, sayAmount, typeAmount} from "../../../web/worth/money.ts";

const currency = fc.constantFrom("USD", "EUR", "GBP", "JPY", "CHF", "KWD", "INR", "HUF", "CLF", "CLP");
const locale = fc.constantFrom("en-US", "de-DE", "de-CH", "fr-FR", "en-IN", "ja-JP", "sv-SE", "pl-PL", "es-ES", "pt-BR");
const cents = fc.oneof(fc.integer({min: 0, max: 1_000_000}), fc.integer({min: 0, max: 1e12}));

test("what a field shows is read back as the same amount, in any language and currency", () => {
  fc.assert(fc.property(cents, fc.constantFrom(...currencies), locale, (n, code, where) => void expect(readAmount(typeAmount({cents: n, currency: code}, where), code, where)).toEqual({cents: n, wrong: null})));
});

test("an amount copied from where it is shown is read back as the same amount", () => {
  fc.assert(fc.property(cents, currency, locale, (n, code, where) => void expect([sayAmount({cents: n, currency: code}, where), readAmount(sayAmount({cents: n, currency: code}, where), code, where)]).toEqual([expect.any(String), {cents: n, wrong: null}])));
});

test("whatever is typed is an amount in whole smallest units, nothing, or told to be wrong", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[$€-]?[\d.,' ]{0,14}( [a-zA-Z]{0,3})?$/)), currency, locale, (text, code, where) => {
      const {cents: n, wrong} = readAmount(text, code, where);
      expect(n === null || (Number.isSafeInteger(n) && n >= 0 && n <= 1e12)).toBe(true);
      expect(wrong === null || (n === null && wrong.length > 5)).toBe(true);
      expect(n === null && wrong === null).toBe(text.trim() === "");
    }),
  );
});

test.each([
  ["1250", "USD", "en-US", 125000], ["1,250", "USD", "en-US", 125000], ["1.250", "USD", "en-US", 125000], ["1,250.5", "USD", "en-US", 125050], ["1.250,50", "EUR", "en-US", 125050], ["12,50", "EUR", "en-US", 1250],
  ["$ 89.5", "USD", "en-US", 8950], ["89.50 usd", "USD", "en-US", 8950], [".5", "USD", "en-US", 50], ["1,25,000", "INR", "en-IN", 12500000], ["1'250.05", "CHF", "de-CH", 125005], ["1 250,50 €", "EUR", "fr-FR", 125050],
  ["1,250", "JPY", "ja-JP", 1250], ["1.250", "KWD", "en-US", 1250], ["1,250", "KWD", "en-US", 1250000], ["1,250", "KWD", "de-DE", 1250], ["120.", "USD", "en-US", 12000],
])("%s %s (%s) is %i of the smallest unit", (text, code, where, expected) => expect(readAmount(text, code, where)).toEqual({cents: expected, wrong: null}));

test.each([["12.50", "JPY"], ["12.55", "CLP"], ["1.2.3", "USD"], ["12 50", "USD"], ["12,34,5", "USD"], ["-5", "USD"], ["5-", "USD"], ["much", "USD"], ["12 EUR", "USD"], ["12.345,678", "USD"], ["9999999999999", "USD"], ["1e3", "USD"], ["0x12", "USD"]])("%s %s is told to be wrong", (text, code) =>
  expect(readAmount(text, code, "en-US")).toMatchObject({cents: null, wrong: expect.any(String)}),
);

test("whole amounts are said without cents, others with all figures of their currency", () => {
  expect([sayAmount({cents: 25000, currency: "USD"}, "en-US"), sayAmount({cents: 25050, currency: "USD"}, "en-US"), sayAmount({cents: 1250, currency: "JPY"}, "en-US"), sayAmount({cents: -1250, currency: "USD"}, "en-US")]).toEqual(["$250", "$250.50", "¥1,250", "-$12.50"]);
  expect(digitsOf("HUF")).toBe(2);
  expect(sayAmount({cents: 1250, currency: "HUF"}, "en-US")).toMatch(/12\.50/);
});

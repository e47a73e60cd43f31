// The shop's terms are read back as they were typed; what cannot stand is told beside its field.
import fc from "fast-check";
import {expect, test} from "vitest";
import {termsSchema, type Terms} from "../../../../worth/model.ts";
import {readShare, typeShare} from "../../../../web/worth/share-text.ts";
import {readTerms, typeTerms} from "../../../../web/worth/terms/terms-entry.ts";

const part = (most: number) => fc.integer({min: 0, max: most * 10_000}).map((n) => n / 10_000);
const cents = fc.integer({min: 0, max: 10_000_000});
const terms: fc.Arbitrary<Terms> = fc
  .record({currency: fc.constantFrom("USD", "JPY", "KWD"), margin: part(0.95), feeShare: part(0.9), feeFixed: cents, postage: cents, taxShare: part(0.9), cleaning: cents, daysToSell: fc.integer({min: 0, max: 3650}), yearlyCost: part(2), room: part(0.9)})
  .filter(({margin, feeShare, taxShare}) => margin + feeShare + taxShare < 1);

test("terms are read back as they were", () => {
  fc.assert(fc.property(terms, (one) => void expect(readTerms(typeTerms(one))).toEqual({terms: one, slips: {}})));
  expect(() => termsSchema.parse(readTerms(typeTerms(termsSchema.parse({}))).terms)).not.toThrow();
});

test("every slip is told at once", () => {
  const {terms: read, slips} = readTerms({...typeTerms(termsSchema.parse({})), currency: "ABC", margin: "96", feeShare: "much", postage: "-1", daysToSell: "4000"});
  expect(read).toBeNull();
  expect(Object.keys(slips).sort()).toEqual(["currency", "daysToSell", "feeShare", "margin", "postage"]);
});

test("margin, fees and tax that leave nothing to buy with are refused", () => {
  expect(readTerms({...typeTerms(termsSchema.parse({})), margin: "60", feeShare: "20", taxShare: "20"})).toMatchObject({terms: null, slips: {margin: expect.stringMatching(/nothing would be left/)}});
});

test("parts of a hundred are typed with a point or a comma, with or without their sign", () => {
  expect(["12.5", "12,5 %", "0", "", "100"].map((text) => readShare(text, 1).share)).toEqual([0.125, 0.125, 0, 0, 1]);
  expect(["-1", "12.345", "101", "x"].map((text) => readShare(text, 1).share)).toEqual([null, null, null, null]);
  expect(typeShare(0.129)).toBe("12.9");
});

// The figures of each currency, against the published list. Source: ISO 4217, list one, published 2024-06-25.
import {expect, test} from "vitest";
import {currencies, digitsOf} from "../../worth/money/currencies.ts";
import {readData, type Sourced} from "../helper/data.ts";

/** Begun after the list was published (1 January 2025), from memory. */
const newer = ["XCG"];

test("every currency has the figures of the published list, and no code is taken for one that it does not have", () => {
  const {figures} = readData<Sourced & {readonly figures: Readonly<Record<string, readonly string[]>>}>("currency-figures");
  const listed = new Map(Object.entries(figures).flatMap(([count, codes]) => codes.map((code) => [code, Number(count)] as const)));
  expect(currencies.filter((code) => !newer.includes(code) && digitsOf(code) !== listed.get(code))).toEqual([]);
  expect([...listed.keys()].filter((code) => digitsOf(code) !== null).length).toBeGreaterThan(150);
  expect(["XAU", "XXX", "usd", ""].map(digitsOf)).toEqual([null, null, null, null]);
});

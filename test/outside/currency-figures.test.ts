// The figures of each currency, against the published list. Source: ISO 4217, list one, published 2024-06-25.
import {expect, test} from "vitest";
import {currencies, figuresOf, isCurrency} from "../../worth/currency-figures.ts";
import {readData, type Sourced} from "../helper/data.ts";

test("every currency of the list has its figures, and no other code is taken for one", () => {
  const {figures} = readData<Sourced & {readonly figures: Readonly<Record<string, readonly string[]>>}>("currency-figures");
  const listed = Object.entries(figures).flatMap(([count, codes]) => codes.map((code) => [code, Number(count)] as const));
  expect(listed.map(([code]) => [code, figuresOf(code)])).toEqual(listed);
  expect([...currencies]).toEqual(listed.map(([code]) => code).sort());
  expect(["XAU", "XXX", "usd", ""].map(isCurrency)).toEqual([false, false, false, false]);
});

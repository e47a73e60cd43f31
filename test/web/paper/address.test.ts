// What is wanted on paper stands in the address and is read back from it.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {chartSizes, forms, sheetSizes, tagCodes} from "../../../commands/paper/choices.ts";
import {tagFormats} from "../../../commands/paper/tag-format.ts";
import {papers, readWish, usual, writeWish, type Wish} from "../../../web/paper/address.ts";

const wishes: fc.Arbitrary<Wish> = fc.record({
  what: fc.constantFrom(...papers), of: fc.array(fc.stringMatching(/^[a-z0-9]{12,32}$/), {maxLength: 6}), size: fc.constantFrom(null, ...sheetSizes), photos: fc.integer({min: 0, max: 12}), worth: fc.boolean(),
  format: fc.constantFrom(...tagFormats.map(({id}) => id)), code: fc.constantFrom(...tagCodes), price: fc.boolean(), form: fc.constantFrom(...forms), book: fc.string({maxLength: 20}).filter((text) => text.isWellFormed()), chart: fc.constantFrom(...chartSizes),
});

test("every wish is read back from its address as it was", () => {
  fc.assert(fc.property(wishes, (wish) => {
    expect(readWish(writeWish(wish))).toEqual(wish);
  }));
});

test("what is usual takes no room in the address, and odd addresses are read as what is usual", () => {
  expect(writeWish(usual)).toBe("");
  expect(readWish("?what=everything&of=a,<script>,zzzzzzzzzzzzzzzz&photos=many&format=round&chart=a0&size=a4")).toEqual({...usual, of: ["zzzzzzzzzzzzzzzz"], size: "a4"});
  expect(readWish("?photos=99").photos).toBe(12);
});

test("more garments than an address should hold are left to the page", () => {
  expect(writeWish({...usual, of: Array.from({length: 61}, (_, i) => `garment${String(i).padStart(6, "0")}`)})).toBe("");
});

// What of the rack is shown stands in the address, and any address shows something.
import fc from "fast-check";
import {expect, test} from "vitest";
import {standings, sorts} from "../../../store/model.ts";
import {filtersSet, layouts, readAddress, surenesses, wholeRack, writeAddress, writeQuestion, type RackView} from "../../../web/rack/address.ts";

const words = fc.option(fc.string({minLength: 1, maxLength: 20}));
const year = fc.option(fc.integer({min: 1800, max: 2100}));
const view: fc.Arbitrary<RackView> = fc.record({
  layout: fc.constantFrom(...layouts),
  query: fc.record({
    text: fc.string({maxLength: 40}), from: year, until: year, atLeast: fc.constantFrom(0.1, 0.25, 0.5, 0.75, 0.9), maker: words, type: words, place: words, standing: fc.option(fc.constantFrom(...standings)), tag: words,
    askedFrom: fc.option(fc.integer({min: 0, max: 1e9})), askedUntil: fc.option(fc.integer({min: 0, max: 1e9})), sureness: fc.option(fc.constantFrom(...surenesses)), odd: fc.constantFrom(true, null), removed: fc.boolean(),
    sort: fc.constantFrom(...sorts), descending: fc.boolean(),
  }),
});

test("an address reads back to what it was written from", () => {
  fc.assert(fc.property(view, (one) => void expect(readAddress(writeAddress(one))).toEqual(one)));
});

test("the whole rack has an empty address", () => expect(writeAddress(wholeRack)).toBe(""));

test("what is none of our words is left aside", () => {
  fc.assert(fc.property(fc.webQueryParameters(), (search) => void expect(() => readAddress(search)).not.toThrow()));
  expect(readAddress("?from=then&until=99999&sort=colour&standing=lost&atLeast=7&layout=wall")).toEqual(wholeRack);
});

test("a range of years counts as one filter, sorting and words as none", () => {
  expect(filtersSet(readAddress("?from=1960&until=1969&atLeast=0.9&sort=number&text=zip"))).toBe(1);
  expect(filtersSet(readAddress("?until=1969&maker=marrowfield&odd=true"))).toBe(3);
});

test("the server is asked for one page of the same", () => expect(writeQuestion(readAddress("?tag=demo").query, 200, 100)).toBe("tag=demo&offset=200&limit=100"));

// Whoever adds up the lines of an offer arrives at the most to pay, whatever the terms.
import fc from "fast-check";
import {expect, test} from "vitest";
import type {Terms} from "../../../../worth/model.ts";
import {offerFor} from "../../../../worth/offer/offer.ts";
import {sumLines} from "../../../../web/worth/offer/sum-lines.ts";

const part = (most: number) => fc.integer({min: 0, max: most * 1000}).map((n) => n / 1000);
const cents = fc.integer({min: 0, max: 5000});
const terms: fc.Arbitrary<Terms> = fc.record({currency: fc.constant("USD"), margin: part(0.6), feeShare: part(0.2), feeFixed: cents, postage: cents, taxShare: part(0.2), cleaning: cents, daysToSell: fc.integer({min: 0, max: 400}), yearlyCost: part(1), room: part(0.5)});

test("the lines add up to the most to pay", () => {
  fc.assert(
    fc.property(terms, fc.integer({min: 0, max: 1_000_000}), (one, typical) => {
      const offer = offerFor({typical, mean: typical, below: () => 0.5}, one, null, null);
      expect(sumLines(offer).reduce((sum, line) => sum + line.cents, 0)).toBe(offer.most);
      expect(new Set(sumLines(offer).map(({what}) => what)).size).toBe(sumLines(offer).length);
    }),
  );
});

test("what rounding keeps back, and what is missing even for a gift, have lines of their own", () => {
  expect(sumLines({most: 99, lines: [{what: "price", cents: 200}, {what: "fees", cents: -100}]}).at(-1)).toEqual({what: "less what rounding keeps back", cents: -1});
  expect(sumLines({most: 0, lines: [{what: "price", cents: 200}, {what: "fees", cents: -300}]}).at(-1)).toEqual({what: "what is missing even for a gift", cents: 100});
  expect(sumLines({most: 100, lines: [{what: "price", cents: 200}, {what: "fees", cents: -100}]})).toEqual([{what: "Price", cents: 200}, {what: "less fees", cents: -100}]);
});

// Money laws: nothing is lost, nothing is made, and halves go to the even neighbour.
import fc from "fast-check";
import {expect, test} from "vitest";
import {dividedBy, divideHalfEven, parseMoney, printMoney, shareOf, split} from "../../../worth/money/money.ts";

const cents = fc.integer({min: -1e12, max: 1e12});
const share = fc.integer({min: 0, max: 1_000_000}).map((n) => n / 1_000_000);

// Rounding rule A of ISO 80000-1 annex B, examples 0.5, 1.5, 2.5, -2.5.
test("halves go to the even neighbour", () => {
  expect([1n, 3n, 5n, -5n].map((n) => divideHalfEven(n, 2n))).toEqual([0n, 2n, 2n, -2n]);
  expect([1n, 3n, 5n, -5n].map((n) => divideHalfEven(-n, -2n))).toEqual([0n, 2n, 2n, -2n]);
  expect([7n, -7n, 8n].map((n) => divideHalfEven(n, 3n))).toEqual([2n, -2n, 3n]);
});

// 2.675 in binary lies below its decimal; rounded as the decimal that was meant it is 2.68 (ISO 80000-1; Python decimal).
test("a share is the decimal that it is written as, not the nearest binary fraction", () => {
  expect(shareOf(100, 2.675)).toBe(268);
  expect(shareOf(50, 0.15)).toBe(8);
  expect(shareOf(1_000_000_000_001, 1e-7)).toBe(100_000);
  expect(dividedBy(268, 2.675)).toBe(100);
});

test("a share of an amount is never further than half a cent from the exact one, and a share and its rest differ from the whole by a cent at most", () => {
  fc.assert(
    fc.property(cents, fc.integer({min: 0, max: 10_000}), (amount, tenThousandths) => {
      const part = BigInt(shareOf(amount, tenThousandths / 10_000));
      const apart = part * 10_000n - BigInt(amount) * BigInt(tenThousandths);
      expect(apart <= 5_000n && apart >= -5_000n).toBe(true);
      expect(Math.abs(shareOf(amount, tenThousandths / 10_000) + shareOf(amount, (10_000 - tenThousandths) / 10_000) - amount)).toBeLessThanOrEqual(1);
    }),
  );
});

test("the parts of a split add up to the cent, and none is further than a cent from its due", () => {
  fc.assert(
    fc.property(cents, fc.array(fc.oneof(fc.nat(1000), share), {minLength: 1, maxLength: 20}), (amount, weights) => {
      const total = weights.reduce((sum, w) => sum + w, 0);
      fc.pre(total > 0);
      const parts = split(amount, weights);
      expect(parts.reduce((sum, part) => sum + part, 0)).toBe(amount);
      parts.forEach((part, i) => expect(Math.abs(part - (amount * weights[i]!) / total)).toBeLessThan(1.01));
    }),
  );
  expect(split(100, [1, 1, 1])).toEqual([34, 33, 33]);
  expect(split(-100, [1, 1, 1])).toEqual([-34, -33, -33]);
  expect(() => split(100, [0, 0])).toThrow("not all 0");
});

test("what is printed reads back, in every kind of currency", () => {
  fc.assert(
    fc.property(cents, fc.constantFrom("USD", "JPY", "KWD", "CLF"), (amount, currency) => {
      const printed = printMoney(amount, currency);
      expect(parseMoney(printed.replace(`${currency} `, ""), currency)).toBe(amount);
    }),
  );
  expect([printMoney(125_000, "USD"), printMoney(1_250, "USD"), printMoney(-5, "USD"), printMoney(1250, "JPY")]).toEqual(["USD 1,250", "USD 12.50", "-USD 0.05", "JPY 1,250"]);
});

test("amounts are read as people type them, and what can be read two ways is not", () => {
  expect(["1250", "1,250.5", "1.250,50", "1 250,50", "1'250.50", "0.05", "1.250.000"].map((text) => parseMoney(text, "USD"))).toEqual([125_000, 125_050, 125_050, 125_050, 125_050, 5, 125_000_000]);
  expect(["", "12.345", "1.250", "1,25,0", "ten", "1e3", "1,250,50", "NaN"].map((text) => parseMoney(text, "USD"))).toEqual(Array(8).fill(null));
  expect(parseMoney("12.345", "KWD")).toBe(12_345);
  expect(parseMoney("12.5", "JPY")).toBeNull();
});

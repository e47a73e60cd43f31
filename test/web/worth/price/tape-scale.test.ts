// The price tape holds all that must be in sight, marks round amounts, and heaps twenty stitches whose middle is the price.
import fc from "fast-check";
import {expect, test} from "vitest";
import {heap, tapeScale, twentyOf} from "../../../../web/worth/price/tape-scale.ts";

const amounts = fc.array(fc.integer({min: 1, max: 100_000_000}), {minLength: 1, maxLength: 12});
const width = fc.integer({min: 200, max: 1600});

test("every amount lies on the tape, in its order", () => {
  fc.assert(
    fc.property(amounts, width, (shown, wide) => {
      const {low, high, x} = tapeScale(shown, wide);
      expect(low).toBeLessThanOrEqual(Math.min(...shown));
      expect(high).toBeGreaterThanOrEqual(Math.max(...shown));
      const sorted = shown.toSorted((a, b) => a - b).map(x);
      expect(sorted).toEqual(sorted.toSorted((a, b) => a - b));
      expect(sorted.every((at) => at >= 0 && at <= wide)).toBe(true);
    }),
  );
});

test("long marks stand at whole round amounts, with room for their figures", () => {
  fc.assert(
    fc.property(amounts, width, (shown, wide) => {
      const {marks, x} = tapeScale(shown, wide);
      const long = marks.filter((mark) => mark.long).map(({cents}) => cents);
      expect(long.length).toBeGreaterThan(1);
      const step = long[1]! - long[0]!;
      expect(String(step)).toMatch(/^[125]0*$/);
      expect(long.every((cents) => Number.isInteger(cents) && cents % step === 0)).toBe(true);
      expect(x(long[1]!) - x(long[0]!)).toBeGreaterThan(28);
    }),
  );
});

test("a tape begins at nothing unless its prices lie far from it", () => {
  expect(tapeScale([9000, 30000], 800).low).toBe(0);
  expect(tapeScale([90000, 100000], 800).low).toBeGreaterThan(50000);
});

const steps = fc.array(fc.integer({min: 0, max: 50_000}), {minLength: 19, maxLength: 19}).map((all) => all.toSorted((a, b) => a - b));

test("twenty prices ascend, and ten of them lie on each side of the middle", () => {
  fc.assert(
    fc.property(steps, (given) => {
      const twenty = twentyOf(given);
      expect(twenty).toHaveLength(20);
      expect(twenty).toEqual(twenty.toSorted((a, b) => a - b));
      expect(twenty.filter((cents) => cents <= given[9]! + 1e-6).length).toBeGreaterThanOrEqual(10);
      expect(twenty.filter((cents) => cents >= given[9]! - 1e-6).length).toBeGreaterThanOrEqual(10);
    }),
  );
});

test("no two stitches of a heap lie on each other", () => {
  fc.assert(
    fc.property(steps, width, (given, wide) => {
      const twenty = twentyOf(given);
      const places = heap(twenty, tapeScale([...given, 1], wide), 12).map(({x, above}) => `${x} ${above}`);
      expect(new Set(places).size).toBe(20);
    }),
  );
});

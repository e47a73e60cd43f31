// The months plot: what came in stands above its line, what went out below, and all of it has room.
import fc from "fast-check";
import {expect, test} from "vitest";
import {monthScale} from "../../../../web/worth/shop/month-scale.ts";

const cents = fc.integer({min: 0, max: 50_000_000});
const months = fc.array(fc.record({taken: cents, spent: cents, laidOut: cents, profit: fc.integer({min: -50_000_000, max: 50_000_000})}), {minLength: 1, maxLength: 60}).map((all) => all.map((one, i) => ({...one, month: `${2020 + Math.floor(i / 12)}-${String((i % 12) + 1).padStart(2, "0")}`})));

test("every amount lies in the plot, on its side of the line", () => {
  fc.assert(
    fc.property(months, fc.integer({min: 280, max: 1400}), (all, width) => {
      const {y, zero, x, step} = monthScale(all, width, 190);
      for (const {taken, spent, laidOut, profit} of all) {
        expect(y(taken)).toBeLessThanOrEqual(zero + 1e-9);
        expect(y(-spent - laidOut)).toBeGreaterThanOrEqual(zero - 1e-9);
        for (const at of [y(taken), y(-spent - laidOut), y(profit)]) expect(at >= 0 && at <= 190).toBe(true);
      }
      expect(x(all.length - 1) + step).toBeLessThanOrEqual(width + 1e-6);
    }),
  );
});

test("figures are whole round amounts, and names have room", () => {
  fc.assert(
    fc.property(months, fc.integer({min: 280, max: 1400}), (all, width) => {
      const {figures, named, step} = monthScale(all, width, 190);
      expect(figures.every(Number.isInteger)).toBe(true);
      const names = all.flatMap((_, i) => (named(i) ? [i] : []));
      expect(names.slice(1).every((i, at) => (i - names[at]!) * step >= 33.9)).toBe(true);
    }),
  );
});

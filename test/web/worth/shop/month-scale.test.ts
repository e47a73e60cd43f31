// The months plot: what came in stands above its line, what went out below, and all of it has room.
import fc from "fast-check";
import {expect, test} from "vitest";
import {gutter, monthScale, stretches} from "../../../../web/worth/shop/month-scale.ts";

const cents = fc.integer({min: 0, max: 50_000_000});
const months = fc
  .tuple(fc.integer({min: 0, max: 11}), fc.array(fc.record({taken: cents, spent: cents, laidOut: cents, profit: fc.integer({min: -50_000_000, max: 50_000_000})}), {minLength: 1, maxLength: 150}))
  .map(([begin, all]) => all.map((one, i) => ({...one, month: `${2010 + Math.floor((begin + i) / 12)}-${String(((begin + i) % 12) + 1).padStart(2, "0")}`})));
const width = fc.integer({min: 280, max: 1400});

test("every amount lies in the plot, on its side of the line", () => {
  fc.assert(
    fc.property(months, width, (all, wide) => {
      const shown = stretches(all, wide);
      const {y, zero, x, step} = monthScale(shown, wide, 190);
      for (const {taken, spent, laidOut, profit} of shown) {
        expect(y(taken)).toBeLessThanOrEqual(zero + 1e-6);
        expect(y(-spent - laidOut)).toBeGreaterThanOrEqual(zero - 1e-6);
        for (const at of [y(taken), y(-spent - laidOut), y(profit)]) expect(at >= 0 && at <= 190).toBe(true);
      }
      expect(x(shown.length - 1) + step).toBeLessThanOrEqual(wide + 1e-6);
    }),
  );
});

test("months that are put together for want of room lose and gain nothing", () => {
  fc.assert(
    fc.property(months, width, (all, wide) => {
      const shown = stretches(all, wide);
      for (const key of ["taken", "spent", "laidOut", "profit"] as const) expect(shown.reduce((sum, one) => sum + one[key], 0)).toBe(all.reduce((sum, one) => sum + one[key], 0));
      expect([shown[0]!.month, shown.at(-1)!.until]).toEqual([all[0]!.month, all.at(-1)!.month]);
      if (shown.length === all.length) expect(shown.map(({month}) => month)).toEqual(all.map(({month}) => month));
      else expect(all.length * 9).toBeGreaterThan(wide - gutter);
    }),
  );
});

test("quarters and years are those of the calendar", () => {
  const all = Array.from({length: 40}, (_, i) => ({month: `${2022 + Math.floor((i + 1) / 12)}-${String(((i + 1) % 12) + 1).padStart(2, "0")}`, taken: 1, spent: 0, laidOut: 0, profit: 0}));
  expect(stretches(all, 300).slice(0, 3).map(({month, until, taken}) => [month, until, taken])).toEqual([["2022-02", "2022-03", 2], ["2022-04", "2022-06", 3], ["2022-07", "2022-09", 3]]);
  expect(stretches(all, 100).map(({month, taken}) => [month, taken])).toEqual([["2022-02", 11], ["2023-01", 12], ["2024-01", 12], ["2025-01", 5]]);
});

test("figures are whole round amounts, and names have room", () => {
  fc.assert(
    fc.property(months, width, (all, wide) => {
      const shown = stretches(all, wide);
      const {figures, named, step} = monthScale(shown, wide, 190);
      expect(figures.every(Number.isInteger)).toBe(true);
      const names = shown.flatMap((_, i) => (named(i) ? [i] : []));
      expect(names.slice(1).every((i, at) => (i - names[at]!) * step >= 33.9)).toBe(true);
    }),
  );
});

// The year plot shows the years in which something was made, and any pixel or key means one of them.
import fc from "fast-check";
import {expect, test} from "vitest";
import {inOrder, moveByKey, yearScale} from "../../../web/rack/year-scale.ts";

test("thin tails do not draw the plot out, years of the range always stay in sight", () => {
  const garments = Array.from({length: 120}, (_, i) => (i >= 60 && i < 90 ? 3 : 0.01));
  const scale = yearScale({first: 1900, garments}, [null, null], 600);
  expect([scale.first, scale.last]).toEqual([1959, 1990]);
  expect(yearScale({first: 1900, garments}, [1910, null], 600).first).toBe(1909);
});

test("one garment has twenty years around it, and an empty rack has years too", () => {
  const one = yearScale({first: 1968, garments: [1]}, [null, null], 400);
  expect(one.last - one.first).toBeGreaterThanOrEqual(20);
  expect(yearScale({first: 1950, garments: []}, [null, null], 400).figures.length).toBeGreaterThan(2);
});

test("the pixel in the middle of a year means that year", () => {
  fc.assert(
    fc.property(fc.integer({min: 1850, max: 2000}), fc.array(fc.float({min: 0, max: 50, noNaN: true}), {maxLength: 150}), fc.integer({min: 300, max: 2000}), (first, garments, width) => {
      const scale = yearScale({first, garments}, [null, null], width);
      for (let year = scale.first; year <= scale.last; year++) expect(scale.yearAt(scale.x(year) + scale.step / 2)).toBe(year);
      expect(scale.x(scale.last) + scale.step).toBeCloseTo(width, 6);
    }),
  );
});

test("keys move a pin by a year or ten, and not out of sight", () => {
  const span = {first: 1950, last: 1990};
  expect(moveByKey("ArrowRight", 1968, span)).toBe(1969);
  expect(moveByKey("PageDown", 1955, span)).toBe(1950);
  expect(moveByKey("End", 1955, span)).toBe(1990);
  expect(moveByKey("a", 1955, span)).toBeNull();
  expect(inOrder(1970, 1960)).toEqual({from: 1960, until: 1970});
});

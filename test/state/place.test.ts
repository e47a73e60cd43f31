// A spot on the drawing has the name that the wearer would give it.
import fc from "fast-check";
import {expect, test} from "vitest";
import {garmentKinds} from "../../state/garment-kind.ts";
import {placeAt, placesOf} from "../../state/place.ts";

test("left is the wearer's left: right of the middle in front, left of it behind", () => {
  expect(placeAt("trousers", "front", 0.72, 0.66)).toBe("left knee");
  expect(placeAt("trousers", "back", 0.72, 0.66)).toBe("right back of the knee");
  expect(placeAt("trousers", "front", 0.5, 0.4)).toBe("crotch");
});

test("every spot of every side has one of that side's places", () => {
  const spot = fc.double({min: 0, max: 1, noNaN: true});
  fc.assert(fc.property(fc.constantFrom(...garmentKinds), fc.constantFrom("front" as const, "back" as const, "inside" as const), spot, spot, (kind, side, x, y) => void expect(placesOf(kind, side)).toContain(placeAt(kind, side, x, y))));
});

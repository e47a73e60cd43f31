// Sources: check entries E02 and E03 of the project's outside values. 1 in = 25.4 mm: international yard and pound agreement of 1959 (NIST SP 811 appendix B).
import fc from "fast-check";
import {expect, test} from "vitest";
import {doubled, readLength, sayMm, toMm} from "../../state/length.ts";
import {ratio, times} from "../../state/ratio.ts";
import {close} from "../helper/close.ts";

const inch = (typed: string) => readLength({typed, unit: "in"});

test.each([["1", 2.54], ["29 1/2", 74.93], ["32 3/8", 82.2325], ["34", 86.36], ["36 3/4", 93.345], ["17 5/8", 44.7675], ["27 15/16", 70.96125]])("%s in are %d cm", (typed, cm) => {
  close(toMm(inch(typed)) / 10, cm, {rel: 1e-12}); // exact fractions, one rounding at the end
});

test("a waist laid flat is half of the girth, and its error doubles", () => {
  expect(["15.5", "16", "17.25"].map((typed) => toMm(doubled(inch(typed)!)) / 25.4)).toEqual([31, 32, 34.5]);
  expect(["54", "58.5"].map((typed) => toMm(doubled(readLength({typed, unit: "cm"})!)) / 10)).toEqual([108, 117]);
  expect(doubled(inch("15 1/4")!).stepMm / 25.4).toBe(0.5); // read to 1/4 in, the girth is good to 1/2 in
});

test.each([["31 1/2", 800.1], ["31½", 800.1], ["31-1/2", 800.1], ["31.5", 800.1], ["31,5", 800.1], ["31 1/2 in", 800.1], ['31 1/2"', 800.1], ["1/2", 12.7], ["81 cm", 810], ["810 mm", 810], [" 81CM ", 810]])("%s is read as it is written", (typed, mm) => expect(toMm(inch(typed))).toBe(mm));

test.each(["", "x", "31 1/", "31 3/2", "31 1/0", "31 1/1", "-3", "31.5 1/2", "0", "0 0/8", "31 1/2 ft", "99999", "1e3", "3 1 2", "31 cm in", "NaN"])("“%s” is no length", (typed) => expect(inch(typed)).toBeNull());

test("the unit that is typed goes before the one that was chosen", () => {
  expect(readLength({typed: "32 in", unit: "cm"})?.unit).toBe("in");
  expect(toMm(readLength({typed: "32", unit: "cm"}))).toBe(320);
});

test("what is said of a length to the 32nd reads back to the same length", () => {
  fc.assert(
    fc.property(fc.integer({min: 1, max: 32 * 60}), (parts) => {
      const exact = times(ratio(BigInt(parts), 32n), ratio(254n, 10n));
      expect(inch(sayMm(exact, "in"))!.mm).toEqual(exact);
    }),
  );
});

test("worked-out lengths are said to the eighth of an inch and the half centimetre", () => {
  expect(sayMm(760.1, "in")).toBe("29 7/8 in");
  expect(sayMm(749.3, "cm")).toBe("75 cm");
  expect(sayMm(823.45, "cm")).toBe("82.5 cm");
  expect(sayMm(9.525, "in")).toBe("3/8 in");
  expect(sayMm(747, "cm")).toBe("74.7 cm");
});

test("no text makes the reading of a length fail", () => {
  fc.assert(fc.property(fc.string({maxLength: 20}), fc.constantFrom("in" as const, "cm" as const), (typed, unit) => {
    const length = readLength({typed, unit});
    expect(length === null || (toMm(length) > 0 && toMm(length) <= 3000)).toBe(true);
  }));
});

// Estimates are said without figures that they cannot stand for; factors as differences.
import fc from "fast-check";
import {expect, test} from "vitest";
import {sayAbout, sayBetween, sayFactor} from "../../../web/worth/say.ts";
import {readAmount} from "../../../web/worth/money.ts";

test("an estimate is off by no more than one part in fifty, or half a coin", () => {
  fc.assert(
    fc.property(fc.integer({min: 0, max: 1e9}), fc.constantFrom("USD", "JPY", "KWD"), (cents, currency) => {
      const said = readAmount(sayAbout({cents, currency}, "en-US"), currency, "en-US").cents!;
      const coin = {USD: 100, JPY: 1, KWD: 1000}[currency]!;
      expect(Math.abs(said - cents)).toBeLessThanOrEqual(Math.max(cents / 50, coin / 2));
    }),
  );
});

test.each([[21937, "$220"], [12840, "$128"], [100, "$1"], [987654, "$9,900"], [1234, "$12"], [350, "$3.50"]])("%i cents are about %s", (cents, said) => expect(sayAbout({cents, currency: "USD"}, "en-US")).toBe(said));

test("a range is said once where both ends round to the same", () => {
  expect(sayBetween(11034, 29720, "USD", "en-US")).toBe("$110 to $295");
  expect(sayBetween(11034, 11036, "USD", "en-US")).toBe("$110");
});

test("a factor is said as the difference that it makes", () => expect([1.2, 0.75, 1.002, 2.14].map(sayFactor)).toEqual(["20 in 100 more", "25 in 100 less", "no difference", "2.1 times as much"]));

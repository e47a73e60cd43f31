// Amounts and shares in words carry no more figures than a price by comparison has.
import {expect, test} from "vitest";
import {roughly, sayShare} from "../../worth/say.ts";

test("amounts are said to three figures at most, whole where cents mean nothing", () => {
  expect([roughly(123_740, "USD"), roughly(21_940, "USD"), roughly(1_234, "USD"), roughly(0, "USD"), roughly(12_345, "JPY"), roughly(2_345, "JPY"), roughly(-123_740, "EUR")]).toEqual(["USD 1,240", "USD 219", "USD 12.30", "USD 0", "JPY 12,300", "JPY 2,350", "-EUR 1,240"]);
});

test("no share is said to be certain", () => {
  expect([0.664, 0.9999, 0.001].map(sayShare)).toEqual(["66 in 100", "more than 99 in 100", "less than 1 in 100"]);
});

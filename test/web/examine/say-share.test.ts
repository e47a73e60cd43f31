// Likelihoods in words, from near certain to next to nothing.
import {expect, test} from "vitest";
import {sayShare} from "../../../web/examine/say-share.ts";

test.each([[0.999, "more than 99 in 100"], [0.774, "77 in 100"], [0.1, "10 in 100"], [0.03, "1 in 33"], [1 / 1523, "1 in 1,523"], [1e-6, "less than 1 in 10,000"]])("%d is %s", (p, words) => {
  expect(sayShare(p)).toBe(words);
});

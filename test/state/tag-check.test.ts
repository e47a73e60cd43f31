// The tag against the tape. The formula is tested in change.test.ts; the odds follow from a written table that is common practice, no source.
import fc from "fast-check";
import {expect, test} from "vitest";
import {normal, oddSizes, tagChecks} from "../../state/tag-check.ts";
import {letterOf, readTagSize} from "../../state/tag-size.ts";
import {close} from "../helper/close.ts";
import {sizes, state} from "./sized.ts";

const check = (waist: string, inseam: string, noted: Parameters<typeof tagChecks>[2] = null) => tagChecks("trousers", sizes({waist, inseam}, "W 34 L 32"), noted);
const likeliest = (checks: ReturnType<typeof check>) => checks.map(({causes}) => causes[0]!.id);

test("what measures as tagged is as tagged", () => {
  expect(likeliest(check("17", "32"))).toEqual(["kept", "kept"]);
  expect(oddSizes(check("17", "32"))).toEqual([]);
});

test("waist and length that went in together were washed: 34 by 32 after 3 and 5 in 100", () => {
  expect(likeliest(check("16 1/2", "30 1/2"))).toEqual(["shrunk", "shrunk"]);
});

test("a length far shorter beside a waist that kept its size was shortened", () => {
  const checks = check("17", "28");
  expect(likeliest(checks)).toEqual(["kept", "shortened-hem"]);
  close(checks[1]!.change, -12.5, {rel: 1e-12}); // 28 in where 32 are tagged
  const [odd] = oddSizes(checks);
  expect(odd!.id).toBe("sizes.inseam");
  expect(odd!.says).toContain("a shortened hem, by about 4 in");
});

test("how the waist changed tells about the length: the same shorter length is rather the wash when the waist went in, too", () => {
  const wash = (checks: ReturnType<typeof check>) => checks[1]!.causes.find(({id}) => id === "shrunk")!.probability;
  expect(wash(check("16 1/2", "30"))).toBeGreaterThan(wash(check("17", "30")));
});

test("a waist three inches smaller beside a kept length was taken in", () => expect(likeliest(check("15 1/2", "32"))).toEqual(["waist-taken-in", "kept"]));

test("an alteration that was noted is believed", () => {
  const [, inseam] = check("16 1/2", "30 1/2", state({alterations: [{kind: "shortened-hem"}]}));
  expect(inseam!.causes[0]!.id).toBe("shortened-hem");
});

test("what neither cloth nor needle explains is another garment's tag", () => expect(check("12", "32")[0]!.causes[0]!.id).toBe("other-tag"));

test("the odds of each dimension are odds: none below 0, all together 1, whatever was measured", () => {
  fc.assert(
    fc.property(fc.integer({min: 40, max: 120}), fc.integer({min: 60, max: 160}), (waist, inseam) => {
      for (const {causes} of check(String(waist / 4), String(inseam / 4))) {
        expect(Math.min(...causes.map(({probability}) => probability))).toBeGreaterThanOrEqual(0);
        close(causes.reduce((all, {probability}) => all + probability, 0), 1, {abs: 1e-9, because: "a sum of some ten shares"});
      }
    }),
  );
});

test("no tag, no tape, no check", () => {
  expect(tagChecks("trousers", sizes({waist: "17"}))).toEqual([]);
  expect(tagChecks("trousers", sizes({}, "W 34 L 32"))).toEqual([]);
});

// Source: tables of the normal distribution; values from R 4.2 pnorm, from memory.
test.each([[0, 0.5], [1, 0.8413447460685429], [-1.959963984540054, 0.025], [2.5758293035489004, 0.995]])("the normal distribution up to %d is %d", (z, p) => close(normal(z), p, {abs: 2e-7, because: "Abramowitz and Stegun 7.1.26 is good to 1.5e-7"}));

test.each([["W 34 L 32", "trousers", {waist: 34, inseam: 32}], ["34x30", "overalls", {waist: 34, inseam: 30}], ["36/34", "trousers", {waist: 36, inseam: 34}], ["32", "trousers", {waist: 32, inseam: null}], ["15 1/2", "shirt", {neck: 15.5}], ["15½ - 34", "shirt", {neck: 15.5}], ["42", "jacket", {chest: 42}], ["M", "shirt", {neck: null, chest: null}], ["age 12", "shirt", {neck: null}], ["180 cm", "trousers", {waist: null}], ["999", "trousers", {waist: null}]] as const)(
  "the tag %s on a %s says its inches",
  (text, kind, said) => expect(readTagSize(text, kind)).toMatchObject({text, ...said}),
);

test("letters are read spelled out, too", () => expect(["medium", "2xl", "XXXL", "m", "34"].map(letterOf)).toEqual(["M", "XXL", "3XL", "M", null]));

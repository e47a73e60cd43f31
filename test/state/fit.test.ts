// Would it fit. Ease = garment girth less body girth: check entry E03 of the project's outside values (108 - 100 = 8 cm, 117 - 100 = 17 cm). Where words end is common practice, no source.
import fc from "fast-check";
import {expect, test} from "vitest";
import {easeTable, fitWords} from "../../state/fit-table.ts";
import {fitOf} from "../../state/fit.ts";
import {garmentKinds} from "../../state/garment-kind.ts";
import {pointOf} from "../../state/point.ts";
import {close} from "../helper/close.ts";
import {sizes} from "./sized.ts";

const cm = (typed: string) => ({typed, unit: "cm" as const});

test("ease is the garment all round less the body", () => {
  const ease = (flat: string) => fitOf("jacket", sizes({chest: flat}), {chest: cm("100")}).points[0]!.easeMm / 10;
  close(ease("54 cm"), 8, {rel: 1e-12});
  close(ease("58.5 cm"), 17, {rel: 1e-12});
});

test("a band that cannot close does not fit, whatever the length says", () => {
  const {sentence, points} = fitOf("trousers", sizes({waist: "15", inseam: "32"}), {waist: {typed: "34", unit: "in"}, "inside-leg": {typed: "32", unit: "in"}});
  expect(points.map(({word}) => word)).toEqual(["too tight", "right"]);
  expect(sentence).toBe("It would not fit: too tight at the waist.");
});

test("near the end of a word the other one is named, too", () => {
  const [waist] = fitOf("trousers", sizes({waist: "17"}), {waist: {typed: "34", unit: "in"}}).points;
  expect([waist!.word, waist!.perhaps]).toEqual(["close", "too tight"]);
});

test("what is not measured is named, and a short sleeve is not held against an arm", () => {
  expect(fitOf("trousers", sizes({waist: "17"}), {hip: cm("100")}).missing).toEqual(["the body's waist girth", "the garment's hip"]);
  expect(fitOf("sweatshirt", sizes({sleeve: "8"}), {arm: cm("64")}).points).toEqual([]);
  expect(fitOf("trousers", sizes({}), {}).sentence).toBe("Nothing can be compared yet.");
});

test("a wider garment never fits tighter", () => {
  fc.assert(
    fc.property(fc.integer({min: 100, max: 250}), fc.integer({min: 0, max: 60}), (quarters, more) => {
      const step = (flat: number) => fitOf("jacket", sizes({chest: String(flat / 8)}), {chest: {typed: "40", unit: "in"}}).points[0]!.step;
      expect(step(quarters + more)).toBeGreaterThanOrEqual(step(quarters));
    }),
  );
});

test("the tables hang together: points exist, ends of words grow, a point is compared with its own part of the body", () => {
  for (const kind of garmentKinds)
    for (const {point, body, ends, way} of easeTable[kind]) {
      expect([kind, point, pointOf(kind, point)?.body]).toEqual([kind, point, body]);
      expect([...ends].sort((a, b) => a - b)).toEqual(ends);
      expect(fitWords[way].length).toBe(ends.length + 1);
    }
});

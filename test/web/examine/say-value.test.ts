// Whatever a garment holds is said in words, never as a program's notation.
import {expect, test} from "vitest";
import {sayValue} from "../../../web/examine/say-value.ts";

test.each([
  [undefined, "nothing"], [[], "nothing"], ["attic", "attic"],
  [{cents: 12000, currency: "EUR"}, "120.00 EUR"],
  [["412-0318", {text: "3 8", at: "back"}], "412-0318; 3 8 (back)"],
  [{either: {green: 75, blue: 25}}, "green (75) or blue (25)"],
  [{cells: ["3", " ", {either: {8: 80, 3: 20}}]}, "3 (3 (20) or 8 (80))"],
  [{readings: [{text: "3 3", weight: 0.2}, {text: "3 8", weight: 0.7}], none: 0.1, at: "back"}, "3 8 (back)"],
  [{photo: "ab", reader: "made up", rows: [{read: {best: "3 8"}, settled: null}, {read: {best: "WASH"}, settled: {text: null, places: {}, left: true}}]}, "3 8"],
  [[{point: "waist", length: {typed: "16 3/4", unit: "in"}}], "waist 16 3/4 in"],
  [[{kind: "hole", severity: "slight", place: "left knee", side: "front", mended: true}], "slight hole at the left knee, mended"],
  [{photo: "ab", caption: ""}, "photo: ab, caption: nothing"],
])("%j is said %s", (value, words) => expect(sayValue(value)).toBe(words));

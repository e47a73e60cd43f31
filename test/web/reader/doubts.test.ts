// What is dotted and what is offered for a row read from a photo.
import {expect, test} from "vitest";
import type {ReadRow} from "../../../reader/model.ts";
import {otherTexts, placesIn, placesOf} from "../../../web/reader/doubts.ts";

const read: ReadRow = {
  quad: [{x: 0, y: 0}, {x: 90, y: 0}, {x: 90, y: 20}, {x: 0, y: 20}],
  best: "3 8 21",
  places: [[{character: "3", p: 0.98}], [{character: " ", p: 0.6}, {character: "", p: 0.4}], [{character: "8", p: 0.7}, {character: "3", p: 0.2}, {character: "", p: 0.05}, {character: "6", p: 0.01}], [{character: " ", p: 0.98}], [{character: "2", p: 0.98}], [{character: "1", p: 0.97}]],
  strings: [{text: "3 8 21", p: 0.45}, {text: "38 21", p: 0.25}, {text: "3 3 21", p: 0.15}, {text: "3 8 2", p: 0.005}],
  none: 0.1,
};

test("an uncertain character is dotted, a gap never is; what is hardly possible is not offered", () => {
  const places = placesOf(read, null);
  expect(places.filter(({doubtful}) => doubtful).map(({place}) => place)).toEqual([2]);
  expect(places[2]!.choices.map(({character}) => character)).toEqual(["8", "3", ""]);
});

test("a settled character is no longer in doubt, and can be settled otherwise", () => {
  const place = placesOf(read, {text: null, places: {2: "3"}, left: false})[2]!;
  expect(place).toMatchObject({settled: true, doubtful: false});
  expect(place.choices.map(({character}) => character)).toContain("8");
});

test("other spacings are offered as readings of the whole row, likely ones first, the shown one left out", () => {
  expect(otherTexts(read, null, "3 8 21").map(({text}) => text)).toEqual(["38 21", "3 3 21"]);
});

test("a row that was typed has nothing in doubt", () => {
  const typed = {text: "3 8 21", places: {}, left: false};
  expect([placesOf(read, typed), otherTexts(read, typed, "3 8 21")]).toEqual([[], []]);
});

test("characters of another reading know their place in the likeliest one", () => {
  expect(placesIn(read, "38 21")).toEqual([0, 2, 3, 4, 5]);
  expect(placesIn(read, "3 8 217").at(-1)).toBe(null);
});

// Corners of an outline: the same point on the turned photo and on the photo itself, and never a crossed or flat outline.
import fc from "fast-check";
import {expect, test} from "vitest";
import {turned} from "../../../reader/image/plane.ts";
import {fromTurned, moveCorner, nextTurn, toTurned, turnedSize, wholePhoto, type Turn} from "../../../web/reader/outline.ts";

const size = {width: 400, height: 300};
const turns: readonly Turn[] = [0, 90, 180, 270];

test("turning a point there and back leaves it where it was, within the turned photo", () => {
  fc.assert(fc.property(fc.constantFrom(...turns), fc.nat(400), fc.nat(300), (turn, x, y) => {
    const there = toTurned({x, y}, size, turn);
    const {width, height} = turnedSize(size, turn);
    expect(there.x >= 0 && there.x <= width && there.y >= 0 && there.y <= height).toBe(true);
    expect(fromTurned(there, size, turn)).toEqual({x, y});
  }));
});

test("a quarter to the right takes the top left of the photo to the top right", () => {
  expect(toTurned({x: 0, y: 0}, size, 90)).toEqual({x: 300, y: 0});
  expect(nextTurn(270, 90)).toBe(0);
  expect(nextTurn(0, -90)).toBe(270);
});

test("the whole photo as an outline begins with the corner that is top left for its reader", () => {
  for (const turn of turns) expect(toTurned(wholePhoto(size, turn)[0]!, size, turn)).toEqual({x: 0, y: 0});
  expect(turned(wholePhoto(size, 0), 1)).toEqual(wholePhoto(size, 90));
});

test("a corner stays in the photo", () => {
  expect(moveCorner(wholePhoto(size, 0), 0, {x: -50, y: 12.4}, size)[0]).toEqual({x: 0, y: 12});
});

test("a corner pulled across the outline stays where it was", () => {
  const outline = wholePhoto(size, 0);
  expect(moveCorner(outline, 0, {x: 390, y: 290}, size)).toBe(outline);
});

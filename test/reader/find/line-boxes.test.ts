import {expect, test} from "vitest";
import {lineBoxes} from "../../../reader/find/line-boxes.ts";
import {hullOf, smallestRectangle} from "../../../reader/find/rectangle.ts";
import {angleOf} from "../../../reader/label/direction.ts";
import {centreOf, sizeOf} from "../../../reader/image/plane.ts";

/** A map with one bar of print, turned clockwise by some degrees about the middle. */
function bar(degrees: number, long = 60, high = 10, sure = 0.9) {
  const [width, height] = [128, 128];
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const p = Float32Array.from({length: width * height}, (_, i) => {
    const [x, y] = [(i % width) - 64, Math.floor(i / width) - 64];
    return Math.abs(x * cos + y * sin) <= long / 2 && Math.abs(y * cos - x * sin) <= high / 2 ? sure : 0.01;
  });
  return {width, height, p};
}

test("a bar of print becomes one box in its middle, along its direction, with room around it", () => {
  for (const degrees of [0, 20, 45, -30, 80]) {
    const found = lineBoxes(bar(degrees));
    expect(found).toHaveLength(1);
    expect(centreOf(found[0]!.quad)).toEqual({x: expect.closeTo(64.5, 0), y: expect.closeTo(64.5, 0)});
    expect(Math.abs(angleOf(found[0]!.quad) - degrees)).toBeLessThan(3);
    const {width, height} = sizeOf(found[0]!.quad);
    expect(width).toBeGreaterThan(62);
    expect(height).toBeGreaterThan(14);
    expect(width / height).toBeLessThan(6);
  }
});

test("specks, faint smears and empty maps give no box", () => {
  expect(lineBoxes(bar(0, 3, 3))).toEqual([]);
  expect(lineBoxes(bar(0, 60, 10, 0.35))).toEqual([]);
  expect(lineBoxes({width: 32, height: 32, p: new Float32Array(1024)})).toEqual([]);
});

test("a map full of print is one box, whatever its size", () => {
  expect(lineBoxes({width: 64, height: 32, p: new Float32Array(2048).fill(1)})).toHaveLength(1);
});

test("the smallest rectangle around points in a line has no area, and around one point there is none", () => {
  expect(smallestRectangle([{x: 1, y: 1}])).toBeNull();
  expect(smallestRectangle([{x: 0, y: 0}, {x: 4, y: 4}, {x: 2, y: 2}])?.height).toBeCloseTo(0, 9);
  expect(hullOf([{x: 0, y: 0}, {x: 2, y: 0}, {x: 1, y: 1}, {x: 1, y: 3}, {x: 1, y: 0.5}])).toHaveLength(3);
});

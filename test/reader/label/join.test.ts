import {expect, test} from "vitest";
import type {Quad} from "../../../reader/model.ts";
import {angleOf, commonAngle, readAlong, turnFor} from "../../../reader/label/direction.ts";
import {joinPieces} from "../../../reader/label/join.ts";
import {outlineAround, straightened} from "../../../reader/label/outline.ts";
import {centreOf, sizeOf, turned, within} from "../../../reader/image/plane.ts";

/** A box by its left, top and size, turned about 0, 0 by some degrees clockwise. */
function box(left: number, top: number, width: number, height: number, degrees = 0): Quad {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return [[left, top], [left + width, top], [left + width, top + height], [left, top + height]].map(([x, y]) => ({x: x! * cos - y! * sin, y: x! * sin + y! * cos}));
}

test("figures set wide apart are one row, whichever way the row lies", () => {
  for (const degrees of [0, 25, 90, 180]) {
    const joined = joinPieces([box(0, 0, 20, 20, degrees), box(50, 2, 45, 19, degrees), box(120, -1, 20, 20, degrees)]);
    expect(joined).toHaveLength(1);
    expect(sizeOf(joined[0]!).width).toBeCloseTo(140, 0);
  }
});

test("a dash between two numbers goes with them", () => {
  expect(joinPieces([box(0, 0, 60, 20), box(68, 8, 12, 4), box(88, 0, 80, 20)])).toHaveLength(1);
});

test("rows below each other, columns far apart and print of another size stay apart", () => {
  expect(joinPieces([box(0, 0, 100, 20), box(0, 30, 100, 20)])).toHaveLength(2);
  expect(joinPieces([box(0, 0, 100, 20), box(160, 0, 100, 20)])).toHaveLength(2);
  expect(joinPieces([box(0, 0, 100, 20), box(105, -15, 100, 50)])).toHaveLength(2);
});

test("the direction of most print is found, whatever a few boxes say, and with it the turn that makes it upright", () => {
  for (const [degrees, turn] of [[0, 0], [12, 0], [90, 270], [-40, 0], [80, 270]] as const) {
    const quads = [box(0, 0, 200, 20, degrees), box(0, 40, 150, 20, degrees), box(0, 80, 60, 20, degrees + 70)];
    expect(Math.abs(commonAngle(quads) - degrees)).toBeLessThan(12);
    expect(turnFor(degrees)).toBe(turn);
  }
  expect(commonAngle([])).toBe(0);
  expect([turnFor(180), turnFor(-90), turnFor(270)]).toEqual([180, 90, 90]);
});

test("a quad is named anew for a reader who looks another way; a long one is read along its long side", () => {
  const quad = box(0, 0, 100, 20);
  expect(readAlong(quad, 180)).toEqual(turned(quad, 2));
  expect(angleOf(readAlong(box(0, 0, 100, 20, 30), 200))).toBeCloseTo(-150, 6);
  expect(sizeOf(readAlong(quad, 80)).width).toBe(100);
});

test("the outline holds all lines with room, along their direction; laid flat it is upright", () => {
  const quads = [box(20, 20, 100, 20, 30), box(20, 50, 60, 20, 30)];
  const outline = outlineAround(quads, 30)!;
  for (const quad of quads) for (const corner of quad) expect(within(outline, corner)).toBe(true);
  expect(sizeOf(outline).height).toBeCloseTo(50 + 40, 6);
  expect(outlineAround([], 0)).toBeNull();
  const image = {width: 200, height: 200, channels: 3, data: new Uint8Array(200 * 200 * 3).fill(90)} as const;
  const flat = straightened(image, outline)!;
  expect(flat.pixels.height / flat.pixels.width).toBeCloseTo(sizeOf(outline).height / sizeOf(outline).width, 1);
  expect(flat.pixels.data.every((value) => value === 90)).toBe(true);
  expect(straightened(image, [0, 0, 0, 0].map(() => centreOf(outline)))).toBeNull();
});

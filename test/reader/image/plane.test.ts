import {expect, test} from "vitest";
import {crop} from "../../../reader/image/crop.ts";
import {grown, project, projection, rectangle, sizeOf, turned, within} from "../../../reader/image/plane.ts";
import {resized} from "../../../reader/image/shrink.ts";
import type {Pixels} from "../../../reader/reader.ts";

const crooked = [{x: 10, y: 12}, {x: 90, y: 3}, {x: 97, y: 60}, {x: 4, y: 52}];

test("a projection takes each corner to its corner, and its opposite takes it back", () => {
  const there = projection(rectangle(50, 20), crooked)!;
  const back = projection(crooked, rectangle(50, 20))!;
  rectangle(50, 20).forEach(({x, y}, i) => {
    const seen = project(there, x, y);
    expect(seen.x).toBeCloseTo(crooked[i]!.x, 6);
    expect(seen.y).toBeCloseTo(crooked[i]!.y, 6);
  });
  const {x, y} = project(back, project(there, 13, 7).x, project(there, 13, 7).y);
  expect([x, y]).toEqual([expect.closeTo(13, 6), expect.closeTo(7, 6)]);
});

test("corners in one line or in one point give no projection, and a crop of them gives nothing", () => {
  const line = [{x: 0, y: 0}, {x: 5, y: 0}, {x: 10, y: 0}, {x: 15, y: 0}];
  const point = [0, 0, 0, 0].map(() => ({x: 4, y: 4}));
  expect(projection(line, rectangle(5, 5))).toBeNull();
  expect(crop(striped(20, 20), point, 10, 10)).toBeNull();
});

test("a crop of a whole photo is that photo; of a quarter turn it is the turned photo", () => {
  const photo = striped(12, 8);
  const whole = crop(photo, rectangle(12, 8), 12, 8)!;
  whole.planes[0].forEach((value, i) => expect(value).toBeCloseTo(photo.data[i * 3]!, 3));
  const side = crop(photo, turned(rectangle(12, 8), 1), 8, 12)!;
  expect(side.planes[0][0]).toBeCloseTo(photo.data[7 * 12 * 3]!, 3);
});

test("a crop beyond the photo goes on with its edge, and even a crossed quad gives numbers", () => {
  const photo = striped(10, 10);
  for (const quad of [rectangle(10, 10).map(({x, y}) => ({x: x + 100, y: y - 300})), [{x: 0, y: 0}, {x: 10, y: 10}, {x: 10, y: 0}, {x: 0, y: 10}]]) {
    const cut = crop(photo, quad, 9, 9);
    expect(cut?.planes.every((plane) => plane.every((value) => value >= 0 && value <= 255)) ?? true).toBe(true);
  }
});

test("shrinking keeps the mean of every colour, and pixels of four channels read as those of three", () => {
  const photo = striped(60, 40);
  const small = resized(photo, 15, 10);
  for (let c = 0; c < 3; c++) {
    const mean = [...photo.data].reduce((sum, value, i) => (i % 3 === c ? sum + value : sum), 0) / (60 * 40);
    expect(small.planes[c]!.reduce((sum, value) => sum + value, 0) / 150).toBeCloseTo(mean, -0.5);
  }
  const four: Pixels = {...photo, channels: 4, data: Uint8Array.from({length: 60 * 40 * 4}, (_, i) => (i % 4 === 3 ? 9 : photo.data[Math.floor(i / 4) * 3 + (i % 4)]!))};
  expect(resized(four, 15, 10)).toEqual(small);
});

test("a quad grows by its own height, keeps its middle and turns four times to itself", () => {
  const flat = rectangle(100, 20);
  expect(sizeOf(grown(flat, 0.25, 0.3))).toEqual({width: expect.closeTo(110, 6), height: expect.closeTo(32, 6)});
  expect(turned(turned(crooked, 1), 3)).toEqual(crooked);
  expect(within(crooked, {x: 50, y: 30})).toBe(true);
  expect(within(turned(crooked, 2), {x: 0, y: 0})).toBe(false);
});

function striped(width: number, height: number): Pixels {
  return {width, height, channels: 3, data: Uint8Array.from({length: width * height * 3}, (_, i) => (Math.floor(i / 3) * 37 + (i % 3) * 50) % 256)};
}

// Aids for the eye change what they say they change, and nothing else.
import {expect, test} from "vitest";
import {applyAids, noAids, type Shades} from "../../../web/reader/aids.ts";

const picture = (width: number, height: number, at: (x: number, y: number) => readonly [number, number, number]): Shades => {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data.set([...at(x, y), 255], (y * width + x) * 4);
  return {width, height, data};
};
const reds = ({data}: Shades) => [...data].filter((_, i) => i % 4 === 0);
const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

test("one channel alone is shown as shades of grey", () => {
  const one = picture(4, 1, () => [10, 120, 200]);
  applyAids(one, {...noAids, channel: "blue"});
  expect([...one.data.slice(0, 4)]).toEqual([200, 200, 200, 255]);
});

test("more contrast takes faded ink from grey on grey to black on white", () => {
  const faded = picture(64, 8, (x) => (x % 8 < 2 ? [110, 110, 110] : [140, 140, 140]));
  applyAids(faded, {...noAids, stretch: true});
  expect(spread(reds(faded))).toBeGreaterThan(240);
});

test("even light shows ink in the shade as clearly as ink in the light", () => {
  const slope = (x: number) => 60 + x / 2;
  const shaded = picture(320, 40, (x) => (x % 16 < 4 ? [slope(x) - 25, slope(x) - 25, slope(x) - 25] : [slope(x), slope(x), slope(x)]));
  const contrast = (from: number) => spread(reds(shaded).slice(from, from + 16));
  const before = contrast(16);
  applyAids(shaded, {...noAids, even: true});
  expect(contrast(16)).toBeGreaterThan(before * 1.5);
  expect(contrast(288)).toBeGreaterThan(before * 1.5);
});

test("dark for light twice is the picture again, and no aid leaves it alone", () => {
  const one = picture(8, 8, (x, y) => [x * 30, y * 30, 77]);
  const before = [...one.data];
  applyAids(one, noAids);
  expect([...one.data]).toEqual(before);
  for (let i = 0; i < 2; i++) applyAids(one, {...noAids, negative: true});
  expect([...one.data]).toEqual(before);
});

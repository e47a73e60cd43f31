// Made-up photos with nothing to read in them: cloth, seams, buttons, shadows, noise.
import sharp from "sharp";
import type {Pixels} from "../../reader/reader.ts";
import {seeded} from "../simulate/random.ts";
import {bell, between} from "./chance.ts";
import {bumps} from "./raster.ts";

export type Nothing = "denim" | "checks" | "noise" | "shadow" | "buttons" | "stitches" | "black" | "white";
export const nothings: readonly Nothing[] = ["denim", "checks", "noise", "shadow", "buttons", "stitches", "black", "white"];

/** A photo without print. */
export function photoOfNothing(seed: number, kind: Nothing, width = 640, height = 480): Pixels {
  const random = seeded(seed);
  const soft = bumps(random, width, height, between(random, [20, 120])).values;
  const fine = bumps(random, width, height, 2).values;
  const [period, angle, wide] = [between(random, [3, 8]), between(random, [0, 3]), between(random, [30, 90])];
  const spots = Array.from({length: random.whole(2, 6)}, () => ({x: random.next() * width, y: random.next() * height, r: between(random, [15, 60])}));
  const noise = between(random, [1, 8]);
  const bright = (x: number, y: number, i: number): number => {
    const weave = Math.sin((2 * Math.PI * (x * Math.cos(angle) + y * Math.sin(angle))) / period);
    switch (kind) {
      case "denim": return 80 + 20 * weave + 30 * (fine[i]! - 0.5) + 40 * (soft[i]! - 0.5);
      case "checks": return 90 + 60 * Number(Math.floor(x / wide) % 2 === 0) + 40 * Number(Math.floor(y / wide) % 2 === 0) + 10 * weave;
      case "noise": return 255 * random.next();
      case "shadow": return 30 + 190 * soft[i]!;
      case "buttons": return spots.some((spot) => Math.abs(Math.hypot(x - spot.x, y - spot.y) - spot.r) < 4) ? 210 : spots.some((spot) => Math.hypot(x - spot.x, y - spot.y) < spot.r) ? 150 : 70 + 15 * weave;
      case "stitches": return Math.abs(y - height / 2 - 8 * Math.sin(x / 90)) < 3 && x % 16 < 10 ? 210 : 60 + 20 * weave;
      case "black": return 6;
      case "white": return 254;
    }
  };
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const value = bright(x, y, y * width + x) + bell(random) * (kind === "black" || kind === "white" ? 1 : noise);
      for (let c = 0; c < 3; c++) data[(y * width + x) * 3 + c] = Math.max(0, Math.min(255, Math.round(value * (c === 2 ? 1.1 : 1))));
    }
  }
  return {width, height, channels: 3, data};
}

/** A photo put into the middle of a much larger one, as a camera of many megapixels takes it. */
export async function inLargePhoto(jpeg: Uint8Array, width: number, height: number, share: number): Promise<Uint8Array> {
  const label = await sharp(jpeg).resize(Math.round(width * share), Math.round(height * share), {fit: "inside", kernel: "cubic"}).toBuffer();
  return sharp({create: {width, height, channels: 3, background: {r: 70, g: 78, b: 98}}}).composite([{input: label}]).jpeg({quality: 88}).toBuffer();
}

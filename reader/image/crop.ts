// Cuts a quad out of a photo and lays it flat, with as much averaging as the photo has pixels to spare.
import type {Quad} from "../model.ts";
import type {Pixels} from "../reader.ts";
import {distance, projection, rectangle} from "./plane.ts";

/** A colour picture as three planes, red, green, blue, each width × height numbers of 0 to 255. */
export interface Planes {
  readonly width: number;
  readonly height: number;
  readonly planes: readonly [Float32Array, Float32Array, Float32Array];
}

/** Samples along one side of a pixel, at most: a hundred-megapixel photo must not take a minute. */
const mostSamples = 4;

/**
 * The quad as a flat picture of the given size; beyond the photo its edge goes on.
 * @returns null when the quad spans no area
 */
export function crop(image: Pixels, quad: Quad, width: number, height: number): Planes | null {
  const p = projection(rectangle(width, height), quad);
  if (p === null) return null;
  const [a, b, c, d] = quad as [Quad[0], Quad[0], Quad[0], Quad[0]];
  const across = samplesFor(Math.max(distance(a!, b!), distance(d!, c!)) / width);
  const down = samplesFor(Math.max(distance(a!, d!), distance(b!, c!)) / height);
  const planes: [Float32Array, Float32Array, Float32Array] = [new Float32Array(width * height), new Float32Array(width * height), new Float32Array(width * height)];
  const {data, channels} = image;
  const [right, bottom, stride] = [image.width - 1, image.height - 1, image.width * channels];
  const share = 1 / (across * down);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let [red, green, blue] = [0, 0, 0];
      for (let j = 0; j < down; j++) {
        for (let i = 0; i < across; i++) {
          const [s, t] = [x + (i + 0.5) / across, y + (j + 0.5) / down];
          const w = p[6]! * s + p[7]! * t + 1;
          const u = clamp((p[0]! * s + p[1]! * t + p[2]!) / w - 0.5, right);
          const v = clamp((p[3]! * s + p[4]! * t + p[5]!) / w - 0.5, bottom);
          const [left, top] = [Math.floor(u), Math.floor(v)];
          const [fx, fy] = [u - left, v - top];
          const at = top * stride + left * channels;
          const next = left < right ? channels : 0;
          const under = top < bottom ? stride : 0;
          const [w0, w1, w2, w3] = [(1 - fx) * (1 - fy), fx * (1 - fy), (1 - fx) * fy, fx * fy];
          red += data[at]! * w0 + data[at + next]! * w1 + data[at + under]! * w2 + data[at + under + next]! * w3;
          green += data[at + 1]! * w0 + data[at + next + 1]! * w1 + data[at + under + 1]! * w2 + data[at + under + next + 1]! * w3;
          blue += data[at + 2]! * w0 + data[at + next + 2]! * w1 + data[at + under + 2]! * w2 + data[at + under + next + 2]! * w3;
        }
      }
      const at = y * width + x;
      planes[0][at] = red * share;
      planes[1][at] = green * share;
      planes[2][at] = blue * share;
    }
  }
  return {width, height, planes};
}

const samplesFor = (scale: number) => Math.max(1, Math.min(mostSamples, Math.round(scale)));

/** Also turns what is no number, as of a quad that crosses itself, into the edge. */
const clamp = (value: number, most: number) => (value > 0 ? Math.min(value, most) : 0);

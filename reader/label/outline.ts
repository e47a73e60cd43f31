// A label's outline proposed from its lines, and a label laid flat by its outline.
import {hullOf} from "../find/rectangle.ts";
import {crop} from "../image/crop.ts";
import {projection, rectangle, sizeOf, type Projection} from "../image/plane.ts";
import type {Corner, Quad} from "../model.ts";
import type {Pixels} from "../reader.ts";

/**
 * A rectangle along the direction of reading around all lines, a line's height away from them, cut to the photo's edges where it can be.
 * @param angle  degrees clockwise
 */
export function outlineAround(quads: readonly Quad[], angle: number): Quad | null {
  const hull = hullOf(quads.flat());
  if (hull.length < 3) return null;
  const heights = quads.map((quad) => sizeOf(quad).height).sort((a, b) => a - b);
  const room = heights[heights.length >> 1]!;
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const across = hull.map(({x, y}) => x * cos + y * sin);
  const down = hull.map(({x, y}) => y * cos - x * sin);
  const [left, right, top, bottom] = [Math.min(...across) - room, Math.max(...across) + room, Math.min(...down) - room, Math.max(...down) + room];
  const corner = (s: number, t: number): Corner => ({x: s * cos - t * sin, y: s * sin + t * cos});
  return [corner(left, top), corner(right, top), corner(right, bottom), corner(left, bottom)];
}

export interface Flat {
  readonly pixels: Pixels;
  /** From the flat picture to the photo. */
  readonly back: Projection;
}

/**
 * What lies within an outline as a flat upright picture, at the photo's own size or smaller.
 * @param longest  most pixels on its longer side
 * @returns null for an outline that spans no area
 */
export function straightened(image: Pixels, outline: Quad, longest = 1600): Flat | null {
  const size = sizeOf(outline);
  if (!(size.width >= 8 && size.height >= 8)) return null;
  const scale = Math.min(1, longest / Math.max(size.width, size.height));
  const [width, height] = [Math.max(8, Math.round(size.width * scale)), Math.max(8, Math.round(size.height * scale))];
  const flat = crop(image, outline, width, height);
  const back = projection(rectangle(width, height), outline);
  if (flat === null || back === null) return null;
  const data = new Uint8ClampedArray(width * height * 3);
  flat.planes.forEach((plane, c) => plane.forEach((value, i) => (data[i * 3 + c] = value)));
  return {pixels: {width, height, channels: 3, data}, back};
}

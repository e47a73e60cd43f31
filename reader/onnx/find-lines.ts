// Finds lines of print in a photo: shrunk, shown to the finder, its map turned into boxes of the photo.
import {resized} from "../image/shrink.ts";
import {lineBoxes} from "../find/line-boxes.ts";
import {grown} from "../image/plane.ts";
import type {FoundLine, Pixels} from "../reader.ts";
import type {Session} from "./session.ts";

/** Longest side that the finder is shown; small photos are not drawn out further than twice. */
const longSide = 960;
const mostDrawnOut = 2;
/** The finder's boxes leave so much room, by their height, above and below the print. Measured, docs/decisions/0019. */
const tooHigh = 0.125;
/** Means and spreads of red, green and blue that the finder was taught with (those of ImageNet). */
const mean = [0.485, 0.456, 0.406];
const spread = [0.229, 0.224, 0.225];

/** Lines from the top down. */
export async function findLines(finder: Session, image: Pixels): Promise<FoundLine[]> {
  if (image.width < 1 || image.height < 1) return [];
  const scale = Math.min(mostDrawnOut, longSide / Math.max(image.width, image.height));
  const [width, height] = [image.width, image.height].map((length) => Math.max(32, Math.round((length * scale) / 32) * 32)) as [number, number];
  const {planes} = resized(image, width, height);
  const data = new Float32Array(3 * width * height);
  // Blue first: the order that the finder was taught, its means notwithstanding.
  for (let c = 0; c < 3; c++) {
    const plane = planes[2 - c]!;
    for (let i = 0; i < plane.length; i++) data[c * plane.length + i] = (plane[i]! / 255 - mean[c]!) / spread[c]!;
  }
  const map = await finder.run(data, [1, 3, height, width]);
  const [sx, sy] = [image.width / width, image.height / height];
  const lines = lineBoxes({width, height, p: map.data}).map(({quad, sure}) => ({quad: grown(quad.map(({x, y}) => ({x: x * sx, y: y * sy})), 0, -tooHigh), sure}));
  return lines.sort((a, b) => middle(a) - middle(b));
}

const middle = ({quad}: FoundLine) => quad.reduce((sum, {y}) => sum + y, 0);

// Which way the lines of a label run, and the quads of all lines named for a reader who looks that way.
import type {LabelReading, Quad} from "../model.ts";
import {sizeOf, turned} from "../image/plane.ts";

/** Angle of the reading direction in the photo, in degrees clockwise from "to the right". */
export const angleOf = (quad: Quad): number => {
  const [a, b, c, d] = quad as [Quad[0], Quad[0], Quad[0], Quad[0]];
  return (Math.atan2(b!.y - a!.y + c!.y - d!.y, b!.x - a!.x + c!.x - d!.x) * 180) / Math.PI;
};

/** A line is long enough to tell a direction. */
const isLong = (quad: Quad) => {
  const {width, height} = sizeOf(quad);
  return width > height * 1.8;
};

/** The direction along which most print runs, to the right or, when it stands, down; 0 when no line is long enough to tell. */
export function commonAngle(quads: readonly Quad[]): number {
  let [x, y] = [0, 0];
  for (const quad of quads.filter(isLong)) {
    // Doubled, so that a line and the same line upside down count alike.
    const double = (angleOf(quad) * Math.PI) / 90;
    const {width} = sizeOf(quad);
    x += width * Math.cos(double);
    y += width * Math.sin(double);
  }
  const angle = x === 0 && y === 0 ? 0 : (Math.atan2(y, x) * 90) / Math.PI;
  return angle < -60 ? angle + 180 : angle;
}

/** How far apart two directions are, 0 to 180. */
export const between = (a: number, b: number) => Math.abs(((((a - b) % 360) + 540) % 360) - 180);

/** The same corners, beginning where the reading direction is nearest to an angle; long ones are read along their long side. */
export function readAlong(quad: Quad, angle: number): Quad {
  const ways = [0, 1, 2, 3].map((quarters) => turned(quad, quarters)).filter((way) => !isLong(quad) || isLong(way));
  return ways.reduce((best, way) => (between(angleOf(way), angle) < between(angleOf(best), angle) ? way : best));
}

/** The quarter turn, clockwise, that brings a reading direction nearest to "to the right". */
export const turnFor = (angle: number): LabelReading["turn"] => ((((Math.round(-angle / 90) % 4) + 4) % 4) * 90) as LabelReading["turn"];

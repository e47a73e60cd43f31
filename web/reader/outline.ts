// The outline of a label drawn over its photo: how its corners stand on the turned photo, and how far they may be moved.
import type {Corner, LabelReading, Quad} from "../../reader/model.ts";

export interface Size {
  readonly width: number;
  readonly height: number;
}

export type Turn = LabelReading["turn"];

/** The size of a photo after it was turned. */
export const turnedSize = ({width, height}: Size, turn: Turn): Size => (turn % 180 === 0 ? {width, height} : {width: height, height: width});

/** Where a point of the photo stands after the photo was turned clockwise. */
export function toTurned({x, y}: Corner, {width, height}: Size, turn: Turn): Corner {
  if (turn === 90) return {x: height - y, y: x};
  if (turn === 180) return {x: width - x, y: height - y};
  if (turn === 270) return {x: y, y: width - x};
  return {x, y};
}

/** The other way round. */
export const fromTurned = (point: Corner, size: Size, turn: Turn): Corner => toTurned(point, turnedSize(size, turn), ((360 - turn) % 360) as Turn);

export const nextTurn = (turn: Turn, by: 90 | -90): Turn => ((turn + by + 360) % 360) as Turn;

/** The whole photo as an outline, its corners named for a reader of the turned photo. */
export function wholePhoto(size: Size, turn: Turn): Quad {
  const {width, height} = turnedSize(size, turn);
  return [{x: 0, y: 0}, {x: width, y: 0}, {x: width, y: height}, {x: 0, y: height}].map((corner) => fromTurned(corner, size, turn));
}

/**
 * The outline with one corner moved as far as it may go: within the photo, and no further than the outline stays one that bulges out at each corner.
 * @example
 * moveCorner(outline, 0, {x: -5, y: 10}, size)[0] // -> {x: 0, y: 10}
 */
export function moveCorner(outline: Quad, index: number, to: Corner, {width, height}: Size): Quad {
  const corner = {x: Math.min(width, Math.max(0, Math.round(to.x))), y: Math.min(height, Math.max(0, Math.round(to.y)))};
  const moved = outline.map((one, i) => (i === index ? corner : one));
  return bulges(moved) ? moved : outline;
}

/** Two sides that meet turn by this at least, as the sine of the angle: flatter, and the label has no area to speak of. */
const leastTurn = 0.05;

function bulges(quad: Quad): boolean {
  return quad.every((b, i) => {
    const [a, c] = [quad[(i + 3) % 4]!, quad[(i + 1) % 4]!];
    const cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    return cross > leastTurn * Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - b.x, c.y - b.y);
  });
}

// The smallest rectangle, turned as need be, around some points.
import type {Corner} from "../model.ts";

/** A rectangle by its middle, the unit direction of its first side, and its sides. */
export interface Turned {
  readonly middle: Corner;
  readonly along: Corner;
  readonly width: number;
  readonly height: number;
}

/**
 * The turned rectangle of least area around points.
 * @returns null for fewer than three points that span an area
 * @source  one side of it lies on a side of the convex hull: Freeman and Shapira 1975; the hull by the monotone chain of Andrew 1979; from memory
 */
export function smallestRectangle(points: readonly Corner[]): Turned | null {
  const hull = hullOf(points);
  let best: (Turned & {area: number}) | null = null;
  for (let i = 0; i < hull.length; i++) {
    const [a, b] = [hull[i]!, hull[(i + 1) % hull.length]!];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length === 0) continue;
    const along = {x: (b.x - a.x) / length, y: (b.y - a.y) / length};
    let [least, most, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    for (const {x, y} of hull) {
      const [s, t] = [x * along.x + y * along.y, y * along.x - x * along.y];
      [least, most, top, bottom] = [Math.min(least, s), Math.max(most, s), Math.min(top, t), Math.max(bottom, t)];
    }
    const area = (most - least) * (bottom - top);
    const [s, t] = [(least + most) / 2, (top + bottom) / 2];
    if (best === null || area < best.area) best = {area, along, width: most - least, height: bottom - top, middle: {x: s * along.x - t * along.y, y: s * along.y + t * along.x}};
  }
  return best;
}

/** The corners of the convex hull in order. */
export function hullOf(points: readonly Corner[]): Corner[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (from: readonly Corner[]) => {
    const chain: Corner[] = [];
    for (const point of from) {
      while (chain.length > 1 && cross(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

const cross = (o: Corner, a: Corner, b: Corner) => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

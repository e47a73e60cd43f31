// Geometry of quads and the flat projection that takes four corners to four others.
import type {Corner, Quad} from "../model.ts";

/** Nine numbers, row by row, the last one 1. */
export type Projection = readonly number[];

export const distance = (a: Corner, b: Corner) => Math.hypot(b.x - a.x, b.y - a.y);

/** Mean length of top and bottom, and of the two sides. */
export function sizeOf(quad: Quad): {width: number; height: number} {
  const [a, b, c, d] = quad as [Corner, Corner, Corner, Corner];
  return {width: (distance(a, b) + distance(d, c)) / 2, height: (distance(a, d) + distance(b, c)) / 2};
}

export const centreOf = (quad: Quad): Corner => ({x: quad.reduce((sum, {x}) => sum + x, 0) / 4, y: quad.reduce((sum, {y}) => sum + y, 0) / 4});

export const rectangle = (width: number, height: number): Quad => [{x: 0, y: 0}, {x: width, y: 0}, {x: width, y: height}, {x: 0, y: height}];

/**
 * The projection that takes the corners of one quad to those of another.
 * @returns null when the corners of `from` do not span an area, or one of `to` would lie at infinity
 * @source  eight linear equations for the eight free numbers, solved with pivots; common in any text on plane projection, from memory
 */
export function projection(from: Quad, to: Quad): Projection | null {
  const rows: number[][] = [];
  for (let i = 0; i < 4; i++) {
    const {x, y} = from[i]!;
    const {x: u, y: v} = to[i]!;
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y, u], [0, 0, 0, x, y, 1, -v * x, -v * y, v]);
  }
  for (let column = 0; column < 8; column++) {
    let pivot = column;
    for (let row = column + 1; row < 8; row++) if (Math.abs(rows[row]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = row;
    if (!(Math.abs(rows[pivot]![column]!) > 1e-9)) return null;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    for (let row = 0; row < 8; row++) {
      if (row === column) continue;
      const factor = rows[row]![column]! / rows[column]![column]!;
      for (let k = column; k < 9; k++) rows[row]![k]! -= factor * rows[column]![k]!;
    }
  }
  const found = [...rows.map((row, i) => row[8]! / row[i]!), 1];
  return found.every(Number.isFinite) ? found : null;
}

/** Where a projection takes a point. */
export function project(p: Projection, x: number, y: number): Corner {
  const w = p[6]! * x + p[7]! * y + p[8]!;
  return {x: (p[0]! * x + p[1]! * y + p[2]!) / w, y: (p[3]! * x + p[4]! * y + p[5]!) / w};
}

/** A quad made larger on its left and right by `sideways`, above and below by `upright` of its own height; the same quad when it spans no area. */
export function grown(quad: Quad, sideways: number, upright: number): Quad {
  const {width, height} = sizeOf(quad);
  const p = projection(rectangle(width, height), quad);
  if (p === null) return quad;
  const [dx, dy] = [sideways * height, upright * height];
  const corners = [[-dx, -dy], [width + dx, -dy], [width + dx, height + dy], [-dx, height + dy]].map(([x, y]) => project(p, x!, y!));
  return corners.every(({x, y}) => Number.isFinite(x) && Number.isFinite(y)) ? corners : quad;
}

/** The same four corners, named for a reader who turned the photo clockwise by so many quarters. */
export const turned = (quad: Quad, quarters: number): Quad => [0, 1, 2, 3].map((i) => quad[(i - quarters + 8) % 4]!);

/** A quad seen through a projection. */
export const projected = (p: Projection, quad: Quad): Quad => quad.map(({x, y}) => project(p, x, y));

/** Whether a point lies within a quad of either winding. */
export function within(quad: Quad, {x, y}: Corner): boolean {
  const sides = quad.map((a, i) => {
    const b = quad[(i + 1) % 4]!;
    return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
  });
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}

// From a map of how much each pixel looks like print to turned boxes around lines.
import type {Corner, Quad} from "../model.ts";
import type {FoundLine} from "../reader.ts";
import {smallestRectangle} from "./rectangle.ts";

/** A map as the finder gives it, width × height chances. */
export interface PrintMap {
  readonly width: number;
  readonly height: number;
  readonly p: ArrayLike<number>;
}

const print = 0.3;
const sureEnough = 0.45;
/** The finder was taught shrunken boxes; they are grown by area × this ÷ girth. */
const growth = 1.6;
const leastPixels = 12;
const mostBoxes = 200;

/**
 * Boxes around the lines of a map, in the pixels of the map; the long side is the direction of reading, to the right or, when it stands, down.
 * @source threshold, mean inside, growth and the meaning of the map: Liao, Wan, Yao, Chen, Bai, AAAI 2020, section 3.4; the numbers measured, docs/decisions/0019
 */
export function lineBoxes(map: PrintMap): FoundLine[] {
  const found: FoundLine[] = [];
  for (const {edge, sure, count} of patches(map)) {
    if (count < leastPixels || sure < sureEnough) continue;
    const box = smallestRectangle(edge);
    if (box === null) continue;
    const [width, height] = [box.width + 1, box.height + 1];
    if (Math.min(width, height) < 3) continue;
    const more = (width * height * growth) / (2 * (width + height));
    found.push({quad: inReadingOrder(cornersOf(box.middle, box.along, width / 2 + more, height / 2 + more)), sure});
  }
  return found.sort((a, b) => b.sure - a.sure).slice(0, mostBoxes);
}

function cornersOf(middle: Corner, along: Corner, half: number, upright: number): Quad {
  const corner = (s: number, t: number) => ({x: middle.x + s * along.x - t * along.y + 0.5, y: middle.y + s * along.y + t * along.x + 0.5});
  return [corner(-half, -upright), corner(half, -upright), corner(half, upright), corner(-half, upright)];
}

/** Corners renamed so that the long side is read, to the right or down; nearly square ones are read to the right. */
function inReadingOrder(quad: Quad): Quad {
  const sides = quad.map((a, i) => ({x: quad[(i + 1) % 4]!.x - a.x, y: quad[(i + 1) % 4]!.y - a.y}));
  const long = Math.max(...sides.map(({x, y}) => Math.hypot(x, y)));
  const fit = sides.map(({x, y}) => {
    const length = Math.hypot(x, y);
    // Towards the right counts, and down a little, so that a standing line is read downwards.
    return (length > long / 1.3 ? 0 : -10) + (x + y * 0.1) / length;
  });
  const first = fit.indexOf(Math.max(...fit));
  return [0, 1, 2, 3].map((i) => quad[(first + i) % 4]!);
}

interface Patch {
  /** Left and right ends of every row of the patch: all that its hull needs. */
  readonly edge: Corner[];
  readonly sure: number;
  readonly count: number;
}

/** Connected pixels above the threshold. */
function* patches({width, height, p}: PrintMap): Generator<Patch> {
  const seen = new Uint8Array(width * height);
  const stack: number[] = [];
  for (let start = 0; start < seen.length; start++) {
    if (seen[start] || p[start]! < print) continue;
    let [sum, count] = [0, 0];
    const ends = new Map<number, [number, number]>();
    seen[start] = 1;
    stack.push(start);
    while (stack.length > 0) {
      const at = stack.pop()!;
      const x = at % width;
      const y = (at - x) / width;
      sum += p[at]!;
      count++;
      const end = ends.get(y);
      if (end) [end[0], end[1]] = [Math.min(end[0], x), Math.max(end[1], x)];
      else ends.set(y, [x, x]);
      const near = [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, y < height - 1 ? at + width : -1];
      for (const next of near) {
        if (next < 0 || seen[next] || p[next]! < print) continue;
        seen[next] = 1;
        stack.push(next);
      }
    }
    yield {edge: [...ends].flatMap(([y, [left, right]]) => [{x: left, y}, {x: right, y}]), sure: sum / count, count};
  }
}

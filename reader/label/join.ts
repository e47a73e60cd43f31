// Pieces of one printed row that the finder saw apart, put together: figures set wide apart are one row still.
import type {Corner, Quad} from "../model.ts";
import {centreOf, sizeOf} from "../image/plane.ts";
import {angleOf, between} from "./direction.ts";

/** Ends of pieces may lie so many heights apart, and their middles so far off each other's line. */
const mostGap = 1.7;
const mostOff = 0.4;
/** Pieces differ in height at most so many times; a dash or a dot is lower, but lies within the line. */
const mostUneven = 1.7;
const mostTilt = 10;

/** @param quads  all named along one direction of reading: see `readAlong` */
export function joinPieces(quads: readonly Quad[]): Quad[] {
  const left = [...quads];
  for (let i = 0; i < left.length; i++) {
    for (let j = i + 1; j < left.length; j++) {
      if (!isOneRow(left[i]!, left[j]!)) continue;
      left[i] = around(left[i]!, left[j]!);
      left.splice(j, 1);
      // The longer row may now reach pieces that were too far away.
      j = i;
    }
  }
  return left;
}

function isOneRow(a: Quad, b: Quad): boolean {
  const [large, small] = sizeOf(a).width >= sizeOf(b).width ? [a, b] : [b, a];
  const [high, low] = [sizeOf(large), sizeOf(small)];
  const isMark = low.height < high.height && low.width < high.height * 1.2;
  const uneven = Math.max(high.height, low.height) / Math.max(1e-6, Math.min(high.height, low.height));
  if (!isMark && (uneven > mostUneven || (low.width > low.height * 1.8 && between(angleOf(a), angleOf(b)) > mostTilt))) return false;
  const {along, down} = axesOf(large);
  const [from, to] = [centreOf(large), centreOf(small)];
  const [x, y] = [(to.x - from.x) * along.x + (to.y - from.y) * along.y, (to.x - from.x) * down.x + (to.y - from.y) * down.y];
  return Math.abs(y) < mostOff * high.height && Math.abs(x) - (high.width + low.width) / 2 < mostGap * high.height;
}

/** The smallest quad along the longer piece that holds both. */
function around(a: Quad, b: Quad): Quad {
  const [large, small] = sizeOf(a).width >= sizeOf(b).width ? [a, b] : [b, a];
  const {along, down} = axesOf(large);
  const at = ({x, y}: Corner) => ({s: x * along.x + y * along.y, t: x * down.x + y * down.y});
  const corners = [...large, ...small].map(at);
  const [left, right] = [Math.min(...corners.map(({s}) => s)), Math.max(...corners.map(({s}) => s))];
  const [top, bottom] = [Math.min(...corners.map(({t}) => t)), Math.max(...corners.map(({t}) => t))];
  const corner = (s: number, t: number): Corner => ({x: s * along.x + t * down.x, y: s * along.y + t * down.y});
  return [corner(left, top), corner(right, top), corner(right, bottom), corner(left, bottom)];
}

function axesOf(quad: Quad): {along: Corner; down: Corner} {
  const angle = (angleOf(quad) * Math.PI) / 180;
  return {along: {x: Math.cos(angle), y: Math.sin(angle)}, down: {x: -Math.sin(angle), y: Math.cos(angle)}};
}

// Whether a label stands upright or on its head: a few lines are read both ways, and the way that reads better is taken.
import type {LabelReading, Quad} from "../model.ts";
import {sizeOf} from "../image/plane.ts";
import type {LabelReader, OpenRow, Pixels} from "../reader.ts";
import {between, commonAngle, readAlong} from "./direction.ts";
import {sureness} from "./sureness.ts";

export interface WayUp {
  /** Degrees clockwise of the reading direction. */
  readonly angle: number;
  /** Rows that were read on the way, by the key of their quad. */
  readonly known: ReadonlyMap<string, OpenRow>;
}

/** Lines that are read both ways, at most. */
const mostTried = 3;
/** A line of at least so many characters, each read so surely, is not on its head. */
const sureLength = 5;
const sureCharacter = 0.9;
const leastSure = 0.001;

export async function rightWayUp(reader: LabelReader, image: Pixels, lines: readonly Quad[], turn: LabelReading["turn"] | undefined): Promise<WayUp> {
  const angle = commonAngle(lines);
  const known = new Map<string, OpenRow>();
  if (turn !== undefined) {
    const wanted = -turn;
    const ways = [angle, angle + 180];
    const nearest = between(ways[0]!, wanted) <= between(ways[1]!, wanted) ? ways[0]! : ways[1]!;
    return {angle: between(nearest, wanted) <= 45 ? nearest : wanted, known};
  }
  let [upright, onHead] = [0, 0];
  for (const quad of telling(lines).slice(0, mostTried)) {
    const way = readAlong(quad, angle);
    const row = await reader.readLine(image, way);
    known.set(quadKey(way), row);
    const sure = sureness(row.row);
    if (row.row.best.length >= sureLength && sure > sureCharacter) return {angle, known};
    const other = sureness((await reader.readLine(image, readAlong(quad, angle + 180), {looks: 1})).row);
    upright += Math.log(Math.max(leastSure, sure));
    onHead += Math.log(Math.max(leastSure, other));
    if (Math.abs(upright - onHead) > 1) break;
  }
  return onHead > upright ? {angle: angle + 180, known: new Map()} : {angle, known};
}

/** Long lines first, but none so long that it may be a seam. */
function telling(lines: readonly Quad[]): Quad[] {
  const shaped = lines.map((quad) => ({quad, ...sizeOf(quad)}));
  const good = shaped.filter(({width, height}) => width > height * 2.2 && width < height * 25);
  return (good.length > 0 ? good : shaped).sort((a, b) => b.width - a.width).map(({quad}) => quad);
}

export const quadKey = (quad: Quad) => quad.map(({x, y}) => `${x},${y}`).join(";");

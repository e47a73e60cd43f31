// Why a photo could not be read, or was read with doubt, in the order in which a dealer can mend it.
import type {Problem} from "../../engine/problem.ts";
import {sizeOf} from "../image/plane.ts";
import type {Quad, ReadRow} from "../model.ts";
import * as say from "../problems.ts";
import type {Pixels} from "../reader.ts";
import {lightOf} from "./light.ts";

const dark = 55;
const blown = 0.4;
const soft = 0.16;
const small = 12;
/** Rows are clear when their likeliest reading is at least this likely. */
const clear = 0.6;

export function adviceFor(image: Pixels, lines: readonly Quad[], rows: readonly ReadRow[]): Problem[] {
  const doubtful = rows.filter((row) => (row.strings[0]?.p ?? 0) < clear).length;
  if (rows.length > 0 && doubtful * 2 <= rows.length) return [];
  const light = lightOf(image);
  const heights = lines.map((quad) => sizeOf(quad).height).sort((a, b) => a - b);
  const middle = heights[heights.length >> 1];
  const found = [
    ...(light.bright < dark ? [say.tooDark()] : []),
    ...(light.blown > blown ? [say.glare()] : []),
    ...(middle !== undefined && middle < small ? [say.tooSmall(Math.max(1, Math.round(middle)))] : []),
    ...(light.bright >= dark && light.sharp > 0 && light.sharp < soft ? [say.blurred()] : []),
  ];
  if (rows.length > 0 || found.length > 0) return found;
  return [lines.length === 0 ? say.nothingLikePrint() : say.notReadable(lines.length)];
}

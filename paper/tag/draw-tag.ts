// One hang tag as a drawing, in points: the hole, the words, and the code of the garment's number.
import {element} from "../../rulebooks/svg.ts";
import type {TagCode} from "../../commands/paper/choices.ts";
import {bars, fitsBars, qrCode} from "../draw/codes.ts";
import {inks, mm, stitches, words, type Drawing} from "../draw/svg-page.ts";
import {fitted, linesOf, widthOf} from "../face/runs.ts";
import type {Tag} from "./tag.ts";
import type {TagFormat} from "../../commands/paper/tag-format.ts";

const holeWidth = mm(4);

export function drawTag(tag: Tag, format: TagFormat, code: TagCode): Drawing {
  const [width, height] = [mm(format.width), mm(format.height)];
  const pad = mm(format.height < 40 ? 3 : 4);
  const hole = {x: mm(format.hole.x), y: mm(format.hole.y)};
  // A number that bars cannot carry, or that would make them too fine, is told by a QR code.
  const barWidth = format.code === "below" ? width - 2 * pad : width * 0.5;
  const asBars = code === "bars" && fitsBars(tag.number) && barWidth / (35 + 11 * tag.number.length) >= mm(0.19);
  const drawn = asBars ? bars(tag.number, barWidth, mm(format.code === "below" ? 12 : 7.5)) : qrCode(tag.number, mm(format.code === "below" ? 24 : Math.min(24, format.height - 8)), `QR code: ${tag.number}`);
  const parts = [
    element("circle", {cx: hole.x, cy: hole.y, r: holeWidth / 2, stroke: inks.quiet, "stroke-width": 0.4, fill: "none"}),
    element("path", {d: `M${hole.x - 3} ${hole.y}h6M${hole.x} ${hole.y - 3}v6`, stroke: inks.quiet, "stroke-width": 0.3, fill: "none"}),
  ];
  if (format.code === "below") {
    const at = height - pad - drawn.height;
    parts.push(text(tag, pad, hole.y + mm(6), width - 2 * pad, at - 4), placed(drawn, (width - drawn.width) / 2, at));
  } else {
    const left = hole.x + mm(5);
    const codeLeft = width - pad - drawn.width;
    const besideBars = asBars && format.height < 40;
    // Bars are wide: on a low tag they stand below the words, on the others beside them.
    if (asBars) parts.push(text(tag, left, pad, width - left - pad, height - pad - drawn.height - 2), placed(drawn, besideBars ? left : (left + width - pad - drawn.width) / 2, height - pad - drawn.height));
    else parts.push(text(tag, left, pad, codeLeft - left - 3, height - pad), placed(drawn, codeLeft, (height - drawn.height) / 2));
  }
  return {width, height, inside: parts.join(""), label: `Hang tag ${tag.number}`};
}

const placed = ({inside}: Drawing, x: number, y: number) => element("g", {transform: `translate(${x} ${y})`}, inside);

/** The words, from the top down, as many as have room; the number and the price always stand. */
function text(tag: Tag, x: number, top: number, width: number, bottom: number): string {
  const parts: string[] = [];
  const small = bottom - top < 80;
  let y = top;
  const line = (said: string, size: number, face: "sans" | "sans bold" | "serif", fill: string = inks.ink) => {
    if (said === "" || y + size > bottom) return;
    y += size * 1.18;
    parts.push(words(x, y, fitted(face, said, size, width), {size, face, fill}));
  };
  const big = fitSize(tag.number, width, small ? 13 : 19);
  if (!small) line(tag.shop, 6.6, "sans", inks.quiet);
  line(tag.number, big, "sans bold");
  const price = tag.price === "" ? 0 : small ? 12 : 18;
  const room = bottom - price;
  const lines = small ? [] : linesOf("sans", tag.title, 8, width).slice(0, 3);
  const rest: readonly (readonly [string, number, "sans" | "sans bold" | "serif", string?])[] = [
    ...lines.map((said) => [said, 8, "sans"] as const),
    [tag.made, fitSize(tag.made, width, small ? 9 : 14, small ? 6 : 9), "serif"],
    [tag.sure, small ? 6 : 7, "sans", inks.quiet],
    [tag.facts.join(" · "), small ? 6.6 : 8, "sans"],
  ];
  for (const [said, size, face, fill] of rest) if (y + size * 1.2 <= room) line(said, size, face, fill);
  if (tag.price !== "") {
    if (!small && y + 6 < room) parts.push(stitches(`M${x} ${bottom - price - 1}H${x + width}`, 0.7));
    parts.push(words(x, bottom - 2, tag.price, {size: fitSize(tag.price, width, small ? 10 : 14), face: "sans bold"}));
  }
  return parts.join("");
}

/** The largest size up to `most` in which a text has room. */
const fitSize = (said: string, width: number, most: number, least = 5): number => Math.max(least, Math.min(most, (0.99 * most * width) / Math.max(1, widthOf("sans bold", said, most))));

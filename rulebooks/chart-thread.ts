// Draws a window as a line of stitches: full ones while the mark was usual, thinner ones while it came in or died out.
import {height, spanOf, type Span, type Window} from "../engine/window/window.ts";
import {monthIndex} from "../engine/units.ts";
import {cut, element} from "./svg.ts";

/** Lengths in the chart's own units. */
const stitch = 6.5;
const gap = 3.5;
const levels = 6;
const fullWidth = 3.2;

/** Where months stand across the chart: `x(m)` is the start of month `m`. */
export interface Scale {
  readonly axis: Span;
  x(month: number): number;
}

/**
 * The stitches of a window at height `y`, cut to the chart's months, with a short bar tack where use became usual and where it ceased to be,
 * and an open chevron where the window goes on beyond the chart or has no known end.
 * @returns null when no month of the window lies in the chart
 */
export function thread(window: Window, y: number, colour: string, {axis, x}: Scale): {markup: string; from: number} | null {
  const span = spanOf(window, axis);
  if (!span) return null;
  const [left, right] = [x(span.from), x(span.until + 1)];
  const dashes: string[][] = Array.from({length: levels}, () => []);
  const monthAt = (at: number) => monthIndex(Math.min(span.until, Math.max(span.from, Math.floor(axis.from + ((at - x(axis.from)) / (x(axis.until + 1) - x(axis.from))) * (axis.until + 1 - axis.from)))));
  const count = Math.max(1, Math.round((right - left + gap) / (stitch + gap)));
  const step = (right - left + gap) / count;
  for (let i = 0; i < count; i++) {
    const start = left + i * step;
    const length = Math.max(1, step - gap);
    const level = Math.min(levels - 1, Math.floor(height(window, monthAt(start + length / 2)) * levels));
    dashes[level]!.push(`M${cut(start)} ${cut(y)}h${cut(length)}`);
  }
  const lines = dashes.flatMap((paths, level) => {
    const strength = (level + 1) / levels;
    return paths.length === 0 ? [] : [element("path", {d: paths.join(""), stroke: colour, "stroke-width": 0.9 + (fullWidth - 0.9) * strength, "stroke-opacity": 0.5 + 0.5 * strength})];
  });
  const inside = (month: number) => month > axis.from && month <= axis.until;
  const tacks = [window.begins?.[1], window.ends && window.ends[0] + 1].filter((month) => month != null && inside(month)).map((month) => `M${cut(x(month!))} ${cut(y - 4.5)}v9`);
  const goesOn = [
    ...(window.begins && window.begins[0] >= axis.from ? [] : [`M${cut(left - 5)} ${cut(y - 3.5)}l-4 3.5l4 3.5`]),
    ...(window.ends && window.ends[1] <= axis.until ? [] : [`M${cut(right + 5)} ${cut(y - 3.5)}l4 3.5l-4 3.5`]),
  ];
  const marks = [...tacks, ...goesOn].join("");
  return {markup: element("g", {"stroke-linecap": "round"}, lines.join("") + (marks ? element("path", {d: marks, stroke: colour, "stroke-width": 1.3, fill: "none"}) : "")), from: left};
}

// The ribbon of a finding: years along, months down, darkness for probability, and below it a line of stitches for each rule that spoke.
import type {Finding, Span, Window} from "../../engine/index.ts";
import {month, monthIndex} from "../../engine/index.ts";
import {monthNames, yearOf} from "../../engine/month/month.ts";
import {thread, type Scale} from "../../rulebooks/chart-thread.ts";
import {colours, element} from "../../rulebooks/svg.ts";
import {margin, sheet, top, words} from "./sheet.ts";

export interface Stitched {
  readonly name: string;
  readonly window: Window;
}

const names = 196;
const rowHeight = 13;
const threadHeight = 22;

/**
 * Draws a ribbon.
 * @param years  first and last year shown, both included
 * @param marks  windows to draw below, cut to these years
 */
export function ribbon(finding: Finding, {title, how, years, marks, width = 860}: {title: string; how: string; years: readonly [number, number]; marks: readonly Stitched[]; width?: number}): string {
  const axis: Span = {from: month(years[0], 1), until: month(years[1], 12)};
  const left = margin + names;
  const perMonth = (width - margin - left) / (axis.until + 1 - axis.from);
  const scale: Scale = {axis, x: (m) => left + (m - axis.from) * perMonth};
  const cells = top + 22;
  const below = cells + 12 * rowHeight + 20;
  const height = below + marks.length * threadHeight + 22;
  return sheet({title, how, width, height}, [
    ...monthNames.map((name, i) => words(left - 8, cells + i * rowHeight + 10, name.slice(0, 3), {size: 10, anchor: "end", fill: colours.quiet})),
    ...yearNames(axis, scale, cells - 7),
    ...Array.from({length: axis.until + 1 - axis.from}, (_, i) => cell(finding, axis.from + i, scale, cells, perMonth)),
    ...marks.flatMap(({name, window}, i) => {
      const y = below + i * threadHeight;
      return [words(margin, y + 4, name, {size: 11.5}), thread(window, y, colours.accent, scale)?.markup ?? ""];
    }),
  ]);
}

function yearNames(axis: Span, {x}: Scale, y: number): string[] {
  const list: string[] = [];
  for (let year = yearOf(axis.from); year <= yearOf(axis.until); year++) {
    const full = year % 5 === 0 || year === yearOf(axis.from);
    list.push(words(x(month(year, 1)) + (x(month(year + 1, 1)) - x(month(year, 1))) / 2, y, full ? String(year) : `’${String(year % 100).padStart(2, "0")}`, {size: full ? 11 : 9.5, anchor: "middle", fill: full ? colours.ink : colours.quiet}));
  }
  return list;
}

// A column is a year, so the twelve months of a year share its width.
function cell({posterior, first, best}: Finding, at: number, {x}: Scale, y: number, perMonth: number): string {
  const year = yearOf(monthIndex(at));
  const row = at - month(year, 1);
  const part = (posterior[at - first] ?? 0) / best.probability;
  const place = {x: x(month(year, 1)) + 1, y: y + row * rowHeight + 1, width: perMonth * 12 - 2, height: rowHeight - 2};
  const empty = element("rect", {...place, fill: colours.band});
  return part < 0.002 ? empty : empty + element("rect", {...place, fill: colours.ink, "fill-opacity": Math.min(1, Math.max(0.08, Math.sqrt(part)))});
}

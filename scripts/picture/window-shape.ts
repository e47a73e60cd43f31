// The height of one window month by month, with its four months named: what a soft end is.
import {heights, sayMonth, type Span, type Window} from "../../engine/index.ts";
import {month} from "../../engine/month/month.ts";
import {colours, cut, element} from "../../rulebooks/svg.ts";
import {line, margin, sheet, stitches, top, words} from "./sheet.ts";

const tall = 110;

/** Draws a window that has all four months. */
export function windowShape(window: Window, {title, how, years, width = 860}: {title: string; how: string; years: readonly [number, number]; width?: number}): string {
  const axis: Span = {from: month(years[0], 1), until: month(years[1], 12)};
  const left = margin + 70;
  const right = width - margin;
  const x = (m: number) => left + ((m - axis.from) / (axis.until + 1 - axis.from)) * (right - left);
  const foot = top + 40 + tall;
  const y = (h: number) => foot - h * tall;
  const curve = Array.from(heights(window, axis), (h, i) => `${i === 0 ? "M" : "L"}${cut(x(axis.from + i + 0.5))} ${cut(y(h))}`).join("");
  const [begins, ends] = [window.begins!, window.ends!];
  const named: readonly (readonly [month: number, text: string, high: boolean])[] = [
    [begins[0], "first seen", false], [begins[1], "usual from", true], [ends[0] + 1, "last usual", true], [ends[1] + 1, "last seen", false],
  ];
  const months = [begins[0], begins[1], ends[0], ends[1]];
  return sheet({title, how, width, height: foot + 84}, [
    element("path", {d: `${curve}L${cut(x(axis.until + 1))} ${foot}L${cut(x(axis.from))} ${foot}Z`, fill: colours.ink, "fill-opacity": 0.13}),
    line(curve, colours.ink, 2),
    line(`M${left} ${foot}H${right}`, colours.ink, 1.2),
    words(left - 10, y(1) + 4, "usual", {size: 11, anchor: "end", fill: colours.quiet}),
    words(left - 10, foot + 4, "not in use", {size: 11, anchor: "end", fill: colours.quiet}),
    ...named.flatMap(([at, text, high], i) => [
      stitches(`M${cut(x(at))} ${high ? y(1) - 8 : foot}V${high ? y(1) - 16 : y(1) - 16}`),
      words(x(at), y(1) - 36, text, {size: 12, anchor: "middle", weight: "bold"}),
      words(x(at), y(1) - 22, sayMonth(months[i]!).replace(/^(\w{3})\w*/, "$1"), {size: 11, anchor: "middle", fill: colours.quiet}),
    ]),
    ...yearTicks(axis, x, foot),
    words(margin, foot + 58, "Between two named months the height runs in a straight line and is read at the middle of each month.", {size: 11.5, fill: colours.quiet}),
  ]);
}

/** Years below a line, every second one named when they stand close. */
export function yearTicks(axis: Span, x: (month: number) => number, y: number): string[] {
  const list: string[] = [];
  const wide = x(axis.from + 12) - x(axis.from);
  const step = wide > 34 ? 1 : wide > 17 ? 2 : 5;
  for (let year = 1900 + Math.ceil(axis.from / 12); month(year, 1) <= axis.until + 1; year++) {
    const at = x(month(year, 1));
    list.push(line(`M${cut(at)} ${y}v${year % step === 0 ? 7 : 4}`, colours.ink, 0.8));
    if (year % step === 0) list.push(words(at, y + 20, String(year), {size: 10.5, anchor: "middle", fill: colours.quiet}));
  }
  return list;
}

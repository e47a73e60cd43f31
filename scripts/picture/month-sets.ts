// The months of a finding as bars, with the 50, 90 and 95 in 100 sets and the two bounds below.
import {sayMonth, sayRuns, type Finding, type Span} from "../../engine/index.ts";
import {month} from "../../engine/month/month.ts";
import {colours, cut, element} from "../../rulebooks/svg.ts";
import {line, margin, sheet, top, words} from "./sheet.ts";
import {yearTicks} from "./window-shape.ts";

const tall = 130;
const rowHeight = 26;

/** Draws the bars of some years. */
export function monthSets(finding: Finding, {title, how, years, width = 860}: {title: string; how: string; years: readonly [number, number]; width?: number}): string {
  const axis: Span = {from: month(years[0], 1), until: month(years[1], 12)};
  const left = margin + 150;
  const right = width - margin;
  const x = (m: number) => left + ((m - axis.from) / (axis.until + 1 - axis.from)) * (right - left);
  const foot = top + 10 + tall;
  const {posterior, first, best, sets, noEarlier, noLater} = finding;
  const bars = Array.from({length: axis.until + 1 - axis.from}, (_, i) => {
    const tallness = ((posterior[axis.from + i - first] ?? 0) / best.probability) * tall;
    return tallness < 0.3 ? "" : element("rect", {x: x(axis.from + i) + 0.8, y: foot - tallness, width: x(1) - x(0) - 1.6, height: tallness, fill: colours.ink});
  });
  const below = foot + 46;
  const setRows = sets.flatMap(({share, runs}, i) => {
    const y = below + i * rowHeight;
    return [
      words(left - 12, y + 4, `${Math.round(share * 100)} in 100 within`, {size: 11.5, anchor: "end"}),
      ...runs.map(({from, until}) => line(`M${cut(x(from))} ${y - 5}v10M${cut(x(from))} ${y}H${cut(x(until + 1))}M${cut(x(until + 1))} ${y - 5}v10`, colours.accent, 1.8)),
      words(Math.min(right - 150, x(runs.at(-1)!.until + 1) + 10), y + 4, sayRuns(runs), {size: 11.5, fill: colours.quiet}),
    ];
  });
  const boundsY = below + sets.length * rowHeight;
  return sheet({title, how, width, height: boundsY + 28}, [
    ...bars,
    line(`M${left} ${foot}H${right}`, colours.ink, 1.2),
    words(left - 12, foot - tall + 10, "likelier", {size: 11, anchor: "end", fill: colours.quiet}),
    ...yearTicks(axis, x, foot),
    ...setRows,
    words(left - 12, boundsY + 4, "bounds", {size: 11.5, anchor: "end"}),
    line(`M${cut(x(noEarlier))} ${boundsY - 6}v12m0 -6h14m-5 -4l5 4l-5 4`, colours.ink, 1.3),
    words(x(noEarlier) - 6, boundsY + 4, `no earlier than ${short(noEarlier)}`, {size: 11, anchor: "end", fill: colours.quiet}),
    line(`M${cut(x(noLater + 1))} ${boundsY - 6}v12m0 -6h-14m5 -4l-5 4l5 4`, colours.ink, 1.3),
    words(x(noLater + 1) + 6, boundsY + 4, `no later than ${short(noLater)}`, {size: 11, fill: colours.quiet}),
  ]);
}

const short = (m: Parameters<typeof sayMonth>[0]) => sayMonth(m).replace(/^(\w{3})\w*/, "$1");

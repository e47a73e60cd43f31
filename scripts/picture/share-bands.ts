// How values of one mark share out the garments of a month: bands that always add up to the whole.
import type {Span} from "../../engine/index.ts";
import {month} from "../../engine/month/month.ts";
import type {Shares} from "../../engine/mark/choice.ts";
import {colours, cut, element} from "../../rulebooks/svg.ts";
import {line, margin, sheet, top, words} from "./sheet.ts";
import {yearTicks} from "./window-shape.ts";

export interface Band {
  readonly id: string;
  readonly name: string;
}

const tall = 150;
/** Tints of ink and ochre that stay apart beside each other. */
const tints: readonly (readonly [colour: string, strength: number])[] = [[colours.ink, 0.2], [colours.ink, 0.5], [colours.accent, 0.75], [colours.ink, 0.8], [colours.accent, 0.35], [colours.ink, 0.35]];

/** Draws the shares of some values, the rest as plain paper on top; `axis` is that of the shares. */
export function shareBands({values}: Shares, axis: Span, bands: readonly Band[], {title, how, years, width = 860}: {title: string; how: string; years: readonly [number, number]; width?: number}): string {
  const shown: Span = {from: month(years[0], 1), until: month(years[1], 12)};
  const left = margin + 40;
  const right = width - margin;
  const x = (m: number) => left + ((m - shown.from) / (shown.until + 1 - shown.from)) * (right - left);
  const foot = top + 14 + tall;
  const months = Array.from({length: shown.until + 1 - shown.from}, (_, i) => shown.from + i);
  let base = months.map(() => 0);
  const painted = bands.map(({id}, i) => {
    const share = values.get(id)!;
    const above = months.map((m, j) => base[j]! + share[m - axis.from]!);
    const edge = (heights: readonly number[]) => months.map((m, j) => `${cut(x(m + 0.5))} ${cut(foot - heights[j]! * tall)}`);
    const [colour, strength] = tints[i % tints.length]!;
    const d = `M${edge(above).join("L")}L${edge(base).reverse().join("L")}Z`;
    base = above;
    return element("path", {d, fill: colour, "fill-opacity": strength, stroke: colours.paper, "stroke-width": 1});
  });
  const legendY = foot + 48;
  const each = (right - margin) / bands.length;
  return sheet({title, how, width, height: legendY + 26}, [
    ...painted,
    line(`M${left} ${foot}H${right}`, colours.ink, 1.2),
    ...([[0, "none"], [0.5, "half"], [1, "all"]] as const).map(([h, text]) => words(left - 8, foot - h * tall + 4, text, {size: 11, anchor: "end", fill: colours.quiet})),
    ...yearTicks(shown, x, foot),
    ...bands.flatMap(({name}, i) => {
      const [colour, strength] = tints[i % tints.length]!;
      const at = margin + i * each;
      return [element("rect", {x: at, y: legendY - 9, width: 18, height: 11, fill: colour, "fill-opacity": strength}), words(at + 25, legendY, name, {size: 11.5})];
    }),
  ]);
}

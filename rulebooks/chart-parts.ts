// The parts of a time chart around its threads: years, headings, rows with their names and figures, and what the stitches mean.
import {month, monthOfYear, sayMonth, parseMonth, yearOf} from "../engine/month/month.ts";
import {monthIndex} from "../engine/units.ts";
import {thread, type Scale} from "./chart-thread.ts";
import type {DatedRule} from "./dated-rules.ts";
import {colours, cut, element, escapeXml, fitted, textElement, textWidth} from "./svg.ts";

/** Measures of a chart, pixels: names from `margin`, threads from `left` to `right`, figures up to the right margin. */
export interface Frame extends Scale {
  readonly width: number;
  readonly margin: number;
  readonly names: number;
  readonly left: number;
  readonly right: number;
}

/** Lines for the years, with figures above and below. */
export function yearAxis({axis, x, left, right, width, margin}: Frame, top: number, bottom: number): string {
  const perYear = (right - left) / ((axis.until + 1 - axis.from) / 12);
  const step = [1, 2, 5, 10, 20, 50, 100].find((years) => years * perYear >= 46) ?? 200;
  const fine = step === 1 ? 1 : step === 2 ? 1 : step / 5;
  const [first, last] = [yearOf(axis.from) + (monthOfYear(axis.from) === 1 ? 0 : 1), yearOf(monthIndex(axis.until + 1))];
  const [thin, thick, figures]: [string[], string[], string[]] = [[], [], []];
  for (let year = first; year <= last; year++) {
    const at = x(month(year, 1));
    if (year % step === 0) {
      thick.push(`M${cut(at)} ${top}V${bottom}`);
      for (const y of [top - 7, bottom + 17]) figures.push(textElement({x: at, y, "font-size": 11, "text-anchor": "middle", fill: colours.ink}, String(year)));
    } else if (year % fine === 0) thin.push(`M${cut(at)} ${top}v4M${cut(at)} ${bottom - 4}v4`);
  }
  const rule = (y: number) => element("path", {d: `M${margin} ${y}H${width - margin}`, stroke: colours.ink, "stroke-width": 1.2});
  return [
    element("path", {d: thick.join(""), stroke: colours.line, "stroke-width": 1}),
    thin.length > 0 ? element("path", {d: thin.join(""), stroke: colours.quiet, "stroke-width": 0.8}) : "",
    rule(top),
    rule(bottom),
    ...figures,
    textElement({x: width - margin - 6, y: top - 26, "font-size": 11, "text-anchor": "end", fill: colours.quiet}, "first–last seen"),
  ].join("\n");
}

/** The name of a mark over its values. */
export function familyHead(name: string, y: number, {margin, width}: Frame): string {
  const shown = fitted(name.charAt(0).toUpperCase() + name.slice(1), width - 2 * margin - 12, 13);
  return (
    textElement({x: margin + 6, y, "font-size": 13, "font-weight": "bold", fill: colours.ink}, shown) +
    element("path", {d: `M${margin} ${y + 5.5}H${width - margin}`, stroke: colours.accent, "stroke-width": 1})
  );
}

/** One row: the name, dots that lead the eye, the thread, and the years in figures. */
export function ruleRow(rule: DatedRule, y: number, drawn: {markup: string; from: number}, {margin, names, width}: Frame): string {
  const shown = fitted(rule.name, names, 12);
  const [dotsFrom, dotsUntil] = [margin + 14 + textWidth(shown, 12), drawn.from - 14];
  const dots = dotsUntil > dotsFrom + 6 ? element("path", {d: `M${cut(dotsFrom)} ${cut(y + 3)}H${cut(dotsUntil)}`, stroke: colours.dots, "stroke-dasharray": "1 5"}) : "";
  const title = element("title", {}, escapeXml(`${rule.familyName}, ${rule.name}: ${inWords(rule)}${rule.cite.how === "memory" ? ", from memory" : ""}`));
  return element(
    "g",
    {},
    title +
      textElement({x: margin + 6, y: y + 4, "font-size": 12, fill: colours.ink}, shown) +
      dots +
      drawn.markup +
      textElement({x: width - margin - 6, y: y + 4, "font-size": 11, "text-anchor": "end", fill: colours.ink}, years(rule)),
  );
}

function years({window: {begins, ends}}: DatedRule): string {
  const [first, last] = [begins?.[0].slice(0, 4), ends?.[1].slice(0, 4)];
  return first && last ? (first === last ? first : `${first}–${last}`) : first ? `from ${first}` : last ? `to ${last}` : "open";
}

function inWords({window: {begins, ends}}: DatedRule): string {
  const say = (text: string) => sayMonth(parseMonth(text)!);
  const parts = [begins && `first seen ${say(begins[0])}, usual from ${say(begins[1])}`, ends && `usual to ${say(ends[0])}, last seen ${say(ends[1])}`].filter((part) => part);
  return parts.length > 0 ? parts.join("; ") : "no known ends";
}

/** Charts narrower than this have a legend of two lines. */
export const wideLegend = 800;

/** What the stitches mean, and how many windows are left out. */
export function chartLegend({margin, width}: Frame, y: number, missing: number): string {
  const [first, second] = width < wideLegend ? [{x: margin + 6, y}, {x: margin + 6, y: y + 20}] : [{x: margin + 6, y}, {x: margin + 530, y}];
  const left = missing === 0 ? "" : `${missing} ${missing === 1 ? "window lies" : "windows lie"} outside these years.`;
  return [
    sample(first, colours.ink, "thin: coming in or dying out; full: usual; bars: usual from, usual to"),
    sample(second, colours.remembered, "from memory"),
    words(margin + 6, second.y + 22, left),
  ].join("");
}

function sample({x, y}: {x: number; y: number}, colour: string, text: string): string {
  const axis = {from: monthIndex(0), until: monthIndex(119)};
  const window = {begins: [monthIndex(0), monthIndex(40)], ends: [monthIndex(79), monthIndex(119)]} as const;
  return thread(window, y, colour, {axis, x: (m) => x + m})!.markup + words(x + 132, y, text);
}

const words = (x: number, y: number, text: string) => textElement({x, y: y + 4, "font-size": 11, fill: colours.quiet}, text);

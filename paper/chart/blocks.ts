// The pieces of a wall chart, each of which knows how tall it is in a column and how it is drawn there.
import {spanOf, windowOf, type Span} from "../../engine/window/window.ts";
import {month} from "../../engine/month/month.ts";
import type {DatedRule} from "../../rulebooks/dated-rules.ts";
import {thread, type Scale} from "../../rulebooks/chart-thread.ts";
import {element} from "../../rulebooks/svg.ts";
import {inks, stroke, words} from "../draw/svg-page.ts";
import {fitted, linesOf, widthOf} from "../face/runs.ts";

export interface Block {
  /** Heading, paragraph, line of a chart: how it is tagged. */
  readonly kind: "H2" | "H3" | "P" | "Figure";
  /** Said to those who do not see it. */
  readonly says: string;
  readonly height: number;
  readonly markup: string;
  /** Never the last of its column. */
  readonly keep: boolean;
}

const block = (kind: Block["kind"], says: string, height: number, parts: readonly string[], keep = false): Block => ({kind, says, height, markup: parts.join(""), keep});

/** Share of a column that names of windows take. */
const nameShare = 0.44;

export const sectionHead = (name: string, width: number): Block =>
  block("H2", name, 31, [words(0, 21, name, {size: 15, face: "serif bold"}), element("path", {d: `M0 26H${width}`, stroke: inks.stitch, "stroke-width": 1.3, "stroke-dasharray": "6 3.5", "stroke-linecap": "round"})], true);

/** A name over its windows, with the years. */
export function familyHead(name: string, axis: Span, width: number): Block {
  const scale = scaleOf(axis, width);
  const years = [axis.from, axis.until + 1].map((m) => 1900 + Math.floor(m / 12)) as [number, number];
  const perYear = scale.x(month(years[0] + 1, 1)) - scale.x(month(years[0], 1));
  const every = [5, 10, 20, 50].find((step) => step * perYear >= 28) ?? 100;
  const figures: string[] = [];
  const ticks: string[] = [];
  for (let year = Math.ceil(years[0] / every) * every; year < years[1]; year += every) {
    figures.push(words(scale.x(month(year, 1)), 13, String(year), {size: 7.5, anchor: "middle", fill: inks.quiet}));
    ticks.push(`M${scale.x(month(year, 1)).toFixed(1)} 15v3`);
  }
  return block("H3", name, 20, [words(0, 14, fitted("sans bold", name, 9.6, width * nameShare - 10), {size: 9.6, face: "sans bold"}), ...figures, stroke(ticks.join(""), 0.6, inks.quiet)], true);
}

/** One window as a line of stitches; ochre for one that is known from memory only. */
export function windowRow(rule: DatedRule, axis: Span, width: number): Block {
  const scale = scaleOf(axis, width);
  const memory = rule.cite.how === "memory";
  const lines = linesOf("sans", memory ? `${rule.name} (from memory)` : rule.name, 8.6, width * nameShare - 10).slice(0, 2);
  const drawn = thread(windowOf(rule.window), 6.5, memory ? inks.stitch : inks.ink, scale);
  const height = 4 + lines.length * 10.2;
  return block("Figure", rule.name, height, [...lines.map((line, i) => words(0, 9 + i * 10.2, line, {size: 8.6})), drawn?.markup ?? ""]);
}

const scaleOf = (axis: Span, width: number): Scale => ({axis, x: (m) => width * nameShare + 8 + ((m - axis.from) / (axis.until + 1 - axis.from)) * (width * (1 - nameShare) - 20)});

/** Whether a rule has months on the chart. */
export const isOn = ({window}: DatedRule, axis: Span): boolean => spanOf(windowOf(window), axis) !== null;

export interface TextLook {
  readonly bold?: boolean;
  readonly quiet?: boolean;
  readonly size?: number;
  readonly indent?: number;
  readonly after?: number;
  readonly keep?: boolean;
}

export function textBlock(text: string, width: number, {bold = false, quiet = false, size = 8.8, indent = 0, after = 0, keep = false}: TextLook = {}): Block {
  const face = bold ? "sans bold" : "sans";
  const lines = linesOf(face, text, size, width - indent);
  return block(bold ? "H3" : "P", text, lines.length * size * 1.28 + after, lines.map((line, i) => words(indent, size + i * size * 1.28, line, {size, face, ...(quiet ? {fill: inks.quiet} : {})})), keep);
}

/** Specimens of a code beside what they mean, in a row as long as there is room. */
export function specimenBlock(codes: readonly {readonly code: string; readonly means: string}[], width: number): Block {
  const parts: string[] = [];
  let [x, y] = [0, 0];
  for (const {code, means} of codes) {
    const [wide, said] = [widthOf("sans bold", code, 11) + 12, widthOf("sans", means, 8.6)];
    if (x > 0 && x + wide + said + 14 > width) [x, y] = [0, y + 21];
    parts.push(element("rect", {x: x + 0.5, y: y + 2, width: wide, height: 16, stroke: inks.quiet, "stroke-width": 0.7, fill: inks.band, rx: 1.5}), words(x + wide / 2 + 0.5, y + 14, code, {size: 11, face: "sans bold", anchor: "middle"}), words(x + wide + 6, y + 13.4, means, {size: 8.6}));
    x += wide + said + 22;
  }
  return block("P", codes.map(({code, means}) => `${code}: ${means}`).join("; "), y + 25, parts);
}

/** Rows of a label as boxes: what stands where. */
export function layoutBlock(rows: readonly {readonly at: string; readonly fields: readonly string[]}[], width: number): Block {
  const parts: string[] = [];
  rows.forEach(({at, fields}, i) => {
    let x = 8;
    const y = i * 15;
    if (at !== "") {
      parts.push(words(x, y + 9.5, at, {size: 7, fill: inks.quiet}));
      x += 54;
    }
    for (const field of fields) {
      const wide = widthOf("sans", field, 8);
      const isSign = /^[^a-z]*$/.test(field);
      if (x + wide + 10 > width) break;
      if (!isSign) parts.push(element("rect", {x, y: y + 0.5, width: wide + 8, height: 12.5, stroke: inks.ink, "stroke-width": 0.6, fill: "none", rx: 1.5}));
      parts.push(words(x + (isSign ? 2 : 4), y + 9.5, field, {size: 8, ...(isSign ? {face: "sans bold"} : {})}));
      x += wide + (isSign ? 6 : 12);
    }
  });
  return block("P", rows.map(({at, fields}) => `${at} ${fields.join(" ")}`.trim()).join("; "), rows.length * 15 + 5, parts);
}

// A rule book as a printable time chart, laid out like a timetable: one line of stitches for each window.
import {parseMonth, yearOf} from "../engine/month/month.ts";
import {spanOf, windowOf, type Span} from "../engine/window/window.ts";
import type {Book} from "../engine/rule/schema.ts";
import {chartLegend, wideLegend, familyHead, ruleRow, yearAxis, type Frame} from "./chart-parts.ts";
import {thread} from "./chart-thread.ts";
import {datedRules, type DatedRule} from "./dated-rules.ts";
import {valueAt} from "./place.ts";
import {colours, element, escapeXml, textElement, textWidth} from "./svg.ts";

export interface ChartOptions {
  /** First and last month, both included, like "1950-01". */
  readonly from: string;
  readonly until: string;
  /** Width in pixels, 480 to 6000; the height follows from the rules. */
  readonly width: number;
  /** "labels", "schemes", "plants", "lots", "fabrics", or the beginning of mark names such as "us.care"; all when left out. */
  readonly only?: readonly string[];
}

const rowHeight = 19;
const headHeight = 36;
const margin = 28;

/**
 * Draws the windows of a book.
 *
 * Full stitches: usual. Thin stitches: coming in or dying out. Bar tacks: where use became usual, and where it ceased to be.
 * Windows known from memory only are drawn in ochre. Rules without a month in the chart are counted at the foot.
 *
 * @returns an SVG document as text, without scripts, outside fonts or links
 * @throws  RangeError for months that are none or run backwards, or for a width out of range
 */
export function chartBook(book: Book, options: ChartOptions): string {
  const {axis, width} = checked(options);
  const rules = datedRules(book).filter((rule) => worthARow(rule, book) && (options.only?.some((only) => belongs(rule, only)) ?? true));
  const families = familiesOf(rules, axis);
  const frame = frameOf(families, axis, width);
  const [bands, rows]: [string[], string[]] = [[], []];
  let y = 108;
  for (const {name, rules} of families) {
    rows.push(familyHead(name, y + headHeight - 10, frame));
    y += headHeight;
    for (const [i, rule] of rules.entries()) {
      if (i % 2 === 0) bands.push(element("rect", {x: margin, y, width: width - 2 * margin, height: rowHeight, fill: colours.band}));
      const colour = rule.cite.how === "memory" ? colours.remembered : colours.ink;
      rows.push(ruleRow(rule, y + rowHeight / 2, thread(windowOf(rule.window), y + rowHeight / 2, colour, frame)!, frame));
      y += rowHeight;
    }
  }
  const drawn = families.reduce((sum, {rules}) => sum + rules.length, 0);
  const height = y + (width < wideLegend ? 112 : 92);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" font-family="sans-serif">`,
    element("title", {}, escapeXml(`${book.title}, time chart`)),
    element("rect", {width, height, fill: colours.paper}),
    textElement({x: margin, y: 44, "font-size": Math.min(23, (20 * (width - 2 * margin)) / textWidth(book.title, 23)), "font-family": "serif", fill: colours.ink}, book.title),
    textElement({x: margin, y: 65, "font-size": 12, fill: colours.quiet}, `Edition ${book.edition}. When each was in use, ${yearOf(axis.from)} to ${yearOf(axis.until)}.`),
    ...bands,
    yearAxis(frame, 104, y + 8),
    ...rows,
    chartLegend(frame, y + 56, rules.length - drawn),
    "</svg>",
    "",
  ].join("\n");
}

function checked({from, until, width}: ChartOptions): {axis: Span; width: number} {
  const [first, last] = [parseMonth(from), parseMonth(until)];
  if (first === null || last === null || first > last) throw new RangeError(`a chart needs months like 1950-01, the earlier first, not "${from}" and "${until}"`);
  if (!(width >= 480 && width <= 6000)) throw new RangeError(`a chart is 480 to 6000 pixels wide, not ${width}`);
  return {axis: {from: first, until: last}, width};
}

// Widths of codes say little by their months, and a variant that differs by its weight only would repeat the line above it.
function worthARow({path, window}: DatedRule, book: Book): boolean {
  if (path.includes("widths")) return false;
  return !path.includes("variants") || JSON.stringify(valueAt(book, [...path.slice(0, -3), "window"])) !== JSON.stringify(window);
}

function belongs({path: [section, id]}: DatedRule, only: string): boolean {
  return section === only || (section === "marks" && (id === only || String(id).startsWith(`${only}.`)));
}

interface Family {
  readonly name: string;
  readonly rules: DatedRule[];
}

// Families as the book has them; within one the earliest first, so that uses follow each other down the page.
function familiesOf(rules: readonly DatedRule[], axis: Span): Family[] {
  const families = new Map<string, Family>();
  for (const rule of rules) {
    if (!spanOf(windowOf(rule.window), axis)) continue;
    const family = families.get(rule.family) ?? {name: rule.familyName, rules: []};
    families.set(rule.family, family);
    family.rules.push(rule);
  }
  const start = ({window}: DatedRule) => `${window.begins?.join() ?? ""} ${window.ends?.join() ?? "9"}`;
  for (const family of families.values()) family.rules.sort((a, b) => (start(a) < start(b) ? -1 : start(a) > start(b) ? 1 : 0));
  return [...families.values()];
}

function frameOf(families: readonly Family[], axis: Span, width: number): Frame {
  const longest = Math.max(110, ...families.flatMap(({rules}) => rules.map(({name}) => textWidth(name, 12))));
  const names = Math.min(longest, width * 0.34);
  const [left, right] = [margin + names + 40, width - margin - 92];
  return {axis, width, margin, names, left, right, x: (month) => left + ((month - axis.from) / (axis.until + 1 - axis.from)) * (right - left)};
}

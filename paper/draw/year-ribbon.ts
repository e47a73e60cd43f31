// The ribbon on paper: years along, months down, each cell as dark as it is likely; below it a line of stitches for each mark.
import {monthIndex, parseMonth, windowOf, type Span} from "../../engine/index.ts";
import {month, monthNames} from "../../engine/month/month.ts";
import type {WindowText} from "../../engine/rule/schema.ts";
import {thread, type Scale} from "../../rulebooks/chart-thread.ts";
import {element} from "../../rulebooks/svg.ts";
import {fitted} from "../face/runs.ts";
import {inks, words, type Drawing} from "./svg-page.ts";

/** Months with their likelihoods. */
export interface Months {
  /** What the ribbon is of: "made", "in the look of"; empty when there is one ribbon alone. */
  readonly name: string;
  /** First month, 1900-01. */
  readonly first: string;
  readonly shares: readonly number[];
}

export interface Thread {
  readonly name: string;
  /** Null: a mark that has no window of its own, such as a number. */
  readonly window: WindowText | null;
  readonly odd: boolean;
}

/** All is drawn in units of two thirds of a point: so the stitches of charts become fine enough for a sheet. */
const scaleDown = 2 / 3;
const names = 216;
/** Room for the sign that a line goes on beyond the years. */
const beyond = 12;
const cell = 9.4;
const threadHeight = 17;
const fewestYears = 12;
const mostThreads = 9;

/** Draws ribbons one below the other on one axis, then the threads of those marks that have a window, odd ones in ochre. */
export function yearRibbon(ribbons: readonly Months[], threads: readonly Thread[], wide: number, label: string): Drawing {
  const width = wide / scaleDown;
  const years = yearsOf(ribbons);
  const axis: Span = {from: month(years.from, 1), until: month(years.until, 12)};
  const scale: Scale = {axis, x: (m) => names + ((m - axis.from) / (axis.until + 1 - axis.from)) * (width - beyond - names)};
  const parts: string[] = [yearFigures(years, scale, 11)];
  let y = 17;
  for (const ribbon of ribbons) {
    parts.push(...cells(ribbon, axis, scale, y));
    if (ribbon.name !== "") parts.push(words(0, y + 12, ribbon.name, {size: 12, face: "sans bold"}));
    y += 12 * cell + 8;
  }
  const dated = threads.filter(({window}) => window !== null);
  for (const {name, window, odd} of dated.slice(0, mostThreads)) {
    y += threadHeight;
    const drawn = thread(windowOf(window!), y - 4, odd ? inks.stitch : inks.ink, scale);
    parts.push(words(0, y, fitted("sans", odd ? `odd: ${name}` : name, 11.2, names - 20), {size: 11.2, fill: odd ? inks["stitch words"] : inks.ink}));
    parts.push(drawn ? drawn.markup : words(names, y, "not in these years", {size: 10.4, fill: inks.quiet}));
  }
  return {width: wide, height: (y + 8) * scaleDown, scale: scaleDown, inside: parts.join(""), label};
}

function cells({first, shares}: Months, axis: Span, {x}: Scale, y: number): string[] {
  const start = parseMonth(first)!;
  const most = Math.max(1 / 12, ...shares);
  const parts = monthNames.map((name, i) => (i % 3 === 0 ? words(names - 6, y + i * cell + cell - 1, name.slice(0, 3), {size: 8.6, anchor: "end", fill: inks.quiet}) : ""));
  parts.push(element("rect", {x: names, y, width: x(axis.until + 1) - names, height: 12 * cell, fill: inks.band}));
  for (let at = axis.from; at <= axis.until; at = monthIndex(at + 1)) {
    const dark = Math.sqrt((shares[at - start] ?? 0) / most);
    if (dark < 0.03) continue;
    const january = at - ((at % 12) + 12) % 12;
    const [left, right] = [x(january), x(january + 12)];
    parts.push(element("rect", {x: left + 0.4, y: y + (at - january) * cell + 0.4, width: right - left - 0.8, height: cell - 0.8, fill: inks.ink, "fill-opacity": Math.max(0.06, dark)}));
  }
  return parts;
}

function yearFigures({from, until}: {from: number; until: number}, {x}: Scale, y: number): string {
  const wide = x(month(from + 1, 1)) - x(month(from, 1));
  const every = [1, 2, 5, 10, 20].find((step) => step * wide >= 31) ?? 50;
  const parts: string[] = [];
  for (let year = Math.ceil(from / every) * every; year <= until; year += every) parts.push(words(x(month(year, 1)) + wide / 2, y, String(year), {size: 10, anchor: "middle", fill: year % 10 === 0 ? inks.ink : inks.quiet}));
  return parts.join("");
}

/** The years that hold all but one in a hundred of every ribbon, at least a dozen. */
function yearsOf(ribbons: readonly Months[]): {from: number; until: number} {
  const edges = ribbons.map(({first, shares}) => {
    const [total, start] = [shares.reduce((sum, p) => sum + p, 0), parseMonth(first)!];
    const at = (share: number) => {
      let sum = 0;
      const found = shares.findIndex((p) => (sum += p) > share * total);
      return 1900 + Math.floor((start + (found < 0 ? shares.length - 1 : found)) / 12);
    };
    return {from: at(0.005) - 1, until: at(0.995) + 1, least: 1900 + Math.floor(start / 12), last: 1900 + Math.floor((start + shares.length - 1) / 12)};
  });
  let [from, until] = [Math.min(...edges.map((edge) => edge.from)), Math.max(...edges.map((edge) => edge.until))];
  while (until - from + 1 < fewestYears) {
    from--;
    if (until - from + 1 < fewestYears) until++;
  }
  return {from: Math.max(from, Math.min(...edges.map(({least}) => least))), until: Math.min(until, Math.max(...edges.map(({last}) => last)))};
}

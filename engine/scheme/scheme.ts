// A code scheme made ready: the texts each part can print, its window on an axis, and the months each reading means.
import type {Span} from "../window/window.ts";
import {heights, spanOf, windowOf} from "../window/window.ts";
import {yearOf} from "../month/month.ts";
import type {Part, Scheme} from "../rule/schema.ts";
import {monthsOf, type SparseMonths, type Stated} from "./stated.ts";

/** One text that a part can print, and what it states. */
export interface PartText {
  readonly text: string;
  readonly states: Stated;
}

/** Random figures or letters: how many, from-to. */
export interface FreePart {
  readonly free: "digits" | "letters";
  readonly from: number;
  readonly until: number;
}

export type ReadyPart = readonly PartText[] | FreePart;

export interface ReadyScheme {
  readonly id: string;
  readonly scheme: Scheme;
  readonly parts: readonly ReadyPart[];
  readonly axis: Span;
  /** The most characters that a code has. */
  readonly widest: number;
  /** Months in which the scheme was in use at all, on the axis; null when never. */
  readonly span: Span | null;
  /** Weight times window height for each month of the axis. */
  readonly weights: Float64Array;
  /** The months that a reading means, within the scheme's span, the lag included. Remembered. */
  months(stated: Stated): SparseMonths;
}

/** Makes a scheme ready for an axis. */
export function readyScheme(id: string, scheme: Scheme, axis: Span): ReadyScheme {
  const window = windowOf(scheme.window);
  const span = spanOf(window, axis);
  const weights = heights(window, axis);
  for (let i = 0; i < weights.length; i++) weights[i]! *= scheme.weight;
  const remembered = new Map<string, SparseMonths>();
  const parts = scheme.parts.map((part) => readyPart(part, span));
  return {
    id,
    scheme,
    axis,
    span,
    weights,
    parts,
    widest: parts.reduce((sum, part) => sum + ("free" in part ? part.until : Math.max(0, ...part.map(({text}) => text.length))), 0),
    months(stated) {
      const key = statedKey(stated);
      let found = remembered.get(key);
      if (!found) {
        found = span ? lagged(stated, scheme, span, axis) : {at: new Int32Array(0), weight: new Float64Array(0)};
        remembered.set(key, found);
      }
      return found;
    },
  };
}

/** A text that tells two readings apart. */
export function statedKey(stated: Stated): string {
  const {year, month, quarter, week, day, dayOfYear} = stated;
  return [year ? `${year.fiscal ? "f" : ""}${year.value}%${year.modulus}` : "", month, quarter, week, day, dayOfYear].join("|");
}

function lagged(stated: Stated, scheme: Scheme, span: Span, axis: Span): SparseMonths {
  if (!scheme.lag) return monthsOf(stated, span, axis.from);
  const {usual, longest} = scheme.lag;
  const last = Math.max(usual, longest);
  const weights = Array.from({length: last + 1}, (_, d) => (d <= usual ? 1 : (last + 1 - d) / (last + 1 - usual)));
  const total = weights.reduce((sum, w) => sum + w, 0);
  const wide = {from: (span.from - last) as typeof span.from, until: span.until};
  const code = monthsOf(stated, wide, axis.from);
  const size = axis.until - axis.from + 1;
  const dense = new Map<number, number>();
  for (let i = 0; i < code.at.length; i++) {
    for (let d = 0; d <= last; d++) {
      const m = code.at[i]! + d;
      if (m >= 0 && m < size && m + axis.from <= span.until && m + axis.from >= span.from) dense.set(m, (dense.get(m) ?? 0) + (code.weight[i]! * weights[d]!) / total);
    }
  }
  const at = [...dense.keys()].sort((a, b) => a - b);
  return {at: Int32Array.from(at), weight: Float64Array.from(at, (m) => dense.get(m)!)};
}

const range = (from: number, until: number) => Array.from({length: Math.max(0, until - from + 1)}, (_, i) => from + i);
const padded = (n: number, width: number) => String(n).padStart(width, "0");

function readyPart(part: Part, span: Span | null): ReadyPart {
  if ("text" in part) return [{text: part.text.toUpperCase(), states: {}}];
  if ("digits" in part) return free("digits", part.digits);
  if ("letters" in part) return free("letters", part.letters);
  if ("month" in part) {
    if (typeof part.month === "object") return Object.entries(part.month).map(([text, value]) => ({text: text.toUpperCase(), states: {month: value}}));
    const width = part.month === "padded" ? 2 : 1;
    return range(1, 12).map((month) => ({text: padded(month, width), states: {month}}));
  }
  if ("quarter" in part) return range(1, 4).map((quarter) => ({text: part.quarter === "plain" ? String(quarter) : "ABCD"[quarter - 1]!, states: {quarter}}));
  if ("week" in part) return range(1, 53).map((week) => ({text: padded(week, part.week === "padded" ? 2 : 1), states: {week}}));
  if ("day" in part) return range(1, 31).map((day) => ({text: padded(day, part.day === "padded" ? 2 : 1), states: {day}}));
  if ("day of year" in part) return range(1, 366).map((dayOfYear) => ({text: padded(dayOfYear, part["day of year"] === "padded" ? 3 : 1), states: {dayOfYear}}));
  if ("fiscal year" in part) return yearTexts(part["fiscal year"], span, true);
  if (typeof part.year === "object") return Object.entries(part.year).map(([text, value]) => ({text: text.toUpperCase(), states: {year: tableYear(value)}}));
  return yearTexts(part.year, span, false);
}

/** A table may give whole years, two figures, or the last figure alone. */
function tableYear(value: number) {
  return {value, modulus: value >= 1000 ? 0 : value >= 10 ? 100 : 10, fiscal: false} as const;
}

function yearTexts(kind: "last figure" | "two figures" | "four figures", span: Span | null, fiscal: boolean): PartText[] {
  if (kind === "last figure") return range(0, 9).map((value) => ({text: String(value), states: {year: {value, modulus: 10, fiscal}}}));
  if (kind === "two figures") return range(0, 99).map((value) => ({text: padded(value, 2), states: {year: {value, modulus: 100, fiscal}}}));
  if (!span) return [];
  return range(yearOf(span.from) - 1, yearOf(span.until) + 1).map((value) => ({text: padded(value, 4), states: {year: {value, modulus: 0, fiscal}}}));
}

function free(kind: "digits" | "letters", width: number | readonly [number, number]): FreePart {
  const [from, until] = typeof width === "number" ? [width, width] : width;
  return {free: kind, from, until};
}

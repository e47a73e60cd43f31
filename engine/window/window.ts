// Windows over months with soft ends: how strongly a mark's use holds in a month.
import type {MonthIndex} from "../units.ts";
import {monthIndex} from "../units.ts";
import {parseMonth} from "../month/month.ts";
import type {WindowText} from "../rule/schema.ts";

/** `begins` = first seen, usual from; `ends` = last usual, last seen; null is open. Months, both included. */
export interface Window {
  readonly begins: readonly [MonthIndex, MonthIndex] | null;
  readonly ends: readonly [MonthIndex, MonthIndex] | null;
}

/** A stretch of months, both ends included. */
export interface Span {
  readonly from: MonthIndex;
  readonly until: MonthIndex;
}

const pair = (texts: readonly [string, string] | null | undefined) =>
  texts ? ([parseMonth(texts[0])!, parseMonth(texts[1])!] as const) : null;

/** A window from its written form; the months have been checked by the schema. */
export function windowOf(text: WindowText): Window {
  return {begins: pair(text.begins), ends: pair(text.ends)};
}

/**
 * Height of a window at a month: 1 between the usual months, 0 outside, straight ramps between, read at the middle of the month.
 * A window is knowledge about use: heights over all months do not sum to 1.
 * @edge a pair of equal months is a step: that month counts in full; an open end never falls
 * @source own choice of a trapezoid; read at mid-cell like the trapezoid windows of archaeological phasing
 * @example
 * height({begins: [600, 612], ends: null}, 606) // -> 0.5416666666666666
 */
export function height(w: Window, m: MonthIndex): number {
  return rise(w, m) * fall(w, m);
}

function rise({begins}: Window, m: MonthIndex): number {
  if (!begins) return 1;
  const [first, usual] = begins;
  if (first === usual) return m >= first ? 1 : 0;
  return clamp((m + 0.5 - first) / (usual - first));
}

function fall({ends}: Window, m: MonthIndex): number {
  if (!ends) return 1;
  const [usual, last] = ends;
  if (usual === last) return m <= last ? 1 : 0;
  return clamp((last + 0.5 - m) / (last - usual));
}

const clamp = (x: number) => (x < 0 ? 0 : x > 1 ? 1 : x);

/** Heights for every month of an axis, lifted to `outside` where the window is shut. */
export function heights(w: Window, axis: Span, outside = 0): Float64Array {
  const result = new Float64Array(axis.until - axis.from + 1);
  for (let i = 0; i < result.length; i++) result[i] = outside + (1 - outside) * height(w, monthIndex(axis.from + i));
  return result;
}

/** The months in which a window has any height, cut to an axis; null when there are none. */
export function spanOf(w: Window, axis: Span): Span | null {
  const from = Math.max(axis.from, w.begins?.[0] ?? axis.from);
  const until = Math.min(axis.until, w.ends?.[1] ?? axis.until);
  return from <= until ? {from: monthIndex(from), until: monthIndex(until)} : null;
}

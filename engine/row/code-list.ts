// A maker's plant, lot or fabric codes made ready: how likely each is by month, listed ones by name and unlisted ones by their width.
import {heights, windowOf, type Span} from "../window/window.ts";
import type {CodeList} from "../rule/schema.ts";

export interface ReadyCodes {
  readonly list: CodeList;
  readonly codes: readonly string[];
  /** Every listed code with chance 1: what no cells narrow down. */
  readonly all: readonly (readonly [number, number])[];
  /** For each listed code, in the order of `codes`: its chance in each month. */
  readonly listed: readonly Float64Array[];
  /** Chance that the code is unlisted and has 1, 2 ... figures (place 0 is width 1), in each month. */
  readonly widths: readonly Float64Array[];
  readonly widest: number;
}

/** Makes a code list ready for an axis. */
export function readyCodes(list: CodeList, axis: Span): ReadyCodes {
  const n = axis.until - axis.from + 1;
  const codes = Object.keys(list.codes);
  const raw = codes.map((code) => {
    const {window, weight} = list.codes[code]!;
    return heights(windowOf(window), axis).map((h) => h * weight);
  });
  const total = new Float64Array(n).fill(list.unlisted);
  for (const vector of raw) for (let t = 0; t < n; t++) total[t]! += vector[t]!;
  const divide = (vector: Float64Array) => vector.map((h, t) => (total[t]! > 0 ? h / total[t]! : 0));
  const law = widthLaw(list, axis, n);
  const unlisted = divide(new Float64Array(n).fill(list.unlisted));
  const widths = law.map((share) => share.map((s, t) => s * unlisted[t]!));
  return {list, codes, all: codes.map((_, j) => [j, 1] as const), listed: raw.map(divide), widths, widest: Math.max(widths.length, ...codes.map((code) => code.length))};
}

/** How many figures unlisted codes have, by month; rows are widths 1, 2, ... and sum to 1 in each month. */
function widthLaw(list: CodeList, axis: Span, n: number): Float64Array[] {
  const widest = Math.max(4, ...list.widths.flatMap((period) => Object.keys(period.shares).map(Number)));
  const law = Array.from({length: widest}, () => new Float64Array(n));
  const total = new Float64Array(n);
  for (const period of list.widths) {
    const window = heights(windowOf(period.window), axis);
    for (const [width, share] of Object.entries(period.shares)) {
      const vector = law[Number(width) - 1]!;
      for (let t = 0; t < n; t++) {
        vector[t]! += window[t]! * share;
        total[t]! += window[t]! * share;
      }
    }
  }
  for (let w = 0; w < widest; w++) {
    const vector = law[w]!;
    for (let t = 0; t < n; t++) vector[t] = total[t]! > 0 ? vector[t]! / total[t]! : w < 4 ? 1 / 4 : 0;
  }
  while (law.length > 1 && law.at(-1)!.every((share) => share === 0)) law.pop();
  return law;
}

// Which years a ribbon shows: those that matter, with a little room.
import {monthIndex, type Brief, type MonthIndex} from "../../engine/index.ts";

export interface YearSpan {
  readonly from: number;
  readonly until: number;
}

const leastYears = 12;

/** The years that hold all but one in a hundred, at least a dozen; the whole axis when asked for. */
export function yearsShown({first, posterior}: Pick<Brief, "first" | "posterior">, whole: boolean): YearSpan {
  const year = (t: number) => 1900 + Math.floor((first + t) / 12);
  const all = {from: year(0), until: year(posterior.length - 1)};
  if (whole) return all;
  const edge = (share: number) => {
    let sum = 0;
    return posterior.findIndex((p) => (sum += p) > share);
  };
  const low = edge(0.005);
  const high = edge(0.995);
  let from = year(Math.max(0, low)) - 1;
  let until = year(high < 0 ? posterior.length - 1 : high) + 1;
  while (until - from + 1 < leastYears) {
    from--;
    if (until - from + 1 < leastYears) until++;
  }
  return {from: Math.max(all.from, from), until: Math.min(all.until, until)};
}

/** Month of a year's January. */
export const january = (year: number): MonthIndex => monthIndex((year - 1900) * 12);

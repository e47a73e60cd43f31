// The fiscal year of the United States government, which stands in contract numbers.
import type {MonthIndex} from "../units.ts";
import {month, monthOfYear, yearOf} from "./month.ts";

const julyStart = month(1976, 7);
const octoberStart = month(1976, 10);

/**
 * The fiscal year that a month belongs to.
 * July to June until June 1976, October to September from October 1976.
 * @edge July to September 1976, the transition quarter, belongs to no numbered year; contracts of those months are read as 1976
 * @source 31 U.S.C. 1102; Congressional Budget and Impoundment Control Act of 1974, section 501
 * @example
 * fiscalYearOf(month(1966, 7)) // -> 1967
 */
export function fiscalYearOf(m: MonthIndex): number {
  if (m >= julyStart && m < octoberStart) return 1976;
  return yearOf(m) + (monthOfYear(m) >= (m < julyStart ? 7 : 10) ? 1 : 0);
}

/** First and last month of a fiscal year; the transition quarter is counted to 1976. */
export function monthsOfFiscalYear(year: number): {from: MonthIndex; until: MonthIndex} {
  return {
    from: year <= 1976 ? month(year - 1, 7) : month(year - 1, 10),
    until: year < 1976 ? month(year, 6) : month(year, 9),
  };
}

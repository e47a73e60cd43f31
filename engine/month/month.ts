// Months as integers: parse, print, count days. Never `Date`: its time zones and clock have no place in an exact calendar.
import {dayIndex, monthIndex, type DayIndex, type MonthIndex} from "../units.ts";

/**
 * Reads "1968-03".
 * @returns the month index, or null when the text is no month of the years 1000 to 9999
 * @example
 * parseMonth("1968-03") // -> 818
 * parseMonth("1968-13") // -> null
 */
export function parseMonth(text: string): MonthIndex | null {
  const match = /^([1-9]\d{3})-(0[1-9]|1[0-2])$/.exec(text);
  return match ? month(Number(match[1]), Number(match[2])) : null;
}

/** The index of a month; `monthOfYear` 1 to 12. */
export function month(year: number, monthOfYear: number): MonthIndex {
  return monthIndex((year - 1900) * 12 + monthOfYear - 1);
}

export function yearOf(m: MonthIndex): number {
  return 1900 + Math.floor(m / 12);
}

/** 1 to 12. */
export function monthOfYear(m: MonthIndex): number {
  return (((m % 12) + 12) % 12) + 1;
}

/**
 * Prints a month as in books and files.
 * @example
 * printMonth(818) // -> "1968-03"
 */
export function printMonth(m: MonthIndex): string {
  return `${yearOf(m)}-${String(monthOfYear(m)).padStart(2, "0")}`;
}

export const monthNames = [
  "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
] as const;

/**
 * Prints a month in words.
 * @example
 * sayMonth(818) // -> "March 1968"
 */
export function sayMonth(m: MonthIndex): string {
  return `${monthNames[monthOfYear(m) - 1]} ${yearOf(m)}`;
}

/** Days since 1970-01-01 of a Gregorian date. Source: the usual era-based count, H. Hinnant, chrono-compatible low-level date algorithms. */
export function dayNumber(year: number, monthOfYear: number, day: number): DayIndex {
  const y = monthOfYear <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (monthOfYear + (monthOfYear > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return dayIndex(era * 146097 + dayOfEra - 719468);
}

/** Year, month and day of a day number. */
export function dateOf(day: DayIndex): {year: number; month: number; day: number} {
  const z = day + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const monthOfYear = shifted + (shifted < 10 ? 3 : -9);
  return {
    year: yearOfEra + era * 400 + (monthOfYear <= 2 ? 1 : 0),
    month: monthOfYear,
    day: dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1,
  };
}

export function firstDayOf(m: MonthIndex): DayIndex {
  return dayNumber(yearOf(m), monthOfYear(m), 1);
}

export function daysIn(m: MonthIndex): number {
  return firstDayOf(monthIndex(m + 1)) - firstDayOf(m);
}

export function monthOf(day: DayIndex): MonthIndex {
  const date = dateOf(day);
  return month(date.year, date.month);
}

/** Prints a day as 1968-03-09. */
export function printDay(day: DayIndex): string {
  const date = dateOf(day);
  return `${date.year}-${String(date.month).padStart(2, "0")}-${String(date.day).padStart(2, "0")}`;
}

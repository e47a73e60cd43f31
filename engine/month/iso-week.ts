// ISO 8601 weeks: week 1 holds 4 January, weeks start on Monday, and the first days of January may belong to the old year.
import {dayIndex, type DayIndex} from "../units.ts";
import {dateOf, dayNumber} from "./month.ts";

/** 1 Monday to 7 Sunday. 1970-01-01 was a Thursday. */
export function weekdayOf(day: DayIndex): number {
  return ((((day + 3) % 7) + 7) % 7) + 1;
}

/**
 * The ISO year and week of a day.
 * @source ISO 8601-1:2019, 5.2.3; checked for every day of 1950-2050 against a calendar library
 */
export function isoWeekOf(day: DayIndex): {year: number; week: number} {
  const thursday = dayIndex(day - weekdayOf(day) + 4);
  const year = dateOf(thursday).year;
  return {year, week: Math.floor((thursday - dayNumber(year, 1, 1)) / 7) + 1};
}

/** 52 or 53. */
export function weeksIn(year: number): number {
  return isoWeekOf(dayNumber(year, 12, 28)).week;
}

/**
 * Monday of a week.
 * @returns null when the year has no such week (week 0, 54, or 53 of a short year)
 */
export function mondayOf(year: number, week: number): DayIndex | null {
  if (!Number.isInteger(week) || week < 1 || week > weeksIn(year)) return null;
  const fourth = dayNumber(year, 1, 4);
  return dayIndex(fourth - weekdayOf(fourth) + 1 + 7 * (week - 1));
}

// Source: ISO 8601-1:2019, 5.2.3, by the published worked days and by a general-purpose calendar library, every day of a century.
import {Temporal} from "temporal-polyfill";
import {describe, expect, test} from "vitest";
import {isoWeekOf, mondayOf, weekdayOf, weeksIn} from "../../engine/month/iso-week.ts";
import {dateOf, dayNumber, daysIn, firstDayOf, month, monthOf, printDay} from "../../engine/month/month.ts";
import {dayIndex, monthIndex} from "../../engine/units.ts";
import {readData, type Sourced} from "../helper/data.ts";
import {dayOf} from "../helper/day.ts";

interface IsoWeeks extends Sourced {
  readonly days: readonly {readonly date: string; readonly year: number; readonly week: number; readonly weekday: number; readonly dayOfYear: number}[];
  readonly weeks: readonly {readonly week: string; readonly from: string; readonly until: string}[];
  readonly never: readonly string[];
  readonly longYears: readonly number[];
}

const data = readData<IsoWeeks>("iso-weeks");
const parts = (week: string): [number, number] => [Number(week.slice(0, 4)), Number(week.slice(6))];

describe("week dates of the international standard, published days", () => {
  test.each(data.days)("$date is in week $week of $year, day $weekday (ISO 8601)", ({date, year, week, weekday, dayOfYear}) => {
    const day = dayOf(date);
    expect(isoWeekOf(day)).toEqual({year, week});
    expect(weekdayOf(day)).toBe(weekday);
    expect(mondayOf(year, week)).toBe(day - weekday + 1);
    expect(day - dayNumber(dateOf(day).year, 1, 1) + 1).toBe(dayOfYear);
  });

  test.each(data.weeks)("$week runs from $from to $until (ISO 8601)", ({week, from, until}) => {
    const monday = mondayOf(...parts(week))!;
    expect(printDay(monday)).toBe(from);
    expect(printDay(dayIndex(monday + 6))).toBe(until);
  });

  test.each(data.never)("%s does not exist (ISO 8601)", (week) => expect(mondayOf(...parts(week))).toBeNull());

  test("the years of 53 weeks from 1940 to 2030 are the sixteen published ones (ISO 8601)", () => {
    expect(Array.from({length: 91}, (_, i) => 1940 + i).filter((year) => weeksIn(year) === 53)).toEqual(data.longYears);
  });
});

describe("the calendar library temporal-polyfill agrees", () => {
  test("on date, week, year of the week, day of the week and month of every day of 1950 to 2050, both ways", () => {
    let plain = Temporal.PlainDate.from("1950-01-01");
    const last = dayNumber(2050, 12, 31);
    const wrong: string[] = [];
    for (let day = dayNumber(1950, 1, 1) as number; day <= last; day++) {
      const at = dayIndex(day);
      const {year, week} = isoWeekOf(at);
      const agrees =
        printDay(at) === plain.toString() &&
        year === plain.yearOfWeek &&
        week === plain.weekOfYear &&
        weekdayOf(at) === plain.dayOfWeek &&
        day - dayNumber(plain.year, 1, 1) + 1 === plain.dayOfYear &&
        dayNumber(plain.year, plain.month, plain.day) === day &&
        monthOf(at) === month(plain.year, plain.month) &&
        mondayOf(year, week) === day - plain.dayOfWeek + 1;
      if (!agrees) wrong.push(plain.toString());
      plain = plain.add({days: 1});
    }
    expect(wrong).toEqual([]);
  });

  test("on the number of days of every month of 1800 to 2100, 1900 a common year and 2000 a leap year", () => {
    for (let m = month(1800, 1) as number; m <= month(2100, 12); m++) {
      const {year, month: monthOfYear} = dateOf(firstDayOf(monthIndex(m)));
      expect(daysIn(monthIndex(m))).toBe(Temporal.PlainYearMonth.from({year, month: monthOfYear}).daysInMonth);
    }
  });

  test("on weeks that no year has: 0, 54, and 53 of every short year of 1950 to 2050", () => {
    for (let year = 1950; year <= 2050; year++) {
      const weeks = Temporal.PlainDate.from({year, month: 12, day: 28}).weekOfYear;
      expect(weeksIn(year)).toBe(weeks);
      for (const week of [-1, 0, 54, 60, 1.5]) expect(mondayOf(year, week)).toBeNull();
      expect(mondayOf(year, 53) === null).toBe(weeks === 52);
    }
  });
});

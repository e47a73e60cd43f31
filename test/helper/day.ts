// Days in tests are written as in the published tables: 1968-03-09.
import {dayNumber} from "../../engine/month/month.ts";
import type {DayIndex} from "../../engine/units.ts";

/** The day number of an ISO date. */
export function dayOf(text: string): DayIndex {
  const [year, month, day] = text.split("-").map(Number);
  return dayNumber(year!, month!, day!);
}

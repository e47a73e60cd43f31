// The only place that looks at the clock.
import {month, type MonthIndex} from "../engine/index.ts";

/** The current month by the clock of this machine. */
export function thisMonth(): MonthIndex {
  const now = new Date();
  return month(now.getFullYear(), now.getMonth() + 1);
}

/** This moment in UTC, as it is kept. */
export const instantNow = (): string => new Date().toISOString();

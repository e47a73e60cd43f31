// What the caller decides for an examination: the current month comes from outside, the engine has no clock.
import type {MonthIndex} from "../units.ts";
import {month} from "../month/month.ts";

export interface ExamineOptions {
  /** The last month that a garment can have been made in: the current one. */
  readonly today: MonthIndex;
  /** The first month considered; January 1900 when left out. */
  readonly since?: MonthIndex;
  /** Prior weight by month, from `since` to `today`; flat when left out. Multiplied by the months each maker's book covers. */
  readonly prior?: Float64Array;
  /** How much to work out: the whole finding, or for batches only date, bounds, sets and odd marks. */
  readonly depth?: "whole" | "brief";
}

export const defaultSince = month(1900, 1);

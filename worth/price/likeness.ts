// How much a sale counts for a garment: 1 for one just like it sold today, less for each way in which they differ.
import type {Columns} from "./columns.ts";
import {noMonth} from "./columns.ts";
import {sizeLikeness} from "./size.ts";

/** Own choices, tried in docs/decisions/0021-worth.md: what is left of a sale's weight when it differs. */
const otherMaker = 0.3;
const unknownMaker = 0.4;
const otherLot = 0.7;
const unknownGrade = 0.6;
/** Grades apart at which the weight has fallen to 0.61. */
const gradeWidth = 1.5;
/** Months apart at which the weight has fallen to 0.61, and what is left however far apart. */
export const timeWidth = 60;
const timeFloor = 0.05;
const unknownTime = 0.3;

/** By maker of a sale, for a garment of a maker (0: unknown, -1: never sold). */
export function makerLikeness({makers}: Columns, maker: number): Float64Array {
  return Float64Array.from(makers.list, (_, other) => (other === maker ? 1 : maker === 0 || other === 0 ? unknownMaker : otherMaker));
}

/** By lot of a sale; a garment or a sale without a lot is half way. */
export function lotLikeness({lots}: Columns, lot: number): Float64Array {
  return Float64Array.from(lots.list, (_, other) => (other === lot || lot === 0 ? 1 : otherLot));
}

/** By grade of a sale, 0 unknown. */
export function gradeLikeness(grade: number): Float64Array {
  return Float64Array.from({length: 7}, (_, other) => (grade === 0 ? 1 : other === 0 ? unknownGrade : Math.exp(-0.5 * ((other - grade) / gradeWidth) ** 2)));
}

/** By size of a sale. */
export const sizesLikeness = ({sizes}: Columns, size: string): Float64Array => Float64Array.from(sizes.list, (other) => sizeLikeness(size, other));

/** How near in time of making: the average over the months a sale may be from. */
export interface TimeLikeness {
  of(from: number, until: number): number;
}

/** Around possible months of making with their probabilities (which sum to 1). */
export function timeLikeness(months: readonly number[], chances: readonly number[]): TimeLikeness {
  const first = Math.min(...months) - 5 * timeWidth;
  const last = Math.max(...months) + 5 * timeWidth;
  // Before each month: the sum of all likeness up to it.
  const before = new Float64Array(last - first + 2);
  for (let m = first; m <= last; m++) {
    let sum = 0;
    for (let j = 0; j < months.length; j++) sum += chances[j]! * Math.exp(-0.5 * ((m - months[j]!) / timeWidth) ** 2);
    before[m - first + 1] = before[m - first]! + sum;
  }
  const upTo = (m: number) => before[Math.min(before.length - 1, Math.max(0, m - first))]!;
  return {of: (from, until) => (from === noMonth ? unknownTime : timeFloor + (1 - timeFloor) * ((upTo(until + 1) - upTo(from)) / (until - from + 1)))};
}

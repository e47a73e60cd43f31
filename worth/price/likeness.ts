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
const timeWidth = 60;
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

/** How like one month is to months up to 5 widths away, added up from the far past: summed[d + reach] counts distances below d. */
const reach = 5 * timeWidth;
const summed = new Float64Array(2 * reach + 2);
for (let d = -reach; d <= reach; d++) summed[d + reach + 1] = summed[d + reach]! + Math.exp(-0.5 * (d / timeWidth) ** 2);
const summedBefore = (d: number) => summed[Math.min(2 * reach + 1, Math.max(0, d + reach))]!;

const likenessOf = (upTo: (m: number) => number): TimeLikeness => ({of: (from, until) => (from === noMonth ? unknownTime : timeFloor + (1 - timeFloor) * ((upTo(until + 1) - upTo(from)) / (until - from + 1)))});

/** Around one month of making. */
export const monthLikeness = (month: number): TimeLikeness => likenessOf((m) => summedBefore(m - month));

/** Around possible months of making with their probabilities (which sum to 1). */
export function timeLikeness(months: readonly number[], chances: readonly number[]): TimeLikeness {
  const first = Math.min(...months) - reach;
  const last = Math.max(...months) + reach + 1;
  const before = new Float64Array(last - first + 1);
  months.forEach((month, j) => {
    for (let m = first; m <= last; m++) before[m - first]! += chances[j]! * summedBefore(m - month);
  });
  return likenessOf((m) => before[Math.min(last, Math.max(first, m)) - first]!);
}

// The branded numbers: a month index cannot be passed where a probability is meant.
declare const brand: unique symbol;
type Brand<T, Tag extends string> = T & {readonly [brand]: Tag};

/** Months since 1900-01; 1899-12 is -1. */
export type MonthIndex = Brand<number, "MonthIndex">;
/** Days since 1970-01-01 in the Gregorian calendar. */
export type DayIndex = Brand<number, "DayIndex">;
/** In [0, 1]. */
export type Probability = Brand<number, "Probability">;
/** Information, in bits. */
export type Bits = Brand<number, "Bits">;

export const monthIndex = (value: number) => value as MonthIndex;
export const dayIndex = (value: number) => value as DayIndex;
export const probability = (value: number) => value as Probability;
export const bits = (value: number) => value as Bits;

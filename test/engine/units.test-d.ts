// Brands do not mix: every line below must stay an error of the compiler, which checks this file with all others.
import {bounds} from "../../engine/range/credible.ts";
import {isoWeekOf} from "../../engine/month/iso-week.ts";
import {daysIn, firstDayOf, monthOf, printMonth} from "../../engine/month/month.ts";
import {entropyBits} from "../../engine/num/vector.ts";
import {bits, dayIndex, monthIndex, probability, type Bits, type DayIndex, type MonthIndex, type Probability} from "../../engine/units.ts";

const month = monthIndex(818);
const day = dayIndex(0);
const chance = probability(0.5);
const information = bits(1);

// Right uses, so that the wrong ones below are wrong for the brand alone.
printMonth(month);
isoWeekOf(day);
export const same: readonly [MonthIndex, DayIndex, Probability, Bits] = [monthOf(day), firstDayOf(month), chance, entropyBits([chance])];
export const plain: readonly number[] = [month, day, chance, information];
bounds(new Float64Array(1), 0.025, month);

// @ts-expect-error a plain number is no month
printMonth(818);
// @ts-expect-error a day is no month
printMonth(day);
// @ts-expect-error a probability is no month
daysIn(chance);
// @ts-expect-error bits are no month
daysIn(information);
// @ts-expect-error a month is no day
isoWeekOf(month);
// @ts-expect-error a plain number is no day
monthOf(0);
// @ts-expect-error a day is no first month
bounds(new Float64Array(1), 0.025, day);
// @ts-expect-error a month is no probability
export const wrongProbability: Probability = month;
// @ts-expect-error bits are no probability
export const bitsAsProbability: Probability = information;
// @ts-expect-error a probability is no information
export const wrongBits: Bits = chance;
// @ts-expect-error a day is no information
export const dayAsBits: Bits = day;
// @ts-expect-error a plain number is no information
export const numberAsBits: Bits = 1;
// @ts-expect-error months added up are a plain number again
export const sum: MonthIndex = month + 1;
// @ts-expect-error a month is no day
export const wrongDay: DayIndex = month;

// A made-up market: sales whose prices follow a rule that the arithmetic does not know, with far-off prices and vague times of making.
import {printDay, printMonth, monthIndex, dayNumber, type DayIndex} from "../../../engine/index.ts";
import {grades} from "../../../state/model.ts";
import {saleSchema} from "../../../worth/model.ts";
import type {KeptSale} from "../../../worth/price/columns.ts";
import type {Subject} from "../../../worth/index.ts";
import {seeded, type Random} from "../../simulate/random.ts";

/** A sale with the month that the thing was really made in. */
export interface TrueSale extends KeptSale {
  readonly month: number;
}

export interface MarketOptions {
  readonly sales: number;
  readonly seed: number;
  /** Part of the sales whose price is a slip or a miracle. */
  readonly strange?: number;
}

export const marketDay = "2026-06-01";

const kinds = [
  {name: "trousers", level: 5.2, fall: 0.055, noise: 0.28, makers: [0.5, 0.2, 0.1, -0.1]},
  {name: "jacket", level: 5.7, fall: 0.04, noise: 0.35, makers: [0.7, 0.1, 0.3, -0.2]},
  {name: "shirt", level: 4.3, fall: 0.03, noise: 0.4, makers: [0.2, 0.3, 0, 0]},
  {name: "overalls", level: 4.9, fall: 0.045, noise: 0.3, makers: [0.3, 0.2, -0.1, 0]},
];
const makers = ["marrowfield", "hollin-thrale", "pellow-marsh", "dunmere"];
const channels = [{name: "market stall", effect: -0.15}, {name: "own shop", effect: 0.1}, {name: "auction", effect: 0.05}];
const waists = [28, 30, 32, 34, 36, 38];

/** The middle of the logarithm of a price in whole units: a curve over time that bends in 1971, makers, states, a rise of 4 in 100 a year. */
export function middleLog(kind: number, maker: number, month: number, grade: number): number {
  const {level, fall, makers: effects} = kinds[kind]!;
  const year = 1900 + month / 12;
  const age = year < 1971 ? 0.8 * (1971 - year) + 6 : Math.max(0, 6 - 0.8 * (year - 1971));
  const early = maker === 0 && year < 1960 ? 0.35 : 0;
  return level + fall * age + (maker < 0 ? 0 : effects[maker]!) + early - 0.2 * grade - (grade === 5 ? 0.3 : 0);
}

export function marketOf({sales, seed, strange = 0.02}: MarketOptions): TrueSale[] {
  const random = seeded(seed);
  return Array.from({length: sales}, (_, i) => saleOf(random, i, strange));
}

function saleOf(random: Random, i: number, strange: number): TrueSale {
  const kind = random.place([5, 3, 3, 1])!;
  const maker = random.happens(0.2) ? -1 : random.place([5, 3, 2, 1])!;
  const month = random.whole(12 * 35, 12 * 95 - 1);
  const grade = random.place([1, 3, 5, 5, 3, 1])!;
  const age = random.whole(0, 6 * 365);
  const soldOn = printDay((dayNumber(2026, 6, 1) - age) as DayIndex);
  const channel = random.pick(channels);
  const noise = kinds[kind]!.noise * heavy(random) + (random.happens(strange) ? random.pick([-2.3, 2.3, 1.5]) : 0);
  const log = middleLog(kind, maker, month, grade) + channel.effect - 0.04 * (age / 365.25) + noise;
  const vague = random.pick([0, 3, 12, 24, 60, 120]);
  const before = random.whole(0, vague);
  return {
    id: `sale${i}`, garment: null, removed: false, month,
    sale: saleSchema.parse({
      soldOn, price: {cents: Math.max(100, 100 * Math.round(Math.exp(log))), currency: "EUR"}, kind: kinds[kind]!.name, maker: maker < 0 ? null : makers[maker], grade: random.happens(0.15) ? null : grades[grade],
      ...(random.happens(0.1) ? {} : {madeFrom: printMonth(monthIndex(month - before)), madeUntil: printMonth(monthIndex(month - before + vague))}),
      size: `W ${random.pick(waists)} L 32`, channel: channel.name,
    }),
  };
}

/** Student's t with 5 degrees of freedom, of standard deviation 1. */
function heavy(random: Random): number {
  const normal = () => Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next());
  const squares = Array.from({length: 5}, normal).reduce((sum, z) => sum + z * z, 0);
  return (normal() / Math.sqrt(squares / 5)) * Math.sqrt(3 / 5);
}

/** A sale as a garment to price: its time as vague as the sale knows it, year by year. */
export function subjectOf({sale}: KeptSale): Subject {
  const year = (text: string) => Number(text.slice(0, 4));
  const first = sale.madeFrom === null ? 0 : year(sale.madeFrom);
  return {
    garment: null, kind: sale.kind, makers: sale.maker === null ? [] : [{maker: sale.maker, probability: 1}], lot: sale.lot, size: sale.size, grade: sale.grade,
    years: sale.madeFrom === null ? null : {first, shares: new Array<number>(year(sale.madeUntil!) - first + 1).fill(1)},
  };
}

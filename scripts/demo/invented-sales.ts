// Invents the sales of the demo: always the same ones, from a small story of what makes such things dear. Nothing of it is about the world.
import {seeded} from "../../commands/worth/seeded.ts";
import {saleSchema, type Sale} from "../../worth/model.ts";
import type {Grade} from "../../state/model.ts";

/** Whole dollars of a good one of 1985, how many, years it was made in, and sizes. */
const kinds: Readonly<Record<string, {readonly price: number; readonly count: number; readonly years: readonly [number, number]; readonly sizes: readonly string[]}>> = {
  trousers: {price: 80, count: 116, years: [1946, 2004], sizes: ["W 29 L 30", "W 30 L 32", "W 31 L 32", "W 32 L 32", "W 33 L 32", "W 34 L 34", "W 36 L 34"]},
  jacket: {price: 140, count: 62, years: [1944, 2002], sizes: ["36", "38", "40", "42", "44"]},
  overalls: {price: 120, count: 40, years: [1936, 1998], sizes: ["38", "40", "42", "44"]},
  shirt: {price: 48, count: 26, years: [1950, 1999], sizes: ["S", "M", "L", "XL"]},
};
const makers: readonly (readonly [maker: string | null, share: number, times: number])[] = [["marrowfield", 0.5, 1.2], ["hollin-and-thrale", 0.32, 1.05], [null, 0.18, 0.75]];
const states: readonly (readonly [grade: Grade, share: number, times: number])[] = [["deadstock", 0.04, 2], ["excellent", 0.14, 1.35], ["very good", 0.28, 1.15], ["good", 0.32, 1], ["fair", 0.16, 0.7], ["poor", 0.06, 0.45]];
const channels: readonly (readonly [channel: string, share: number, kept: number])[] = [["market stall", 0.34, 0], ["own shop", 0.28, 0], ["online", 0.28, 0.12], ["auction", 0.1, 0.18]];

const firstDay = Date.UTC(2022, 10, 1);
const days = 1460;
/** So much dearer a year earlier made, down to 1940, and a year later sold; and what was made before the cut changed, once more. */
const [older, dearer, spread] = [0.022, 0.035, 0.2];
const [oldCut, ofOldCut] = [1971, 1.7];

export const inventedNote = "Invented for the demo.";

export function inventedSales(): Sale[] {
  const random = seeded("marrowfield");
  const sales = Object.entries(kinds).flatMap(([kind, of]) => Array.from({length: of.count}, () => sale(kind, of, random)));
  return sales.sort((a, b) => (a.soldOn < b.soldOn ? -1 : a.soldOn > b.soldOn ? 1 : 0));
}

function sale(kind: string, {price: base, years: [first, last], sizes}: (typeof kinds)[string], random: () => number): Sale {
  const [maker, , ofMaker] = drawn(makers, random);
  const [grade, , ofState] = drawn(states, random);
  const [channel, , kept] = drawn(channels, random);
  const made = first + Math.floor(random() ** 0.8 * (last - first + 1));
  const known = random();
  const day = Math.floor(random() * days);
  const noise = Math.exp(spread * (random() + random() + random() + random() - 2) * Math.sqrt(3));
  const dollars = base * ofMaker * ofState * (made < oldCut ? ofOldCut : 1) * Math.exp(older * (1985 - Math.max(1940, made)) + dearer * (day / 365.25)) * noise;
  const price = 100 * (dollars < 60 ? Math.max(5, Math.round(dollars)) : 5 * Math.round(dollars / 5));
  // Some are known to the year, most to a few years, some not at all.
  const room = known < 0.4 ? 0 : known < 0.9 ? 1 + Math.floor(random() * 3) : null;
  return saleSchema.parse({
    soldOn: new Date(firstDay + day * 86_400_000).toISOString().slice(0, 10),
    price: {cents: price, currency: "USD"},
    fees: kept === 0 ? null : {cents: Math.round(price * kept), currency: "USD"},
    kind, maker,
    madeFrom: room === null ? null : `${made - room}-01`,
    madeUntil: room === null ? null : `${made + room}-12`,
    size: sizes[Math.floor(random() * sizes.length)],
    grade: random() < 0.9 ? grade : null,
    channel,
    note: inventedNote,
  });
}

function drawn<T extends readonly [unknown, number, ...unknown[]]>(list: readonly T[], random: () => number): T {
  let left = random();
  for (const one of list) if ((left -= one[1]) < 0) return one;
  return list.at(-1)!;
}

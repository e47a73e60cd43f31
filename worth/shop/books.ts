// The books of the shop: what was bought, laid out and sold, by kind, maker and decade, month by month, and what hangs too long.
import type {Account, BookOfCurrency, ShopBooks} from "../answer.ts";
import {median} from "../num/weighted.ts";
import {dayOf} from "../price/columns.ts";
import type {ShopGarment} from "../subject.ts";
import {monthsOf} from "./months.ts";
import {costsOf, profitOfStory, storyOf, type Story} from "./story.ts";

export interface BooksOptions {
  /** 2026-11-25 */
  readonly today: string;
  /** First and last day counted; null: all. Sales count by their day, buying by its own. */
  readonly from: string | null;
  readonly until: string | null;
}

const mostSlow = 40;
/** From so many sold ones on a kind has a usual time. */
const leastSold = 3;

/** Books the garments of a shop, one book a currency; garments whose own amounts are of several currencies are left out and counted. */
export function bookTheShop(garments: readonly ShopGarment[], options: BooksOptions): ShopBooks {
  const stories = garments.map(storyOf);
  const whole = stories.filter((story): story is Story => story !== null && story !== "mixed");
  const mixed = stories.filter((story) => story === "mixed").length;
  const currencies = [...new Set(whole.map(({currency}) => currency))].sort();
  return {
    on: options.today, from: options.from, until: options.until,
    books: currencies.map((currency) => bookOf(currency, whole.filter((story) => story.currency === currency), options)),
    notes: [
      ...(mixed > 0 ? [`${mixed} garments have amounts of several currencies and are left out.`] : []),
      ...(currencies.length > 1 ? ["Each currency has its own book: they are never added up."] : []),
      "Profit is what a garment brought, less what was paid for it and went into it; your own hours and the rent are not in it.",
    ],
  };
}

function bookOf(currency: string, stories: readonly Story[], options: BooksOptions): BookOfCurrency {
  const within = (day: string | null) => (day === null ? options.from === null && options.until === null : (options.from === null || day >= options.from) && (options.until === null || day <= options.until));
  const sold = stories.filter(({sold: sale}) => sale !== null && within(sale.on));
  const known = sold.filter(({paid}) => paid !== null);
  const held = stories.filter(({sold: sale, garment}) => sale === null && garment.offered);
  const taken = sumOf(sold, (story) => story.sold!.price);
  const profit = sumOf(known, (story) => profitOfStory(story)!);
  const by = (name: (story: Story) => string) => accountsOf(stories, name, within);
  return {
    currency,
    spent: sumOf(stories.filter(({boughtOn}) => within(boughtOn)), ({paid}) => paid ?? 0),
    laidOut: sumOf(stories, (story) => sumOf(story.costs.filter(({on}) => within(on ?? story.boughtOn)), ({cents}) => cents) + (story.sold !== null && within(story.sold.on) ? story.sold.outlay : 0)),
    taken, profit,
    margin: marginOf(profit, sumOf(known, (story) => story.sold!.price)),
    tied: sumOf(held, (story) => (story.paid ?? 0) + costsOf(story)),
    unknownPaid: sold.length - known.length,
    byKind: by(({garment}) => garment.kind || "kind not named"),
    byMaker: by(({garment}) => garment.maker ?? "maker unknown"),
    byDecade: by(({garment}) => (garment.year === null ? "not dated" : `${Math.floor(garment.year / 10) * 10}s`)),
    months: monthsOf(stories, options),
    slow: slowest(held, stories, options.today),
  };
}

function accountsOf(stories: readonly Story[], name: (story: Story) => string, within: (day: string | null) => boolean): Account[] {
  const groups = new Map<string, Story[]>();
  for (const story of stories) groups.set(name(story), [...(groups.get(name(story)) ?? []), story]);
  const accounts = [...groups].map(([of, own]): Account => {
    const sold = own.filter((story) => story.sold !== null && within(story.sold.on));
    const known = sold.filter(({paid}) => paid !== null);
    const days = sold.flatMap((story) => story.days ?? []);
    const profit = sumOf(known, (story) => profitOfStory(story)!);
    return {
      name: of, bought: own.filter(({boughtOn}) => within(boughtOn)).length, sold: sold.length, paid: sumOf(known, (story) => story.paid!), costs: sumOf(sold, costsOf), taken: sumOf(sold, (story) => story.sold!.price), profit,
      margin: marginOf(profit, sumOf(known, (story) => story.sold!.price)), days: days.length === 0 ? null : median(days),
    };
  });
  return accounts.filter(({bought, sold}) => bought + sold > 0).sort((a, b) => b.profit - a.profit || (a.name < b.name ? -1 : 1));
}

function slowest(held: readonly Story[], stories: readonly Story[], today: string): BookOfCurrency["slow"] {
  const usual = new Map<string, number[]>();
  for (const {garment, days} of stories) if (days !== null) usual.set(garment.kind, [...(usual.get(garment.kind) ?? []), days]);
  return held
    .flatMap(({garment, paid, listedOn, boughtOn}) => {
      const since = listedOn ?? boughtOn;
      if (since === null || since > today) return [];
      const times = usual.get(garment.kind) ?? [];
      return [{id: garment.id, number: garment.number, kind: garment.kind, days: dayOf(today) - dayOf(since), usual: times.length < leastSold ? null : median(times), paid, asked: garment.asked?.cents ?? null}];
    })
    .sort((a, b) => b.days - a.days || (a.id < b.id ? -1 : 1))
    .slice(0, mostSlow);
}

const sumOf = <T>(items: readonly T[], of: (item: T) => number): number => items.reduce((sum, item) => sum + of(item), 0);
const marginOf = (profit: number, taken: number): number | null => (taken > 0 ? profit / taken : null);

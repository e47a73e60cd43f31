// The shop month by month, months without anything included, so that a plot has no holes.
import type {BookOfCurrency} from "../answer.ts";
import {parseMonth, printMonth, monthIndex} from "../../engine/index.ts";
import {profitOfStory, type Story} from "./story.ts";

type Month = BookOfCurrency["months"][number];

/** From the first month in which anything happened, or the one asked for, to the last. */
export function monthsOf(stories: readonly Story[], {from, until}: {readonly from: string | null; readonly until: string | null}): Month[] {
  const found = new Map<string, {-readonly [K in keyof Month]: Month[K]}>();
  const at = (day: string | null) => {
    if (day === null || (from !== null && day < from) || (until !== null && day > until)) return null;
    const month = day.slice(0, 7);
    const known = found.get(month) ?? emptyMonth(month);
    found.set(month, known);
    return known;
  };
  for (const story of stories) {
    const bought = at(story.boughtOn);
    if (bought) {
      bought.bought++;
      bought.spent += story.paid ?? 0;
    }
    for (const {cents, on} of story.costs) {
      const month = at(on ?? story.boughtOn);
      if (month) month.laidOut += cents;
    }
    const sold = story.sold && at(story.sold.on);
    if (sold) {
      sold.sold++;
      sold.taken += story.sold!.price;
      sold.laidOut += story.sold!.outlay;
      sold.profit += profitOfStory(story) ?? 0;
    }
  }
  const named = [...found.keys()].sort();
  if (named.length === 0) return [];
  const [first, last] = [parseMonth(named[0]!)!, parseMonth(named.at(-1)!)!];
  return Array.from({length: last - first + 1}, (_, i) => {
    const month = printMonth(monthIndex(first + i));
    return found.get(month) ?? emptyMonth(month);
  });
}

const emptyMonth = (month: string): Month => ({month, bought: 0, sold: 0, spent: 0, laidOut: 0, taken: 0, profit: 0});

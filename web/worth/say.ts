// Prices, odds and differences in the words of a dealer.
import type {Amount, Terms} from "../../worth/model.ts";
import {figuresOf, sayAmount} from "./money.ts";

export const currencyOf = (terms: Terms | null): string => terms?.currency ?? localStorage.getItem("ticking.currency") ?? "USD";

/**
 * An estimate, without figures that it cannot stand for: to about one part in fifty.
 * @example
 * sayAbout({cents: 21937, currency: "USD"}, "en-US") // -> "$220"
 */
export function sayAbout({cents, currency}: Amount, locale?: string): string {
  const step = niceStep(Math.abs(cents) / 50, 10 ** figuresOf(currency));
  return sayAmount({cents: Math.round(cents / step) * step, currency}, locale);
}

/** The largest of 1, 2, 5, 10, 20 ... that is not above; never a part of a smallest unit. */
function niceStep(most: number, coin: number): number {
  let step = 1;
  for (const times of [5, 2]) {
    while (step * 10 <= most) step *= 10;
    if (step * times <= most) return roundTo(step * times, coin);
  }
  return roundTo(step, coin);
}

/** Whole coins are easier said than 0.20 of one, as soon as the price has more than a few. */
const roundTo = (step: number, coin: number) => (step * 5 >= coin && step < coin ? coin : step);

/** "110 to 300", said once where both round to the same. */
export function sayBetween(low: number, high: number, currency: string, locale?: string): string {
  const [from, until] = [sayAbout({cents: low, currency}, locale), sayAbout({cents: high, currency}, locale)];
  return from === until ? from : `${from} to ${until}`;
}

const words: Readonly<Record<string, string>> = {"0.5": "half of them", "0.8": "8 in 10", "0.9": "9 in 10"};
/** "8 in 10" */
export const sayOften = (share: number): string => words[String(share)] ?? `${Math.round(share * 100)} in 100`;

/**
 * A factor on the price as a difference: "a fifth more" is "20 in 100 more".
 * @example
 * sayFactor(0.75) // -> "25 in 100 less"
 */
export function sayFactor(factor: number): string {
  if (factor >= 2) return `${(Math.round(factor * 10) / 10).toLocaleString()} times as much`;
  const more = Math.round((factor - 1) * 100);
  return more === 0 ? "no difference" : `${Math.abs(more)} in 100 ${more > 0 ? "more" : "less"}`;
}

/** "1 sale", "12 sales" */
export const saySales = (count: number): string => `${count.toLocaleString()} ${count === 1 ? "sale" : "sales"}`;

/** 2026-03-09 as the reader's own language writes it. */
export const sayDay = (day: string): string => new Date(`${day}T00:00:00Z`).toLocaleDateString(undefined, {dateStyle: "medium", timeZone: "UTC"});

/** Words of the server name makers by the ids of their books; people know them by their names. */
export function withNames(words: string, makers: ReadonlyMap<string, string>): string {
  return [...makers].reduce((said, [id, name]) => said.replace(new RegExp(`(?<![\\w-])${id.replace(/[^\w-]/g, "")}(?![\\w-])`, "g"), () => name), words);
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

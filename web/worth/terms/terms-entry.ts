// The shop's terms as they are typed, and read back: every slip told beside its field.
import {digitsOf} from "../../../worth/money/currencies.ts";
import type {Terms} from "../../../worth/model.ts";
import {readAmount, typeAmount} from "../money.ts";
import {readShare, typeShare} from "../share-text.ts";

export type TermsEntry = Readonly<Record<keyof Terms, string>>;
export type TermsSlips = Readonly<Partial<Record<keyof Terms, string>>>;

/** The largest part of a hundred of each; the shapes of the setting refuse more. */
const shares = {margin: 0.95, feeShare: 0.9, taxShare: 0.9, yearlyCost: 2, room: 0.9} as const;
const amounts = ["feeFixed", "postage", "cleaning"] as const;

export function typeTerms(terms: Terms): TermsEntry {
  const {currency} = terms;
  return {
    currency,
    ...mapped(amounts, (key) => typeAmount({cents: terms[key], currency})),
    ...mapped(Object.keys(shares) as (keyof typeof shares)[], (key) => typeShare(terms[key])),
    daysToSell: String(terms.daysToSell),
  };
}

/** @returns terms null when something cannot stand */
export function readTerms(entry: TermsEntry): {readonly terms: Terms | null; readonly slips: TermsSlips} {
  const slips: Partial<Record<keyof Terms, string>> = {};
  const currency = entry.currency.trim().toUpperCase();
  if (digitsOf(currency) === null) slips.currency = "Three letters of a currency, like USD, EUR or JPY";
  const money = mapped(amounts, (key) => {
    const {cents, wrong} = readAmount(entry[key], currency);
    if (wrong) slips[key] = wrong;
    return cents ?? 0;
  });
  const parts = mapped(Object.keys(shares) as (keyof typeof shares)[], (key) => {
    const {share, wrong} = readShare(entry[key], shares[key]);
    if (wrong) slips[key] = wrong;
    return share ?? 0;
  });
  const days = entry.daysToSell.trim().replace(",", ".");
  const daysToSell = /^\d{1,4}(\.\d)?$/.test(days) ? Number(days) : NaN;
  if (!(daysToSell <= 3650)) slips.daysToSell = "A number of days, at most 3650";
  // Nothing would be left to pay with.
  if (!slips.margin && !slips.feeShare && !slips.taxShare && parts.margin + parts.feeShare + parts.taxShare >= 1) slips.margin = "Margin, fees and tax together take all of the price: nothing would be left to buy with";
  return {terms: Object.keys(slips).length > 0 ? null : {currency, ...money, ...parts, daysToSell}, slips};
}

function mapped<K extends string, T>(keys: readonly K[], value: (key: K) => T): Record<K, T> {
  return Object.fromEntries(keys.map((key) => [key, value(key)])) as Record<K, T>;
}

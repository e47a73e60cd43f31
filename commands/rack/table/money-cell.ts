// Money as a cell of a table: "120.00 EUR", kept exactly in the smallest unit of its currency.
import type {Money} from "../../../store/model.ts";
import {digitsOf} from "../../../worth/money/currencies.ts";

/** Figures behind the point of a currency, by ISO 4217; the runtime's own list follows what is common in shops instead. Two for one that is not known. */
const figuresOf = (currency: string): number => digitsOf(currency) ?? 2;

/**
 * @example
 * printMoney({cents: 12000, currency: "EUR"}) // -> "120.00 EUR"
 */
export function printMoney({cents, currency}: Money): string {
  const figures = figuresOf(currency);
  const digits = String(cents).padStart(figures + 1, "0");
  const whole = digits.slice(0, digits.length - figures);
  return `${whole}${figures > 0 ? `.${digits.slice(-figures)}` : ""} ${currency}`;
}

/**
 * Reads an amount with its currency before or behind it; the decimal sign may be a comma. Thousands are not divided, as no one could tell them from cents.
 * @param usual  the currency of amounts that name none
 * @returns      null when it is no amount, or has more figures behind the point than its currency
 */
export function readMoney(text: string, usual: string | null): Money | null {
  const [, before, whole, cents = "", behind] = /^(?:([A-Za-z]{3})\s*)?(\d{1,10})(?:[.,](\d{1,4}))?(?:\s*([A-Za-z]{3}))?$/.exec(text.trim()) ?? [];
  const currency = (before ?? behind ?? usual)?.toUpperCase();
  if (whole === undefined || currency === undefined || (before && behind)) return null;
  const figures = figuresOf(currency);
  if (cents.length > figures) return null;
  return {cents: Number(whole + cents.padEnd(figures, "0")), currency};
}

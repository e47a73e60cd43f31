// An amount of money as people write it in tables: figures as their country writes them, the currency before, behind or in a column of its own.
import type {Amount} from "../../../worth/model.ts";
import {digitsOf} from "../../../worth/money/currencies.ts";
import {parseMoney} from "../../../worth/money/money.ts";

/** Signs that stand for one currency alone; a dollar can be one of twenty. */
const signs: Readonly<Record<string, string>> = {"€": "EUR", "£": "GBP"};

/**
 * @param usual  the currency where the cell names none
 * @returns      "no currency" when neither names one; null when it is no amount
 */
export function readPrice(text: string, usual: string | null): Amount | "no currency" | null {
  const cell = text.trim();
  const [, before, figures = "", behind] = /^([A-Za-z]{3}\b|\p{Sc})?\s*(-?[\d.,'\s\u00a0\u202f]*\d)\s*([A-Za-z]{3}|\p{Sc})?$/u.exec(cell) ?? [];
  if (figures === "") return null;
  const named = [before, behind].filter((mark) => mark !== undefined).map((mark) => signs[mark] ?? (mark.length === 3 ? mark.toUpperCase() : null));
  const currency = named.find((code) => code !== null) ?? usual?.toUpperCase() ?? null;
  if (currency === null) return "no currency";
  if (new Set(named.filter((code) => code !== null)).size > 1 || digitsOf(currency) === null) return null;
  const cents = parseMoney(figures, currency);
  return cents === null ? null : {cents, currency};
}

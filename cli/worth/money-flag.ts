// Amounts given on the command line.
import type {Problem} from "../../engine/index.ts";
import {readPrice} from "../../commands/worth/table/price-cell.ts";
import type {Amount} from "../../worth/model.ts";
import * as say from "./problems.ts";

/** @param usual  the currency of the terms; null and a problem when it is no amount */
export function amountOf(flag: string, given: string | undefined, usual: string, problems: Problem[]): Amount | null {
  if (given === undefined) return null;
  const read = readPrice(given, usual);
  if (read === null || read === "no currency") {
    problems.push(say.notAmount(flag, given, usual));
    return null;
  }
  if (read.cents < 0) {
    problems.push(say.belowNothing(flag, given));
    return null;
  }
  return read;
}

/** Cents of the currency of the terms. */
export function centsOf(flag: string, given: string | undefined, currency: string, problems: Problem[]): number | null {
  const amount = amountOf(flag, given, currency, problems);
  if (amount && amount.currency !== currency) problems.push(say.notInTerms(flag, given!, currency));
  return amount?.cents ?? null;
}

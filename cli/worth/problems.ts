// The wordings of what can be wrong when prices and sales are asked for from a terminal, to be read in a row.
import type {Problem} from "../../engine/index.ts";

export const notDay = (at: string, given: string): Problem => ({
  code: "cli/not-day", at, what: `“${given}” is no day`, why: "sales are told apart by their days", fix: "write year, month and day, like 2026-03-14",
});

export const notAmount = (at: string, given: string, currency: string): Problem => ({
  code: "cli/not-amount", at, what: `“${given}” is no amount of money`, why: "money is kept exactly", fix: `write figures, with the letters of the currency unless it is ${currency}, like "120.00 ${currency}"`,
});

export const belowNothing = (at: string, given: string): Problem => ({
  code: "cli/below-nothing", at, what: `“${given}” is below nothing`, why: "prices, fees and costs are told without a sign; which way the money goes is known", fix: "leave the minus out",
});

export const notInTerms = (at: string, given: string, currency: string): Problem => ({
  code: "cli/not-in-terms", at, what: `“${given}” is not in ${currency}, in which the shop reckons`, why: "amounts of two currencies are not compared without a rate, and a rate is nobody's to guess", fix: `give it in ${currency}, or change the currency with ticking terms --set currency=...`,
});

export const notMany = (at: string, given: string): Problem => ({
  code: "cli/not-many", at, what: `“${given}” is no number of garments`, why: "the lot would be counted wrongly", fix: "give a whole number, like 20",
});

export const notTerm = (given: string, names: readonly string[]): Problem => ({
  code: "cli/not-term", at: "--set", what: `“${given}” names none of the terms`, why: "nothing could be set", fix: `write one of ${names.join(", ")}, then =, then its value, like margin=0.4`,
});

// Money as people write and read it, kept in whole smallest units all the way: never as a fraction.
import {digitsOf} from "../../worth/money/currencies.ts";
import type {Amount} from "../../worth/model.ts";

/** What was typed: an amount, nothing, or why it is none. */
export type TypedAmount = {readonly cents: number | null; readonly wrong: null} | {readonly cents: null; readonly wrong: string};

const most = 1e12;

/**
 * An amount as the reader's own language writes it; whole amounts without their cents.
 * @param locale  that of the browser when left out
 * @example
 * sayAmount({cents: 125050, currency: "USD"}, "en-US") // -> "$1,250.50"
 */
export function sayAmount({cents, currency}: Amount, locale?: string): string {
  const {whole, part} = halves(cents, currency);
  const shown = /[1-9]/.test(part) ? part.length : 0;
  // The figures go as text: no number with a fraction is ever made of them.
  const text = `${cents < 0 ? "-" : ""}${whole}${shown > 0 ? `.${part}` : ""}` as `${number}`;
  return new Intl.NumberFormat(locale, {style: "currency", currency, minimumFractionDigits: shown, maximumFractionDigits: shown}).format(text);
}

/**
 * An amount as it stands in a field to be typed over, with the decimal sign of the language.
 * @example
 * typeAmount({cents: 125050, currency: "EUR"}, "de") // -> "1250,50"
 */
export function typeAmount({cents, currency}: Amount, locale?: string): string {
  const {whole, part} = halves(cents, currency);
  return `${cents < 0 ? "-" : ""}${whole}${/[1-9]/.test(part) ? decimalOf(locale) + part : ""}`;
}

/**
 * Reads what was typed: figures with a point or a comma before the cents, thousands set apart or not, the currency's sign or letters around it.
 *
 * "1,250" is twelve hundred and fifty where cents have two figures; of a coin with a thousand parts the decimal sign of the language decides.
 * @returns  no cents and nothing wrong when nothing is typed
 * @example
 * readAmount("1.250,50", "EUR") // -> {cents: 125050, wrong: null}
 */
export function readAmount(text: string, currency: string, locale?: string): TypedAmount {
  const bare = text.trim().replace(/(?<=\d)[\s'’](?=\d)/g, "'").replace(/\s/g, "").replace(/−/g, "-");
  const no = (wrong: string): TypedAmount => ({cents: null, wrong});
  if (bare === "") return {cents: null, wrong: null};
  const [, before = "", number = "", behind = ""] = /^([^\d.,]*)([\d.,']*\d[.,]?)(\D*)$/.exec(bare) ?? [];
  const figures = figuresOf(currency);
  const example = `An amount like ${exampleOf(currency, locale)}`;
  if (number === "") return no(example);
  if (/-/.test(before + behind)) return no("Nothing below nothing: an amount without a minus");
  const codes = [before, behind].flatMap((word) => /[A-Za-z]{3}/.exec(word)?.[0].toUpperCase() ?? []);
  if (codes.some((code) => code !== currency)) return no(`Counted in ${currency} here`);
  const parts = partsOf(number, figures, decimalOf(locale));
  if (parts === null) return no(example);
  if (parts.part.length > figures) return no(figures === 0 ? `${currency} has no smaller coin: a whole amount` : `${currency} has ${figures} figures behind the ${decimalOf(locale) === "," ? "comma" : "point"}, no more`);
  const cents = Number(parts.whole + parts.part.padEnd(figures, "0"));
  return cents > most ? no("More than can be kept") : {cents, wrong: null};
}

/** Thousands in threes, or as in India the last three and then pairs. */
const thousands = /^\d{1,3}(?:([.,'])\d{3})(?:\1\d{3})*$|^\d{1,2}(?:,\d{2})*,\d{3}$/;

/** The figures before and behind the decimal sign; null when the signs between them make no sense. */
function partsOf(number: string, figures: number, decimal: string): {readonly whole: string; readonly part: string} | null {
  const at = number.search(/[.,'](?=[^.,']*$)/);
  if (at < 0) return {whole: number, part: ""};
  const sign = number[at]!;
  const [head, tail] = [number.slice(0, at), number.slice(at + 1)];
  const alone = !/[.,']/.test(head);
  if (thousands.test(number) && !(figures === 3 && alone && sign === decimal)) return {whole: number.replace(/[.,']/g, ""), part: ""};
  if (sign === "'" || head.includes(sign) || !(alone || thousands.test(head))) return null;
  return {whole: head.replace(/[.,']/g, ""), part: tail};
}

function halves(cents: number, currency: string): {readonly whole: string; readonly part: string} {
  const figures = figuresOf(currency);
  const digits = String(Math.abs(cents)).padStart(figures + 1, "0");
  return {whole: digits.slice(0, digits.length - figures), part: figures > 0 ? digits.slice(-figures) : ""};
}

/** Figures behind the point; two where the letters name no currency. */
export const figuresOf = (currency: string): number => digitsOf(currency) ?? 2;

const decimalOf = (locale?: string): string => new Intl.NumberFormat(locale).formatToParts(0.5).find(({type}) => type === "decimal")!.value;

function exampleOf(currency: string, locale?: string): string {
  const figures = figuresOf(currency);
  return figures === 0 ? "120" : `120 or ${typeAmount({cents: Number(`89${"5".padEnd(figures, "0")}`), currency}, locale)}`;
}

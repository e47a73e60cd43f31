// Money in whole numbers: shares of it are rounded once, half to even, and what is split adds up.
import {digitsOf} from "./currencies.ts";

/**
 * Divides whole numbers, to the nearest whole number; a half goes to the even neighbour.
 * @source  ISO 80000-1 annex B rule A; ASTM E29
 */
export function divideHalfEven(dividend: bigint, divisor: bigint): bigint {
  if (divisor < 0n) return divideHalfEven(-dividend, -divisor);
  const floor = dividend / divisor - (dividend % divisor < 0n ? 1n : 0n);
  const twice = 2n * (dividend - floor * divisor);
  return twice > divisor || (twice === divisor && floor % 2n !== 0n) ? floor + 1n : floor;
}

/**
 * A share of an amount, exactly: the share is taken as the decimal number that it prints as, so 0.15 is 15/100 and not the nearest binary fraction.
 * @example
 * shareOf(50, 0.15) // -> 8
 */
export function shareOf(cents: number, share: number): number {
  const {whole, scale} = decimalOf(share);
  return Number(divideHalfEven(BigInt(cents) * whole, scale));
}

/** An amount divided by a number, exactly as `shareOf`. */
export function dividedBy(cents: number, by: number): number {
  const {whole, scale} = decimalOf(by);
  return Number(divideHalfEven(BigInt(cents) * scale, whole));
}

function decimalOf(value: number): {whole: bigint; scale: bigint} {
  const match = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value));
  if (!match) throw new RangeError(`${value} is no number to take a share of money by`);
  const [, sign, before, after = "", power = "0"] = match;
  const whole = BigInt(`${sign}${before}${after}`);
  const places = after.length - Number(power);
  return places >= 0 ? {whole, scale: 10n ** BigInt(places)} : {whole: whole * 10n ** BigInt(-places), scale: 1n};
}

/**
 * Splits an amount by weights so that the parts add up: what rounding down leaves goes to the largest remainders, the first of equal ones.
 * @param weights  not negative, not all 0
 * @example
 * split(100, [1, 1, 1]) // -> [34, 33, 33]
 */
export function split(cents: number, weights: readonly number[]): number[] {
  const parts = weights.map(decimalOf);
  const scale = parts.reduce((most, part) => (part.scale > most ? part.scale : most), 1n);
  const whole = parts.map((part) => part.whole * (scale / part.scale));
  const total = whole.reduce((sum, part) => sum + part, 0n);
  if (total <= 0n || whole.some((part) => part < 0n)) throw new RangeError("money is split by weights that are not negative and not all 0");
  const size = BigInt(Math.abs(cents));
  const shares = whole.map((part, i) => ({i, down: (size * part) / total, rest: (size * part) % total}));
  let left = size - shares.reduce((sum, {down}) => sum + down, 0n);
  for (const share of [...shares].sort((a, b) => (a.rest === b.rest ? a.i - b.i : a.rest > b.rest ? -1 : 1))) {
    if (left === 0n) break;
    share.down += 1n;
    left -= 1n;
  }
  return shares.map(({down}) => Number(down) * Math.sign(cents) || 0);
}

/**
 * Writes an amount: "USD 1,250", "USD 12.50", "JPY 1,250", "KWD 1.250".
 * @throws  on a code that is no currency
 */
export function printMoney(cents: number, currency: string): string {
  const digits = digitsOf(currency);
  if (digits === null) throw new RangeError(`${currency} is no currency of ISO 4217`);
  const figures = String(Math.abs(cents)).padStart(digits + 1, "0");
  const whole = figures.slice(0, figures.length - digits).replace(/\B(?=(\d{3})+$)/g, ",");
  const part = figures.slice(figures.length - digits);
  // Three digits are always written: 12,345 alone could be twelve dinars and some, or twelve thousand.
  return `${cents < 0 ? "-" : ""}${currency} ${whole}${/[1-9]/.test(part) || digits === 3 ? `.${part}` : ""}`;
}

/**
 * Reads an amount as people type it: 1250, 1,250.5, 1.250,50, 1 250. The last mark is the decimal one when as many digits as the currency has, or fewer, follow it.
 * @returns whole cents; null when it is no amount, has more digits than the currency, or can be read two ways
 */
export function parseMoney(text: string, currency: string): number | null {
  const digits = digitsOf(currency);
  const bare = text.trim().replace(/[\u00a0\u202f]/g, " ");
  // A currency with a thousand parts writes three digits behind a point; behind a comma they can be read two ways.
  const alone = digits === 3 ? /^(-?\d+)([.,])(\d{3})$/.exec(bare) : null;
  if (alone) return alone[2] === "," ? null : Number(alone[1]! + alone[3]!) || 0;
  const match = /^(-?)(\d{1,3}([,. '])\d{3}(?:\3\d{3})*|\d+)(?:([,.])(\d+))?$/.exec(bare);
  if (digits === null || !match) return null;
  const [, sign, whole, group, point, part = ""] = match;
  // "1,250" alone is a thousand and some; "1.250" could be meant as dollars and tenths of cents.
  if (point !== undefined && (part.length > digits || point === group)) return null;
  if (point === undefined && group === "." && !/\.\d{3}\./.test(whole!)) return null;
  const cents = Number(whole!.replace(/\D/g, "") + part.padEnd(digits, "0"));
  return Number.isSafeInteger(cents) ? Number(`${sign}${cents}`) || 0 : null;
}

// Lengths as they are typed (31 1/2, 16.25, 81 cm), read exactly, and said again on a tape of either kind.
import type {TypedLength} from "./model.ts";
import {over, plus, ratio, ratioOf, roundTo, times, toNumber, type Ratio} from "./ratio.ts";

export type LengthUnit = TypedLength["unit"];

export interface Length {
  /** Exact millimetres. */
  readonly mm: Ratio;
  /** The unit it was typed in. */
  readonly unit: LengthUnit;
  /** The smallest step that was typed, in millimetres: 31 1/8 is good to an eighth of an inch. */
  readonly stepMm: number;
}

/** One inch is 25.4 mm exactly. Source: international yard and pound agreement of 1959; NIST SP 811 appendix B. */
const inchMm = ratio(254n, 10n);
const centimetreMm = ratio(10n);
const perUnit: Readonly<Record<LengthUnit | "mm", Ratio>> = {in: inchMm, cm: centimetreMm, mm: ratio(1n)};

const vulgar: Readonly<Record<string, string>> = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "⅓": "1/3", "⅔": "2/3"};
/** A whole inch is taken to be read to the half: nobody's tape is that coarse. Common practice, no source. */
const coarsestMm = 12.7;

/**
 * Reads a typed length; a unit that is typed with it goes before the one that was chosen.
 * @returns null when it is no length above 0 of at most three metres
 * @example
 * toMm(readLength({typed: "31 1/2", unit: "in"})) // -> 800.1
 */
export function readLength({typed, unit}: TypedLength): Length | null {
  const plain = typed.replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${vulgar[sign]!}`).trim().toLowerCase();
  const [, whole, decimals, top, bottom, suffix = ""] = /^(?:(\d{1,4})(?:[.,](\d{1,4}))?)?(?:(?:^|\s+|-)(\d{1,2})\/(\d{1,2}))?\s*(in|inch|inches|"|″|”|cm|mm)?\.?$/.exec(plain) ?? [];
  if ((whole === undefined && top === undefined) || (decimals !== undefined && top !== undefined)) return null;
  if (top !== undefined && (Number(bottom) < 2 || Number(top) >= Number(bottom))) return null;
  const read = suffix === "mm" || suffix === "cm" ? suffix : suffix === "" ? unit : "in";
  const number = plus(ratio(BigInt(`${whole ?? 0}${decimals ?? ""}`), 10n ** BigInt(decimals?.length ?? 0)), top === undefined ? ratio(0n) : ratio(BigInt(top), BigInt(bottom!)));
  const mm = times(number, perUnit[read]);
  if (mm.top === 0n || toNumber(mm) > 3000) return null;
  const step = (toNumber(perUnit[read]) / 10 ** (decimals?.length ?? 0)) / Number(bottom ?? 1);
  return {mm, unit: read === "mm" ? "cm" : read, stepMm: Math.min(step, coarsestMm)};
}

/** Millimetres as a number; NaN for none. */
export const toMm = (length: Length | null) => (length ? toNumber(length.mm) : Number.NaN);

/** Twice a length: all round from one laid flat; what was rounded doubles as well. */
export const doubled = ({mm, unit, stepMm}: Length): Length => ({mm: times(mm, ratio(2n)), unit, stepMm: 2 * stepMm});

/**
 * A length in words, to the nearest 1/8 in or 1/2 cm, or as fine as it is when that is no finer than 1/32 in or 1 mm.
 * @example
 * sayMm(800.1, "in") // -> "31 1/2 in"
 */
export function sayMm(mm: number | Ratio, unit: LengthUnit): string {
  const inUnit = over(typeof mm === "number" ? ratioOf(mm) : mm, perUnit[unit]);
  return unit === "in" ? `${sayFraction(32n % inUnit.bottom === 0n ? inUnit : roundTo(inUnit, ratio(1n, 8n), "away"))} in` : `${toNumber(10n % inUnit.bottom === 0n ? inUnit : roundTo(inUnit, ratio(1n, 2n), "away"))} cm`;
}

function sayFraction({top, bottom}: Ratio): string {
  const size = top < 0n ? -top : top;
  const [whole, rest] = [size / bottom, size % bottom];
  return `${top < 0n ? "-" : ""}${rest === 0n ? whole : `${whole === 0n ? "" : `${whole} `}${rest}/${bottom}`}`;
}

// Exact fractions, so that 31 3/8 in stays what it is in millimetres.

/** In lowest terms, the bottom above 0. */
export interface Ratio {
  readonly top: bigint;
  readonly bottom: bigint;
}

/**
 * @throws when the bottom is 0
 */
export function ratio(top: bigint, bottom = 1n): Ratio {
  if (bottom === 0n) throw new RangeError("a fraction over 0");
  const common = divisor(top < 0n ? -top : top, bottom < 0n ? -bottom : bottom) || 1n;
  const sign = bottom < 0n ? -1n : 1n;
  return {top: (sign * top) / common, bottom: (sign * bottom) / common};
}

export const plus = (a: Ratio, b: Ratio) => ratio(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
export const times = (a: Ratio, b: Ratio) => ratio(a.top * b.top, a.bottom * b.bottom);
export const over = (a: Ratio, b: Ratio) => ratio(a.top * b.bottom, a.bottom * b.top);
export const toNumber = ({top, bottom}: Ratio) => Number(top) / Number(bottom);

/** A decimal number exactly as its shortest print says: 0.1 is one tenth. */
export function ratioOf(value: number): Ratio {
  const [, sign, whole, cents = "", power = "0"] = /^(-?)(\d+)(?:\.(\d+))?(?:e([-+]?\d+))?$/.exec(String(value)) ?? [];
  if (whole === undefined) throw new RangeError(`${value} is no finite number`);
  const digits = BigInt(whole + cents) * (sign ? -1n : 1n);
  const tens = Number(power) - cents.length;
  return tens >= 0 ? ratio(digits * 10n ** BigInt(tens)) : ratio(digits, 10n ** BigInt(-tens));
}

/**
 * The nearest multiple of a step.
 * @param half  where a value right between two goes: away from 0, or to the even multiple (ASTM E29, ISO 80000-1 annex B rule A; both from memory)
 * @example
 * toNumber(roundTo(ratioOf(29.37), ratio(1n, 2n), "away")) // -> 29.5
 */
export function roundTo(value: Ratio, step: Ratio, half: "away" | "even"): Ratio {
  const {top, bottom} = over(value, step);
  const [size, sign] = top < 0n ? [-top, -1n] : [top, 1n];
  const [whole, twice] = [size / bottom, 2n * (size % bottom)];
  const up = twice > bottom || (twice === bottom && (half === "away" || whole % 2n === 1n));
  return times(ratio(sign * (whole + (up ? 1n : 0n))), step);
}

function divisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : divisor(b, a % b);
}

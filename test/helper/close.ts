// Compares numbers with a tolerance that every test has to state: there is no default to hide behind.

/** `rel` is a share of the expected value; `abs` needs the reason why an absolute difference is meant. */
export type Tolerance = {readonly rel: number} | {readonly abs: number; readonly because: string};

/**
 * Throws unless a number is as close to the expected one as the tolerance says.
 * @edge   NaN and infinities are never close; a relative tolerance around 0 lets nothing but 0 pass
 * @throws an error that shows both numbers, their difference and the tolerance
 * @example
 * close(1 / 3, 0.333333333, {rel: 1e-8})
 */
export function close(actual: number, expected: number, tolerance: Tolerance): void {
  const difference = Math.abs(actual - expected);
  const allowed = "rel" in tolerance ? tolerance.rel * Math.abs(expected) : tolerance.abs;
  if (Number.isFinite(difference) && difference <= allowed) return;
  const said = "rel" in tolerance ? `relative ${tolerance.rel}` : `absolute ${tolerance.abs}: ${tolerance.because}`;
  throw new Error(`${actual} is not close to ${expected}: they differ by ${difference}, allowed is ${allowed} (${said})`);
}

/** As `close`, place by place; the lengths must agree. */
export function allClose(actual: ArrayLike<number>, expected: ArrayLike<number>, tolerance: Tolerance): void {
  if (actual.length !== expected.length) throw new Error(`${actual.length} numbers where ${expected.length} are expected`);
  for (let i = 0; i < expected.length; i++) close(actual[i]!, expected[i]!, tolerance);
}

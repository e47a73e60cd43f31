// Huber's centre of some values and their spread: a slipped decimal point moves neither.
import {median, medianSpread} from "./weighted.ts";

export interface Centre {
  readonly centre: number;
  readonly spread: number;
}

const cut = 1.5;
/** What the mean square of a normal sample shrinks to when it is pulled in at 1.5 standard deviations: with q = P(|z| < 1.5), q + 1.5² (1 - q) - 2 · 1.5 φ(1.5). */
const shrunk = 0.8663855974622838 + cut ** 2 * (1 - 0.8663855974622838) - 2 * cut * 0.12951759566589174;

/**
 * The mean of the values pulled in to 1.5 spreads from it, the spread found together with it (Huber's second proposal).
 * @returns a spread of 0 when more than half of the values are the same
 * @source  "hubers" of R's MASS (Venables and Ripley 2002, 5.5), which stops at a change of 1e-6 spreads
 */
export function huberCentre(values: ArrayLike<number>): Centre {
  let now: Centre = {centre: median(values), spread: medianSpread(values)};
  if (!(now.spread > 0)) return now;
  for (;;) {
    const pulled = Float64Array.from(values, (v) => Math.min(now.centre + cut * now.spread, Math.max(now.centre - cut * now.spread, v)));
    const centre = pulled.reduce((sum, v) => sum + v, 0) / pulled.length;
    const squares = pulled.reduce((sum, v) => sum + (v - centre) ** 2, 0) / (pulled.length - 1);
    const next: Centre = {centre, spread: Math.sqrt(squares / shrunk)};
    if (Math.abs(next.centre - now.centre) < 1e-6 * now.spread && Math.abs(next.spread - now.spread) < 1e-6 * now.spread) return next;
    now = next;
  }
}

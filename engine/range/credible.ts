// The shortest sets of months that hold a stated share of the probability, and the one-sided bounds.
import type {MonthIndex} from "../units.ts";
import {monthIndex} from "../units.ts";
import type {Span} from "../window/window.ts";

export interface CredibleSet {
  /** The share asked for. */
  readonly share: number;
  /** The probability held, at least the share. */
  readonly mass: number;
  /** Runs of months, in time order. */
  readonly runs: readonly Span[];
  /** How many months it holds. */
  readonly months: number;
}

/**
 * The smallest set of months that holds at least a share of the probability; it may be in several pieces.
 * @param share   up to 0.999
 * @edge ties go to the earlier month; months too many for the share by rounding (1e-12) are left out
 * @source highest-density region: Hyndman 1996, The American Statistician 50:120-126
 */
export function credibleSet(posterior: Float64Array, share: number, first: MonthIndex): CredibleSet {
  const chosen: number[] = [];
  let mass = 0;
  for (const t of byProbability(posterior)) {
    if (mass >= share - 1e-12) break;
    chosen.push(t);
    mass += posterior[t]!;
  }
  chosen.sort((a, b) => a - b);
  const runs: Span[] = [];
  for (const t of chosen) {
    const m = monthIndex(first + t);
    const last = runs.at(-1);
    if (last && last.until === m - 1) runs[runs.length - 1] = {from: last.from, until: m};
    else runs.push({from: m, until: m});
  }
  return {share, mass, runs, months: chosen.length};
}

const orders = new WeakMap<Float64Array, readonly number[]>();

/** The largest share that is ever asked for. */
const mostAsked = 0.999;

/**
 * Months by falling probability, ties by time, as far as any set can need them: months that each hold less than their part of
 * what the largest set may leave out hold less than that together, so no set reaches them.
 */
function byProbability(posterior: Float64Array): readonly number[] {
  let order = orders.get(posterior);
  if (!order) {
    const least = (1 - mostAsked) / posterior.length;
    const some: number[] = [];
    for (let t = 0; t < posterior.length; t++) if (posterior[t]! >= least) some.push(t);
    order = some.sort((a, b) => posterior[b]! - posterior[a]! || a - b);
    orders.set(posterior, order);
  }
  return order;
}

/** No earlier than and no later than: all but `tail` of the probability lies after and before. */
export function bounds(posterior: Float64Array, tail: number, first: MonthIndex): {noEarlier: MonthIndex; noLater: MonthIndex} {
  let mass = 0;
  let low = 0;
  let high = posterior.length - 1;
  let found = false;
  for (let t = 0; t < posterior.length; t++) {
    mass += posterior[t]!;
    if (!found && mass > tail) {
      low = t;
      found = true;
    }
    if (mass >= 1 - tail - 1e-15) {
      high = t;
      break;
    }
  }
  return {noEarlier: monthIndex(first + low), noLater: monthIndex(first + high)};
}

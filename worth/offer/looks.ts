// What looking further is worth in money: how much better the decision to buy gets, over everything the look could show.

/** A decision: what is earned in each state when buying; not buying earns nothing. */
export interface BuyDecision {
  /** States of the world with their chances now, and what buying would earn in each. */
  readonly chances: ArrayLike<number>;
  readonly earns: ArrayLike<number>;
}

/**
 * Expected value of an observation on a decision between buying and leaving, exactly summed over its outcomes.
 * @param outcomes  by outcome: its chance, and the chances of the states after it
 * @returns at least 0: the average of the better choice after looking, less the better choice now; and the chance that the look turns the decision
 * @source  H. Raiffa, R. Schlaifer, Applied Statistical Decision Theory, 1961, chapter 4
 */
export function worthOfLooking({chances, earns}: BuyDecision, outcomes: readonly {readonly chance: number; readonly states: ArrayLike<number>}[]): {worth: number; turns: number} {
  const now = expected(chances, earns);
  const total = outcomes.reduce((sum, {chance}) => sum + chance, 0);
  let after = 0;
  let turns = 0;
  for (const {chance, states} of outcomes) {
    const value = expected(states, earns);
    after += (chance / total) * Math.max(0, value);
    if (value > 0 !== now > 0) turns += chance / total;
  }
  return {worth: Math.max(0, after - Math.max(0, now)), turns};
}

/** At most any observation can be worth: as if the state were known. */
export function worthOfKnowing({chances, earns}: BuyDecision): number {
  let sum = 0;
  let after = 0;
  for (let s = 0; s < chances.length; s++) {
    sum += chances[s]!;
    after += chances[s]! * Math.max(0, earns[s]!);
  }
  return Math.max(0, after / sum - Math.max(0, expected(chances, earns)));
}

function expected(chances: ArrayLike<number>, earns: ArrayLike<number>): number {
  let sum = 0;
  let value = 0;
  for (let s = 0; s < chances.length; s++) {
    sum += chances[s]!;
    value += chances[s]! * earns[s]!;
  }
  return sum > 0 ? value / sum : 0;
}

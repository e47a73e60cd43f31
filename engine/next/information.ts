// Expected information of a look: how much the entropy over months is expected to drop, exactly, over all outcomes.
import type {Outcome} from "../mark/ready-mark.ts";
import {bits, type Bits} from "../units.ts";

/** The outcomes of a look in one case, and the joint probability of month and case. */
export interface Group {
  readonly joint: Float64Array;
  readonly outcomes: readonly Outcome[];
}

/**
 * Mutual information of month and outcome in bits: Σ P(t, o) log2 (P(t, o) / (P(t) P(o))). Outcomes of one name are one outcome in all groups.
 * @param months  probability of each month, the sum of the groups' joints
 * @edge          0 for a look that says nothing; never below 0
 * @source        Lindley 1956, Annals of Mathematical Statistics 27:986-1005; checked against MacKay 2003, exercise 4.1 and examples 9.5-9.9
 */
export function expectedBits(groups: readonly Group[], months: Float64Array): Bits {
  const byName = new Map<string, (readonly [Group, Outcome])[]>();
  for (const group of groups) {
    for (const outcome of group.outcomes) {
      const list = byName.get(outcome.name);
      if (list) list.push([group, outcome]);
      else byName.set(outcome.name, [[group, outcome]]);
    }
  }
  let total = 0;
  const scratch = new Float64Array(months.length);
  for (const list of byName.values()) total += informationOf(list, months, scratch);
  return bits(Math.max(0, total));
}

function informationOf(list: readonly (readonly [Group, Outcome])[], months: Float64Array, scratch: Float64Array): number {
  const touched = list.length === 1 ? list[0]![1].at : null;
  if (touched) for (const t of touched) scratch[t] = 0;
  else scratch.fill(0);
  let chance = 0;
  for (const [{joint}, {at, chance: given}] of list) {
    for (let i = 0; i < given.length; i++) {
      const t = at ? at[i]! : i;
      const both = joint[t]! * given[i]!;
      scratch[t]! += both;
      chance += both;
    }
  }
  if (!(chance > 0)) return 0;
  let information = 0;
  const count = touched ? touched.length : months.length;
  for (let i = 0; i < count; i++) {
    const t = touched ? touched[i]! : i;
    const both = scratch[t]!;
    if (both > 1e-13) information += both * Math.log2(both / (months[t]! * chance));
  }
  return information;
}

// Expected information of a look: how much the entropy over months is expected to drop, exactly, over all outcomes.
import type {Outcome} from "../mark/ready-mark.ts";
import {bits, type Bits} from "../units.ts";

/** The outcomes of a look in one case, and the joint probability of month and case. */
export interface Group {
  /** By month; `offset` months after the first of the whole axis. */
  readonly joint: Float64Array;
  readonly offset?: number;
  readonly outcomes: readonly Outcome[];
  /** How many months the outcomes' vectors begin before the joint. */
  readonly lead?: number;
}

/**
 * Mutual information of month and outcome in bits: Σ P(t, o) log2 (P(t, o) / (P(t) P(o))). Outcomes of one name are one outcome in all groups.
 * @param months  probability of each month, the sum of the groups' joints
 * @param only    the months that count; all when left out
 * @edge          0 for a look that says nothing; never below 0
 * @source        Lindley 1956, Annals of Mathematical Statistics 27:986-1005; checked against MacKay 2003, exercise 4.1 and examples 9.5-9.9
 */
export function expectedBits(groups: readonly Group[], months: Float64Array, only: Int32Array = everyMonth(months.length)): Bits {
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
  for (const list of byName.values()) total += informationOf(list, months, only, scratch);
  return bits(Math.max(0, total));
}

const everyMonth = (n: number) => Int32Array.from({length: n}, (_, t) => t);

function informationOf(list: readonly (readonly [Group, Outcome])[], months: Float64Array, only: Int32Array, scratch: Float64Array): number {
  for (const [group, outcome] of list) addJoint(scratch, group, outcome, only);
  const named = list.every(([, {at, base}]) => at && base === 0);
  // With a base every month counts; months named beside it are among them or hold next to nothing.
  const touched = named ? [...new Set(list.flatMap(([{offset = 0, lead = 0}, {at}]) => Array.from(at!, (t) => t - lead + offset)))] : only;
  let chance = 0;
  for (let i = 0; i < touched.length; i++) chance += scratch[touched[i]!] ?? 0;
  let information = 0;
  for (let i = 0; i < touched.length; i++) {
    const t = touched[i]!;
    const both = scratch[t] ?? 0;
    if (both > 1e-13) information += both * Math.log2(both / (months[t]! * chance));
    scratch[t] = 0;
  }
  if (!named) scratch.fill(0);
  return information;
}

/** Adds the joint probability of month and outcome. */
function addJoint(into: Float64Array, {joint, offset = 0, lead = 0}: Group, {at, chance, base}: Outcome, only: Int32Array): void {
  const n = joint.length;
  if (at) {
    for (let i = 0; i < at.length; i++) {
      const t = at[i]! - lead;
      if (t >= 0 && t < n) into[t + offset]! += joint[t]! * chance[i]!;
    }
    if (base === 0) return;
  }
  for (let i = 0; i < only.length; i++) {
    const t = only[i]! - offset;
    if (t >= 0 && t < n) into[t + offset]! += joint[t]! * (at ? base : base + chance[t + lead]!);
  }
}

/** Outcomes with the entropy of the outcome in each month, worked out once. */
export interface Prepared {
  readonly outcomes: readonly Outcome[];
  readonly entropy: Float64Array;
}

/** Works out the entropy of the outcome for every month. */
export function prepared(outcomes: readonly Outcome[], n: number): Prepared {
  // Every outcome's base counts in every month; where an outcome has more than its base, the difference is added.
  const plain = outcomes.reduce((total, {base}) => total + surprise(base), 0);
  const entropy = new Float64Array(n).fill(plain);
  for (const {at, chance, base} of outcomes) {
    const usual = surprise(base);
    for (let i = 0; i < chance.length; i++) entropy[at ? at[i]! : i]! += surprise(base + chance[i]!) - usual;
  }
  return {outcomes, entropy};
}

const surprise = (p: number) => (p > 0 ? -p * Math.log2(p) : 0);

/** The months that hold all but a trifle of a distribution, and their probabilities. */
export interface Support {
  readonly at: Int32Array;
  readonly p: Float64Array;
  /** Probability by month, for outcomes that name single months. */
  readonly all: Float64Array;
}

export function supportOf(all: Float64Array): Support {
  const at: number[] = [];
  for (let t = 0; t < all.length; t++) if (all[t]! > 1e-10) at.push(t);
  return {at: Int32Array.from(at), p: Float64Array.from(at, (t) => all[t]!), all};
}

/**
 * The same as `expectedBits` for one group, from prepared outcomes: entropy of the outcome less its average entropy given the month.
 * @param lead      how many months the outcomes' vectors begin before the support's axis
 * @accuracy        months with less than 1e-10 are left out; agrees with `expectedBits` to about 1e-7 bits
 */
export function preparedBits({outcomes, entropy}: Prepared, support: Support, lead: number): Bits {
  const {at: months, p, all} = support;
  const count = months.length;
  let given = 0;
  for (let i = 0; i < count; i++) given += p[i]! * (entropy[months[i]! + lead] ?? 0);
  let own = 0;
  for (const {at, chance, base} of outcomes) {
    let total = base;
    if (at) for (let i = 0; i < at.length; i++) total += (all[at[i]! - lead] ?? 0) * chance[i]!;
    else for (let i = 0; i < count; i++) total += p[i]! * (chance[months[i]! + lead] ?? 0);
    own += surprise(total);
  }
  return bits(Math.max(0, own - given));
}

/** By month of the garment: the chance that a piece is stray; and the distribution of the month that a stray piece is itself from. */
export interface PieceStray {
  readonly away: Float64Array;
  readonly own: Support;
  /** Chance that the piece is stray, over all months. */
  readonly chance: number;
}

/**
 * As `preparedBits`, for a mark on a piece that may be stray: then it shows what the piece's own month would.
 * @accuracy  for outcomes that name single months (codes) the information of the piece that belongs is scaled by its chance
 */
export function strayBits(ready: Prepared, support: Support, lead: number, {away, own, chance: stray}: PieceStray): Bits {
  if (ready.outcomes.some(({at}) => at)) return bits((1 - stray) * preparedBits(ready, support, lead));
  const {at: months, p} = support;
  const mixed = new Float64Array(months.length);
  let information = 0;
  for (const {chance, base} of ready.outcomes) {
    let average = base;
    for (let i = 0; i < own.at.length; i++) average += own.p[i]! * (chance[own.at[i]! + lead] ?? 0);
    let total = 0;
    for (let i = 0; i < months.length; i++) {
      const t = months[i]!;
      mixed[i] = (1 - away[t]!) * (base + (chance[t + lead] ?? 0)) + away[t]! * average;
      total += p[i]! * mixed[i]!;
    }
    if (!(total > 0)) continue;
    for (let i = 0; i < months.length; i++) if (mixed[i]! > 0) information += p[i]! * mixed[i]! * Math.log2(mixed[i]! / total);
  }
  return bits(Math.max(0, information));
}

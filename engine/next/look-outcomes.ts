// What a look could show, how likely each of it is, and the months it would leave: for those who weigh a look by something else than bits.
import {groupsOfLook, type Asked} from "./look.ts";
import type {Group} from "./information.ts";
import type {Outcome} from "../mark/ready-mark.ts";
import {addInto, sum as total} from "../num/vector.ts";

export interface LookOutcome {
  readonly name: string;
  /** All outcomes of a look sum to 1. */
  readonly probability: number;
  /** What is known of the months after seeing it, from the first month of the finding on; sums to 1. */
  readonly months: Float64Array;
}

/** Outcomes less likely than this are told together with others that point to the same twelve months: of a row there are hundreds. */
const leastChance = 1e-3;

/**
 * The outcomes of one of the next looks; empty when there is no such look.
 * Averaged over them, the months are the months of the finding.
 * @accuracy  a mark on a piece that may be stray is taken to say nothing with the chance of that, and what it says otherwise else
 */
export function lookOutcomes(asked: Asked, id: string): LookOutcome[] {
  const look = groupsOfLook(asked, id);
  if (!look) return [];
  const {groups, stray} = look;
  const joints = new Map<string, Float64Array>();
  for (const group of groups) for (const outcome of group.outcomes) addJoint(jointOf(joints, outcome.name, asked.posterior.length), group, outcome);
  const rare = new Map<string, Float64Array>();
  const told: LookOutcome[] = [];
  const tell = (name: string, joint: Float64Array) => {
    const chance = total(joint);
    if (chance > 0) told.push({name, probability: chance, months: settled(joint, chance, asked.posterior, stray)});
  };
  for (const [name, joint] of joints) {
    if (total(joint) >= leastChance) tell(name, joint);
    else addInto(jointOf(rare, `something else ${Math.floor(peakOf(joint) / 12)}`, joint.length), joint);
  }
  for (const joint of rare.values()) tell("something else", joint);
  const all = told.reduce((sum, {probability}) => sum + probability, 0);
  return told.map((one) => ({...one, probability: one.probability / all})).sort((a, b) => b.probability - a.probability);
}

function jointOf(joints: Map<string, Float64Array>, name: string, n: number): Float64Array {
  let joint = joints.get(name);
  if (!joint) joints.set(name, (joint = new Float64Array(n)));
  return joint;
}

function addJoint(into: Float64Array, {joint, offset = 0, lead = 0}: Group, {at, chance, base}: Outcome): void {
  const n = joint.length;
  if (at) {
    for (let i = 0; i < at.length; i++) {
      const t = at[i]! - lead;
      if (t >= 0 && t < n) into[t + offset]! += joint[t]! * chance[i]!;
    }
  }
  for (let t = 0; t < n; t++) into[t + offset]! += joint[t]! * (at ? base : base + (chance[t + lead] ?? 0));
}

const peakOf = (joint: Float64Array) => joint.reduce((most, p, t) => (p > joint[most]! ? t : most), 0);

const settled = (joint: Float64Array, chance: number, before: Float64Array, stray: number) => joint.map((p, t) => (1 - stray) * (p / chance) + stray * before[t]!);

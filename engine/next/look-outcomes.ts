// What a look could show, how likely each of it is, and the months it would leave: for those who weigh a look by something else than bits.
import {groupsOfLook, type Asked} from "./look.ts";
import type {Group} from "./information.ts";
import type {Outcome} from "../mark/ready-mark.ts";
import {sum as total} from "../num/vector.ts";

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
  const n = asked.posterior.length;
  const masses = groups.map(({joint}) => total(joint));
  const chances = new Map<string, {chance: number; peak: number; height: number}>();
  groups.forEach((group, i) => group.outcomes.forEach((outcome) => weigh(chances, group, outcome, masses[i]!)));
  const bucketOf = (name: string) => {
    const {chance, peak} = chances.get(name)!;
    return chance >= leastChance ? name : `${rare} ${Math.floor(peak / 12)}`;
  };
  const joints = new Map<string, Float64Array>();
  for (const group of groups) {
    const bases = new Map<string, number>();
    for (const outcome of group.outcomes) {
      const bucket = bucketOf(outcome.name);
      let joint = joints.get(bucket);
      if (!joint) joints.set(bucket, (joint = new Float64Array(n)));
      addTold(joint, group, outcome);
      if (outcome.base > 0) bases.set(bucket, (bases.get(bucket) ?? 0) + outcome.base);
    }
    for (const [bucket, base] of bases) addBase(joints.get(bucket)!, group, base);
  }
  const told = [...joints].map(([bucket, joint]) => ({bucket, joint, chance: total(joint)})).filter(({chance}) => chance > 0);
  const all = told.reduce((sum, {chance}) => sum + chance, 0);
  return told
    .map(({bucket, joint, chance}) => ({name: bucket.startsWith(rare) ? rare : bucket, probability: chance / all, months: settled(joint, chance, asked.posterior, stray)}))
    .sort((a, b) => b.probability - a.probability);
}

const rare = "something else";

/** How likely an outcome is over all groups, and about where it points, without laying out its months: of a row there are a thousand outcomes. */
function weigh(chances: Map<string, {chance: number; peak: number; height: number}>, {joint, offset = 0, lead = 0}: Group, {name, at, chance, base}: Outcome, mass: number): void {
  const known = chances.get(name) ?? {chance: 0, peak: 0, height: -1};
  known.chance += base * mass;
  for (let i = 0; i < chance.length; i++) {
    const t = (at ? at[i]! : i) - lead;
    if (t < 0 || t >= joint.length) continue;
    const both = joint[t]! * chance[i]!;
    known.chance += both;
    if (both > known.height) [known.height, known.peak] = [both, t + offset];
  }
  chances.set(name, known);
}

function addTold(into: Float64Array, {joint, offset = 0, lead = 0}: Group, {at, chance}: Outcome): void {
  for (let i = 0; i < chance.length; i++) {
    const t = (at ? at[i]! : i) - lead;
    if (t >= 0 && t < joint.length) into[t + offset]! += joint[t]! * chance[i]!;
  }
}

function addBase(into: Float64Array, {joint, offset = 0}: Group, base: number): void {
  for (let t = 0; t < joint.length; t++) into[t + offset]! += joint[t]! * base;
}

const settled = (joint: Float64Array, chance: number, before: Float64Array, stray: number) => joint.map((p, t) => (1 - stray) * (p / chance) + stray * before[t]!);

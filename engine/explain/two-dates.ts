// One date or two? A reproduction copies what shows and betrays itself in what the law or the supply chain put in later.
import type {Scope} from "../infer/factor.ts";
import {factorsOf} from "../infer/factors.ts";
import {findMark, rowsId, type Evidence} from "../infer/evidence.ts";
import type {CaseJoint, Evaluation} from "../infer/evaluate.ts";
import {affine, multiplyInto, normalized, sum} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import {addView} from "../infer/views.ts";
import {probability, type MonthIndex, type Probability} from "../units.ts";

/** Prior chance of a later reproduction, and the least number of months between what it copies and itself. Source: own choice, docs/model.md. */
const prior = 0.03;
export const leastGap = 120;

export interface TwoDates {
  /** Probability that look and substance come from two times. */
  readonly probability: Probability;
  /** If so: when the look dates from and when the garment was made, by month. */
  readonly look: Float64Array;
  readonly made: Float64Array;
  /** Marks that speak for two times: bits in favour when the mark is counted, most first. */
  readonly speaking: readonly {readonly id: string; readonly bits: number; readonly side: "look" | "substance"}[];
}

/** Whether a mark is one that a reproduction copies. Rows are never. */
function copied(evidence: Evidence, id: string): boolean {
  return id !== rowsId && (findMark(evidence.view, id)?.mark["copied look"] ?? false);
}

interface Axis {
  readonly first: MonthIndex;
  readonly n: number;
}

interface Weighed {
  readonly mass: number;
  readonly look: Float64Array;
  readonly made: Float64Array;
}

/** Weighs the hypothesis of two times; null when no mark on one of the sides was seen. */
export function twoDates(evaluations: readonly Evaluation[], first: MonthIndex, n: number): TwoDates | null {
  const ids = [...new Set(evaluations.flatMap(({cases}) => cases.flatMap(({factors}) => factors.flatMap((factor) => factor.ids))))];
  const side = (id: string) => (evaluations.some(({evidence}) => copied(evidence, id)) ? "look" : "substance");
  if (!ids.some((id) => side(id) === "look") || !ids.some((id) => side(id) === "substance")) return null;
  const on = {first, n};
  const all = weigh(evaluations, () => true, on);
  const one = sum(evaluations.map(({joint}) => sum(joint)));
  const share = (two: number, single: number) => (prior * two) / (prior * two + (1 - prior) * single);
  if (!(prior * all.mass + (1 - prior) * one > 0)) return null;
  const p = share(all.mass, one);
  const speaking = p < 0.01 ? [] : ids.map((id) => ({id, side: side(id) as "look" | "substance", bits: gain(evaluations, id, all.mass, one, on)})).filter(({bits}) => bits > 0.1);
  return {probability: probability(p), look: normalized(all.look), made: normalized(all.made), speaking: speaking.sort((a, b) => b.bits - a.bits)};
}

/** Log odds of two times against one, with the mark less without it, in bits. */
function gain(evaluations: readonly Evaluation[], id: string, two: number, one: number, on: Axis): number {
  const keep = (other: string) => other !== id;
  const without = weigh(evaluations, keep, on).mass;
  let single = 0;
  for (const evaluation of evaluations) for (const joint of joints(evaluation, keep)) single += sum(joint);
  return Math.log2(two / one) - Math.log2(without / single);
}

function joints(evaluation: Evaluation, keep: (id: string) => boolean): Float64Array[] {
  return evaluation.cases.map((c) => product(evaluation, c, {keep}, affine(evaluation.evidence.view.prior, c.weight * evaluation.foreign)));
}

function product({evidence, space}: Evaluation, c: CaseJoint, scope: Scope, start: Float64Array): Float64Array {
  for (const {vector} of factorsOf(evidence, space, c.case, scope)) multiplyInto(start, vector);
  return start;
}

/** The mass of "two times": the garment's month by the prior, the look's month by the prior over all months at least ten years earlier. */
function weigh(evaluations: readonly Evaluation[], keep: (id: string) => boolean, {first, n}: Axis): Weighed {
  const look = constant(n, 0);
  const made = constant(n, 0);
  for (const evaluation of evaluations) {
    const {view} = evaluation.evidence;
    const months = view.prior;
    const before = runningSum(months);
    const viewLook = constant(months.length, 0);
    const viewMade = constant(months.length, 0);
    for (const c of evaluation.cases) {
      const looks = product(evaluation, c, {keep: (id) => keep(id) && copied(evaluation.evidence, id)}, months.slice());
      const rest = product(evaluation, c, {keep: (id) => keep(id) && !copied(evaluation.evidence, id)}, affine(months, c.weight * evaluation.foreign));
      addPairs(looks, rest, before, viewLook, viewMade);
    }
    addView(look, first, view, viewLook);
    addView(made, first, view, viewMade);
  }
  return {mass: sum(made), look, made};
}

function runningSum(values: Float64Array): Float64Array {
  const result = new Float64Array(values.length);
  let total = 0;
  for (let i = 0; i < values.length; i++) result[i] = total += values[i]!;
  return result;
}

function addPairs(looks: Float64Array, rest: Float64Array, before: Float64Array, look: Float64Array, made: Float64Array): void {
  const cumulative = runningSum(looks);
  // For each later month the weight of one unit of look mass; summed from the end it gives the look's own distribution.
  let later = 0;
  for (let t = rest.length - 1; t >= leastGap; t--) {
    const earlier = before[t - leastGap]!;
    if (!(earlier > 0)) continue;
    made[t]! += (rest[t]! * cumulative[t - leastGap]!) / earlier;
    later += rest[t]! / earlier;
    look[t - leastGap]! += looks[t - leastGap]! * later;
  }
}

// Joins the factors of every case of one possible maker into the joint chance of month and everything seen.
import {addInto, affine, multiplyInto, sum} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import type {Case} from "../rule/when.ts";
import {casesOf, type CaseSpace, type WeighedCase} from "./cases.ts";
import type {Evidence, Seen} from "./evidence.ts";
import {everything, type Factor, type Scope} from "./factor.ts";
import {factorsOf} from "./factors.ts";

export interface CaseJoint {
  readonly case: Case;
  readonly weight: number;
  readonly factors: readonly Factor[];
  /** Chance of month and everything seen, in this case, the maker's prior and the case's weight included. */
  readonly joint: Float64Array;
}

export interface Evaluation {
  readonly evidence: Evidence;
  readonly space: CaseSpace;
  readonly cases: readonly CaseJoint[];
  /** The sum over cases. */
  readonly joint: Float64Array;
  /** Product of the chances of marks that only another maker's book knows. */
  readonly foreign: number;
}

/** Evaluates what was seen for one possible maker. */
export function evaluate(evidence: Evidence, seen: Seen): Evaluation {
  const space = casesOf(evidence, seen);
  const foreign = evidence.foreign.reduce((product, {chance}) => product * chance, 1);
  const n = evidence.view.prior.length;
  const cases = space.cases.map((c) => caseJoint(evidence, space, c, everything, foreign));
  const joint = constant(n, 0);
  for (const c of cases) addInto(joint, c.joint);
  return {evidence, space, cases, joint, foreign};
}

function caseJoint(evidence: Evidence, space: CaseSpace, c: WeighedCase, scope: Scope, foreign: number): CaseJoint {
  const factors = factorsOf(evidence, space, c.case, scope);
  const joint = affine(evidence.view.prior, c.weight * foreign);
  for (const {vector} of factors) multiplyInto(joint, vector);
  return {case: c.case, weight: c.weight, factors, joint};
}

/** Cases that hold less than this part of a maker's probability do not count where they can only lose by what is asked. */
const lightCase = 1e-9;

/** The cases that hold some probability. */
export function heavyCases({cases, joint}: Evaluation): readonly CaseJoint[] {
  if (cases.length === 1) return cases;
  const total = sum(joint);
  const heavy = cases.filter((c) => sum(c.joint) > total * lightCase);
  return heavy.length > 0 ? heavy : cases;
}

/** The joint by month, case by case, with the marks or pieces of another scope. */
export function rescoped({evidence, space, foreign}: Evaluation, scope: Scope, cases: readonly CaseJoint[]): Float64Array[] {
  return cases.map((c) => {
    const joint = affine(evidence.view.prior, c.weight * foreign);
    for (const {vector} of factorsOf(evidence, space, c.case, scope)) multiplyInto(joint, vector);
    return joint;
  });
}

export const totalOf = (vectors: readonly Float64Array[]): number => sum(vectors.map((vector) => sum(vector)));

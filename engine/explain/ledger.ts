// What each mark contributed: the answer with and without it, and the chance that it does not belong.
import {divergenceBits, normalized, sum} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import {heavyCases, rescoped, totalOf, type CaseJoint, type Evaluation} from "../infer/evaluate.ts";
import {everything, type Scope} from "../infer/factor.ts";
import {cutTo, rowsId} from "../infer/evidence.ts";
import {addView} from "../infer/views.ts";
import {repeatAverage} from "../infer/repeats.ts";
import {pieceRule} from "../infer/pieces.ts";
import {labelId} from "../infer/ready-book.ts";
import {bits, probability, type Bits, type MonthIndex, type Probability} from "../units.ts";

/** One line of the ledger. */
export interface LedgerLine {
  readonly id: string;
  /** How far the answer moves by this mark: divergence of the answer from the answer without it. */
  readonly bits: Bits;
  /** Months by which the mean moves: above 0 towards later. */
  readonly moved: number;
  /** Chance that the mark alone does not belong; null for rows, whose doubt is in their readings. */
  readonly stray: Probability | null;
}

/** A piece that may have come from elsewhere as a whole. */
export interface PieceLine {
  readonly id: string;
  readonly says: string;
  readonly marks: readonly string[];
  readonly stray: Probability;
}

export interface Ledger {
  readonly lines: readonly LedgerLine[];
  readonly pieces: readonly PieceLine[];
}

/** Works out the ledger over all possible makers. */
export function ledgerOf(evaluations: readonly Evaluation[], posterior: Float64Array, first: MonthIndex): Ledger {
  const total = sum(evaluations.map(({joint}) => sum(joint)));
  const ids = new Set(evaluations.flatMap(({cases}) => cases.flatMap(({factors}) => factors.flatMap((factor) => factor.ids))));
  const middle = meanOf(posterior);
  // Marks that rule one another out altogether have no finite divergence; no mark can tell more than which month it is.
  const most = Math.log2(posterior.length);
  const lines = [...ids].map((id): LedgerLine => {
    const scope: Scope = {keep: (other) => other !== id};
    const without = constant(posterior.length, 0);
    let stray = 0;
    for (const evaluation of evaluations) {
      // Without a mark of the hub a case that was ruled out may come back; without another mark it cannot.
      const inHub = evaluation.cases.some(({factors}) => factors.some((factor) => factor.hub && factor.ids.includes(id)));
      const cases = inHub ? evaluation.cases : heavyCases(evaluation);
      const joints = rescoped(evaluation, scope, cases);
      for (const joint of joints) addView(without, first, evaluation.evidence.view, joint);
      stray += strayMass(evaluation, id, joints, cases);
    }
    const q = normalized(without);
    return {id, bits: bits(Math.min(divergenceBits(posterior, q), most)), moved: middle - meanOf(q), stray: id === rowsId || !(total > 0) ? null : probability(Math.min(1, stray / total))};
  });
  return {lines: lines.sort((a, b) => b.bits - a.bits || (a.id < b.id ? -1 : 1)), pieces: pieceLines(evaluations, total)};
}

function meanOf(p: Float64Array): number {
  let mean = 0;
  for (let t = 0; t < p.length; t++) mean += t * p[t]!;
  return mean;
}

/** The joint mass with one mark forced to be stray. Tempered marks are no mixtures; for them the plain ratio is averaged. */
function strayMass(evaluation: Evaluation, id: string, without: readonly Float64Array[], cases: readonly CaseJoint[]): number {
  const {evidence} = evaluation;
  if (id === labelId && evidence.label) return totalOf(rescoped(evaluation, {...everything, misjudged: true}, evaluation.cases));
  const found = evidence.marks.find(({mark}) => mark.id === id);
  if (!found) return evidence.repeats.some(({mark}) => mark.id === id) ? repeatBase(evaluation, id) * totalOf(without) : 0;
  let mass = 0;
  cases.forEach((c, i) => {
    const base = found.mark.strayChance(found.seen, c.case);
    if (found.mark.temper === 1) mass += base * sum(without[i]!);
    else {
      const likelihood = cutTo(evidence.view, found.mark.likelihood(found.seen, c.case), found.mark.axis.from);
      for (let t = 0; t < likelihood.length; t++) if (likelihood[t]! > 0) mass += (c.joint[t]! * base) / likelihood[t]! ** (1 / found.mark.temper);
    }
  });
  return mass;
}

/** The chance of a repeat's text as a stray one: ε times the average over months. */
function repeatBase({evidence}: Evaluation, id: string): number {
  const repeat = evidence.repeats.find(({mark}) => mark.id === id)!;
  const book = evidence.view.own;
  return book?.codes[repeat.mark.mark.of] ? repeat.mark.mark.stray * repeatAverage(book, repeat) : 0;
}

function pieceLines(evaluations: readonly Evaluation[], total: number): PieceLine[] {
  const pieces = new Map<string, {says: string; marks: Set<string>; mass: number}>();
  for (const evaluation of evaluations) {
    for (const id of new Set(evaluation.cases.flatMap(({factors}) => factors.flatMap((factor) => factor.pieces)))) {
      const rule = pieceRule(evaluation.evidence, id);
      if (rule.stray === 0) continue;
      const mass = totalOf(rescoped(evaluation, {...everything, fixed: {piece: id, stray: true}}, evaluation.cases));
      const found = pieces.get(id) ?? {says: rule.says, marks: new Set<string>(), mass: 0};
      for (const mark of marksOn(evaluation, id)) found.marks.add(mark);
      pieces.set(id, {...found, mass: found.mass + mass});
    }
  }
  return [...pieces]
    .map(([id, {says, marks, mass}]) => ({id, says, marks: [...marks], stray: probability(total > 0 ? Math.min(1, mass / total) : 0)}))
    .sort((a, b) => b.stray - a.stray);
}

function marksOn({evidence}: Evaluation, piece: string): string[] {
  const label = evidence.view.own?.label;
  const onIt = [...evidence.marks, ...evidence.repeats].filter(({mark}) => mark.mark.piece === piece).map(({mark}) => mark.id);
  const labelIsIt = label && (label.mark.mark.piece ?? "care-label") === piece;
  if (labelIsIt && evidence.label) onIt.push(labelId);
  if (labelIsIt && evidence.rows.length > 0) onIt.push(rowsId);
  return onIt;
}

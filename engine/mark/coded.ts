// Text whose format carries a date: a contract number with a fiscal year, registration letters, a week code.
import {addInto, affine} from "../num/vector.ts";
import type {CodedMark} from "../rule/schema.ts";
import {holds, type Case} from "../rule/when.ts";
import {characters, type CellWeights} from "../cell/look-alike.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import {matchScheme} from "../scheme/match.ts";
import type {ReadyScheme} from "../scheme/scheme.ts";
import type {SparseMonths, Stated} from "../scheme/stated.ts";
import {constant, outcome, type MarkKind, type Outcome} from "./ready-mark.ts";

/** Shares of schemes by month, and of dates written in an unknown way. */
export interface SchemeShares {
  readonly schemes: ReadonlyMap<ReadyScheme, Float64Array>;
  readonly unknown: Float64Array;
}

/** Shares the months out among the schemes that a case allows. */
export function schemeShares(allowed: readonly ReadyScheme[], other: number, n: number): SchemeShares {
  const total = constant(n, other);
  for (const {weights} of allowed) for (let t = 0; t < n; t++) total[t]! += weights[t]!;
  const divide = (vector: Float64Array) => vector.map((h, t) => (total[t]! > 0 ? h / total[t]! : 0));
  return {schemes: new Map(allowed.map((scheme) => [scheme, divide(scheme.weights)])), unknown: divide(constant(n, other))};
}

/** A way in which a scheme reads a whole text. */
export interface TextReading {
  readonly scheme: ReadyScheme;
  readonly stated: Stated;
  readonly months: SparseMonths;
  readonly chance: number;
}

/** Every way in which the schemes read the whole text and which some month can have printed. */
export function readText(schemes: Iterable<ReadyScheme>, row: PrintedRow): TextReading[] {
  const result: TextReading[] = [];
  for (const scheme of schemes) {
    matchScheme(scheme, row, 0, (until, chance, stated) => {
      if (until !== row.cells.length) return;
      const months = scheme.months(stated);
      if (months.at.length > 0) result.push({scheme, stated, months, chance});
    });
  }
  return result;
}

/** As `schemeShares`, measured against the month with most codes; the rest of a month never carried one. */
function peakShares(allowed: readonly ReadyScheme[], other: number, n: number): SchemeShares & {readonly bare: Float64Array} {
  const total = constant(n, other);
  for (const {weights} of allowed) addInto(total, weights);
  const peak = total.reduce((most, value) => Math.max(most, value), 0);
  const scale = peak > 0 ? 1 / peak : 0;
  return {
    schemes: new Map(allowed.map((scheme) => [scheme, affine(scheme.weights, scale)])),
    unknown: constant(n, other * scale),
    bare: affine(total, -scale, 1),
  };
}

/** Makes a coded mark ready. */
export function codedKind(mark: CodedMark, schemes: readonly ReadyScheme[], n: number): MarkKind {
  const sharesIn = (in_: Case) => peakShares(schemes.filter(({scheme}) => holds(scheme.when, in_)), mark.other, n);
  return {
    chance(seen, in_) {
      const applies = holds(mark.when, in_);
      if (seen.kind === "missing") return applies ? affine(sharesIn(in_).bare, 1 - mark.lost, mark.lost) : constant(n, 1 - mark.elsewhere);
      if (seen.kind !== "coded") return constant(n, 1);
      const anyText = (row: PrintedRow, weight: number) => row.cells.reduce((product, cell) => product * anyCharacter(cell.weights), weight);
      if (!applies) return constant(n, mark.elsewhere * seen.texts.reduce((sum, {row, weight}) => sum + anyText(row, weight), 0));
      const shares = sharesIn(in_);
      const result = new Float64Array(n);
      for (const {row, weight} of seen.texts) {
        const noise = anyText(row, weight);
        for (let t = 0; t < n; t++) result[t]! += noise * shares.unknown[t]!;
        for (const {scheme, months, chance} of readText(shares.schemes.keys(), row)) {
          const share = shares.schemes.get(scheme)!;
          for (let i = 0; i < months.at.length; i++) result[months.at[i]!]! += weight * chance * months.weight[i]! * share[months.at[i]!]!;
        }
      }
      return affine(result, 1 - mark.lost);
    },
    outcomes(in_) {
      if (!holds(mark.when, in_)) return [];
      const shares = sharesIn(in_);
      const kept = (vector: Float64Array) => affine(vector, 1 - mark.lost);
      return [
        ...[...shares.schemes].flatMap(([scheme, share]) => codeOutcomes(scheme, kept(share))),
        outcome("unread", kept(shares.unknown)),
        outcome("none", affine(shares.bare, 1 - mark.lost, mark.lost)),
      ];
    },
    distinguish(into) {
      into.note(mark.when);
      for (const {scheme} of schemes) into.note(scheme.when);
    },
  };
}

/** Chance of a cell when every figure and letter is as likely. */
function anyCharacter(cell: CellWeights): number {
  let total = 0;
  for (const weight of cell.values()) total += weight / characters.length;
  return total;
}

/** The codes a scheme can print, one outcome each, with their chance by month. */
export function codeOutcomes(scheme: ReadyScheme, share: Float64Array): Outcome[] {
  const result: Outcome[] = [];
  const walk = (index: number, stated: Stated, text: string): void => {
    const part = scheme.parts[index];
    if (part === undefined) {
      const months = scheme.months(stated);
      if (months.at.length === 0) return;
      result.push(outcome(text, months.weight.map((w, i) => w * share[months.at[i]!]!), months.at));
    } else if ("free" in part) walk(index + 1, stated, text);
    else for (const {text: more, states} of part) walk(index + 1, {...stated, ...states}, text + more);
  };
  walk(0, {}, "");
  return result;
}

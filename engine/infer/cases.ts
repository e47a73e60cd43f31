// The hidden circumstances of a garment, enumerated: one case for each value that a rule on a seen mark tells apart.
import {anyOther, circumstanceNames, Distinctions, type Case, type CircumstanceName} from "../rule/when.ts";
import type {Evidence, Seen} from "./evidence.ts";
import {labelId} from "./ready-book.ts";

export interface WeighedCase {
  readonly case: Case;
  readonly weight: number;
}

export interface CaseSpace {
  readonly cases: readonly WeighedCase[];
  /** Values told apart, by circumstance; a case's `anyOther` means none of them. */
  readonly apart: Readonly<Record<CircumstanceName, readonly string[]>>;
}

/** Whether the label takes part at all: it was looked at, its rows were, or a rule asks for its kind. */
export function labelMatters(evidence: Evidence, apart: CaseSpace["apart"]): boolean {
  return evidence.label !== null || evidence.rows.length > 0 || apart.label.length > 0;
}

/** Enumerates the cases for a maker; weights sum to 1, save that plants, lots and label kinds are weighed by month in the hub. */
export function casesOf(evidence: Evidence, seen: Seen): CaseSpace {
  const distinctions = new Distinctions();
  for (const {mark} of evidence.marks) distinctions.join(mark.told);
  for (const {mark} of evidence.repeats) distinctions.join(mark.told);
  const own = evidence.view.own;
  if (own?.label && (evidence.label || evidence.rows.length > 0 || distinctions.values("label").length > 0)) distinctions.join(own.label.mark.told);
  const apart = Object.fromEntries(circumstanceNames.map((name) => [name, distinctions.values(name)])) as unknown as CaseSpace["apart"];

  let cases: WeighedCase[] = [{case: {}, weight: 1}];
  for (const name of circumstanceNames) {
    const values = valuesOf(name, apart[name], evidence, seen);
    if (values) cases = cases.flatMap((c) => values.map(([value, weight]) => ({case: {...c.case, [name]: value}, weight: c.weight * weight})));
  }
  return {cases, apart};
}

function valuesOf(name: CircumstanceName, apart: readonly string[], evidence: Evidence, seen: Seen): [string, number][] | null {
  const known = name === "market" ? seen.market : name === "type" ? seen.type : name === "label" ? knownLabel(evidence) : null;
  if (known !== null) return [[known, 1]];
  if (apart.length === 0) return null;
  const each: [string, number][] = [...apart, anyOther].map((value) => [value, 1]);
  if (name === "market") return weighMarkets(marketWeights(evidence), apart);
  if (name === "type") return each.map(([value]) => [value, 1 / each.length]);
  return each;
}

function knownLabel({label}: Evidence): string | null {
  if (label?.kind !== "choice" || label.values.length !== 1) return null;
  return label.values[0]![0];
}

/** Where garments were sold, by the maker's book if it says, else by the public one. */
export function marketWeights({view}: Pick<Evidence, "view">): Readonly<Record<string, number>> {
  const speaks = [view.own, ...view.books].find((book) => book && Object.keys(book.book.markets).length > 0);
  return speaks?.book.markets ?? {};
}

function weighMarkets(weights: Readonly<Record<string, number>>, apart: readonly string[]): [string, number][] {
  const listed = Object.keys(weights).length > 0;
  const named = apart.map((market): [string, number] => [market, listed ? (weights[market] ?? 0) : 1]);
  const rest = Object.entries(weights).reduce((sum, [market, w]) => (apart.includes(market) ? sum : sum + w), 0);
  const all: [string, number][] = [...named, [anyOther, listed ? rest : 1]];
  const total = all.reduce((sum, [, w]) => sum + w, 0);
  return all.filter(([, w]) => w > 0).map(([market, w]) => [market, w / total]);
}

export {labelId};

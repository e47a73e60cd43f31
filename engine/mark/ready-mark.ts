// A mark of a rule book made ready for an axis: its chance by month for whatever can be seen of it.
import {affine, mean} from "../num/vector.ts";
import type {Mark} from "../rule/schema.ts";
import {caseKey, Distinctions, type Case} from "../rule/when.ts";
import type {Span} from "../window/window.ts";
import type {Observation} from "./observation.ts";

/** One thing that could be seen, with its chance by month: for every month, or for the months `at` only, and `base` on top in every month. */
export interface Outcome {
  readonly name: string;
  readonly at: Int32Array | null;
  readonly chance: Float64Array;
  readonly base: number;
}

export const outcome = (name: string, chance: Float64Array, at: Int32Array | null = null, base = 0): Outcome => ({name, at, chance, base});

/** What each kind of mark provides. Vectors run over the axis; chances are P(seen | month, case). */
export interface MarkKind {
  /** Chance by month of what was seen. */
  chance(seen: Observation, in_: Case): Float64Array;
  /** Everything that could be seen, chances adding up to 1 in each month. */
  outcomes(in_: Case): readonly Outcome[];
  /** Notes the circumstances that its rules tell apart. */
  distinguish(into: Distinctions): void;
}

export interface ReadyMark extends MarkKind {
  /** The months its vectors run over. */
  readonly axis: Span;
  readonly id: string;
  readonly book: string;
  readonly mark: Mark;
  readonly temper: number;
  /** The circumstances that its rules tell apart. */
  readonly told: Distinctions;
  /** Chance by month with the mark's own strays counted, tempered: what enters the product. Remembered for plain observations. */
  likelihood(seen: Observation, in_: Case): Float64Array;
  /** The chance by month if stray, ε times the average share; a constant. */
  strayChance(seen: Observation, in_: Case): number;
}

export function readyMark(id: string, book: string, mark: Mark, temper: number, axis: Span, kind: MarkKind): ReadyMark {
  const remembered = new Map<string, Float64Array>();
  const bySeen = new WeakMap<Observation, Map<string, Float64Array>>();
  const compute = (seen: Observation, in_: Case): Float64Array => {
    const chance = kind.chance(seen, in_);
    const mixed = affine(chance, 1 - mark.stray, mark.stray * mean(chance));
    return temper === 1 ? mixed : mixed.map((p) => p ** temper);
  };
  return {
    ...kind,
    axis,
    id,
    book,
    mark,
    temper,
    told: toldBy(kind),
    likelihood(seen, in_) {
      const case_ = caseKey(in_);
      let byCase = bySeen.get(seen);
      if (!byCase) bySeen.set(seen, (byCase = new Map()));
      let found = byCase.get(case_);
      if (found) return found;
      const key = observationKey(seen, case_);
      found = remembered.get(key);
      if (!found) {
        found = compute(seen, in_);
        // Printed texts and numbers are too many to keep all; the newest few hundred serve a batch well enough.
        if (remembered.size >= 256) remembered.delete(remembered.keys().next().value!);
        remembered.set(key, found);
      }
      byCase.set(case_, found);
      return found;
    },
    strayChance: (seen, in_) => mark.stray * mean(kind.chance(seen, in_)),
  };
}

function toldBy(kind: MarkKind): Distinctions {
  const told = new Distinctions();
  kind.distinguish(told);
  return told;
}

function observationKey(seen: Observation, key: string): string {
  switch (seen.kind) {
    case "choice":
      return `${key}|${seen.values.join(";")}`;
    case "presence":
      return `${key}|${seen.present ? "+" : "-"}`;
    case "serial":
      return `${key}|${seen.number}`;
    case "missing":
      return `${key}|0`;
    default:
      return `${key}|${seen.texts.map(({row, weight}) => `${row.text}*${weight}`).join(";")}`;
  }
}

export const constant = (n: number, value: number): Float64Array => new Float64Array(n).fill(value);

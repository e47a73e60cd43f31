// A mark that is one of several exclusive values: overlapping windows share the garments of a month out among them.
import type {ChoiceMark, Labels, Value} from "../rule/schema.ts";
import {caseKey, holds, type Case} from "../rule/when.ts";
import {heights, windowOf, type Span} from "../window/window.ts";
import {constant, outcome, type MarkKind} from "./ready-mark.ts";

export interface Shares {
  readonly values: ReadonlyMap<string, Float64Array>;
  readonly other: Float64Array;
}

/**
 * Shares of values by month: weight times height, divided among all values in use and the unlisted rest.
 * @edge a month with no value in use and no unlisted rest has shares 0
 */
export function sharesOf(values: Readonly<Record<string, Value>>, other: number, axis: Span, in_: Case): Shares {
  const raw = new Map<string, Float64Array>();
  const n = axis.until - axis.from + 1;
  const total = constant(n, other);
  for (const [id, value] of Object.entries(values)) {
    const variant = value.variants.findLast((v) => holds(v.when, in_));
    const weight = variant?.weight ?? value.weight;
    const vector = heights(windowOf(variant?.window ?? value.window), axis, value.outside).map((h) => h * weight);
    raw.set(id, vector);
    for (let t = 0; t < n; t++) total[t]! += vector[t]!;
  }
  const divide = (vector: Float64Array) => vector.map((h, t) => (total[t]! > 0 ? h / total[t]! : 0));
  return {values: new Map([...raw].map(([id, vector]) => [id, divide(vector)])), other: divide(constant(n, other))};
}

/** Makes a choice ready. */
export function choiceKind(mark: ChoiceMark | (Labels & {values: Record<string, Value>}), axis: Span): MarkKind & {shares(in_: Case): Shares} {
  const n = axis.until - axis.from + 1;
  const remembered = new Map<string, Shares>();
  const shares = (in_: Case): Shares => {
    const key = caseKey(in_);
    let found = remembered.get(key);
    if (!found) remembered.set(key, (found = sharesOf(mark.values, mark.other, axis, in_)));
    return found;
  };
  const none = (in_: Case) => {
    const listed = shares(in_).values.get("none");
    return listed ? listed.map((s) => mark.lost + (1 - mark.lost) * s) : constant(n, mark.lost);
  };
  const valueIds = Object.keys(mark.values).filter((id) => id !== "none");
  return {
    shares,
    chance(seen, in_) {
      if (seen.kind !== "choice") return constant(n, 1);
      if (!holds(mark.when, in_)) return constant(n, elsewhere(seen.values, mark.elsewhere));
      const result = new Float64Array(n);
      for (const [id, weight] of seen.values) {
        const vector = id === "none" ? none(in_) : id === "other" ? shares(in_).other : shares(in_).values.get(id);
        if (!vector) continue;
        const kept = id === "none" ? weight : weight * (1 - mark.lost);
        for (let t = 0; t < n; t++) result[t]! += kept * vector[t]!;
      }
      return result;
    },
    outcomes(in_) {
      if (!holds(mark.when, in_)) return [outcome("none", constant(n, 1 - mark.elsewhere)), outcome("any", constant(n, mark.elsewhere))];
      const present = (vector: Float64Array) => vector.map((s) => s * (1 - mark.lost));
      return [
        ...valueIds.map((name) => outcome(name, present(shares(in_).values.get(name)!))),
        outcome("other", present(shares(in_).other)),
        outcome("none", none(in_)),
      ];
    },
    distinguish(into) {
      into.note(mark.when);
      for (const value of Object.values(mark.values)) for (const variant of value.variants) into.note(variant.when);
    },
  };
}

/** Chance on a garment that the rule leaves out: any value at all, or none. */
function elsewhere(values: readonly (readonly [string, number])[], chance: number): number {
  const none = values.find(([id]) => id === "none")?.[1] ?? 0;
  const some = Math.max(0, ...values.filter(([id]) => id !== "none").map(([, weight]) => weight));
  return none * (1 - chance) + some * chance;
}

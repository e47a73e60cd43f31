// What was seen of a mark as values with weights, and the other way round: written no more elaborately than it needs to be.
import type {Garment} from "../../engine/index.ts";

type Seen = Garment["saw"][string] | undefined;
export type Weights = readonly (readonly [value: string, weight: number])[];

/**
 * @example
 * weightsOf(["green", "blue"]) // -> [["green", 1], ["blue", 1]]
 */
export function weightsOf(seen: Seen): Weights {
  if (seen === undefined) return [];
  if (Array.isArray(seen)) return seen.map((value) => [String(value), 1]);
  if (typeof seen === "object") return "either" in seen ? Object.entries(seen.either as Readonly<Record<string, number>>).filter(([, weight]) => weight > 0) : [];
  return [[String(seen), 1]];
}

/** One value as itself, equally likely ones as a list, else with weights in 100. */
export function writtenOf(weights: Weights): Exclude<Seen, undefined> | undefined {
  const [first] = weights;
  if (!first) return undefined;
  if (weights.length === 1) return first[0];
  if (weights.every(([, weight]) => Math.abs(weight - first[1]) < 1e-9)) return weights.map(([value]) => value);
  const whole = weights.reduce((sum, [, weight]) => sum + weight, 0);
  return {either: Object.fromEntries(weights.map(([value, weight]) => [value, Math.max(1, Math.round((weight / whole) * 100))]))};
}

/** The weight that one more value is given: as likely as the others on average. */
export const averageOf = (weights: Weights): number => (weights.length === 0 ? 1 : weights.reduce((sum, [, weight]) => sum + weight, 0) / weights.length);

// Sizes and states for tests, short to write.
import {sizesSchema, stateSchema, type Sizes, type State} from "../../state/model.ts";
import {kindOf} from "../../state/garment-kind.ts";
import {readTagSize} from "../../state/tag-size.ts";

/** @param lengths  typed in inches unless they carry their unit */
export function sizes(lengths: Readonly<Record<string, string>>, tag: string | null = null, type = "trousers"): Sizes {
  return sizesSchema.parse({measures: Object.entries(lengths).map(([point, typed]) => ({point, length: {typed, unit: "in"}})), tag: tag === null ? null : readTagSize(tag, kindOf(type))});
}

export const state = (parts: Readonly<Record<string, unknown>> = {}): State => stateSchema.parse(parts);

/** A pair of trousers whose measures hang together. */
export const straight = {waist: "17", hip: "21", "front-rise": "11 1/4", "back-rise": "15", thigh: "12 1/2", knee: "9 1/4", hem: "8 1/4", inseam: "32", outseam: "42 1/2"};

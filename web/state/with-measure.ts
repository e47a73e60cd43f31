// Changes of the measured part of a garment's content, as small pure steps.
import {sizesSchema, stateSchema, type Sizes, type State, type TypedLength} from "../../state/model.ts";
import type {Content} from "../../store/model.ts";

export const sizesOf = ({sizes}: Pick<Content, "sizes">): Sizes => sizes ?? sizesSchema.parse({});
export const stateOf = ({state}: Pick<Content, "state">): State => state ?? stateSchema.parse({});

/** Nothing measured is null again, so that a garment nobody measured stays as it was. */
export function withSizes(content: Content, sizes: Sizes): Content {
  return {...content, sizes: sizes.measures.length === 0 && !sizes.tag && !sizes.cloth ? null : sizes};
}

/** The state as it was changed; once looked at it stays looked at. */
export const withState = (content: Content, part: Partial<State>): Content => ({...content, state: {...stateOf(content), ...part}});

/** A length put at a point, in the order in which points are laid; empty text takes it out. */
export function withMeasure(sizes: Sizes, point: string, typed: string, unit: TypedLength["unit"]): Sizes {
  const text = typed.slice(0, 20);
  if (text.trim() === "") return {...sizes, measures: sizes.measures.filter((one) => one.point !== point)};
  const measure = {point, length: {typed: text, unit}};
  return {...sizes, measures: sizes.measures.some((one) => one.point === point) ? sizes.measures.map((one) => (one.point === point ? measure : one)) : [...sizes.measures, measure]};
}

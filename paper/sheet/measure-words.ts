// Measurements as they are told to a buyer: as typed, with the other unit behind, and all round where it was laid flat.
import {sayCloth} from "../../state/cloth.ts";
import {kindOf} from "../../state/garment-kind.ts";
import {readLength, sayMm} from "../../state/length.ts";
import type {Sizes, TypedLength} from "../../state/model.ts";
import {measuredOf, pointOf} from "../../state/point.ts";
import type {Entry} from "./sheet.ts";

export type Units = "both" | "inches" | "centimetres";

/** Every measurement, then the size on the tag and the weight of the cloth. */
export function measureEntries(type: string | undefined, sizes: Sizes | null, units: Units = "both"): Entry[] {
  if (!sizes) return [];
  const kind = kindOf(type);
  const known = measuredOf(kind, sizes);
  const points = known.map(({point, measure, whole}): Entry => ({
    name: point.flat ? `${point.name}, laid flat` : point.name,
    text: `${sayLength(measure.length, units)}${point.flat ? `; all round ${units === "centimetres" ? sayMm(whole.mm, "cm") : sayMm(whole.mm, units === "inches" ? "in" : whole.unit)}` : ""}`,
  }));
  const others = sizes.measures.filter(({point}) => !pointOf(kind, point)).map(({point, length}) => ({name: point.replaceAll("-", " "), text: sayLength(length, units)}));
  return [...points, ...others, ...(sizes.tag ? [{name: "size on its tag", text: sizes.tag.text}] : [])];
}

export const clothEntry = (sizes: Sizes | null): Entry[] => (sizes?.cloth ? [{name: "weight of the cloth", text: sayCloth(sizes.cloth)}] : []);

/**
 * @example
 * sayLength({typed: "31 1/2", unit: "in"}, "both") // -> "31 1/2 in (80 cm)"
 */
export function sayLength(given: TypedLength, units: Units): string {
  const length = readLength(given);
  if (!length) return `${given.typed} ${given.unit}`;
  const typed = /[a-z"″”]/i.test(given.typed) ? given.typed : `${given.typed} ${length.unit}`;
  const other = sayMm(length.mm, length.unit === "in" ? "cm" : "in");
  if (units === "both") return `${typed} (${other})`;
  return (units === "inches") === (length.unit === "in") ? typed : other;
}

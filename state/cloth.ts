// Weight of cloth between the two units it is sold by.
import type {Sizes} from "./model.ts";

export type ClothWeight = NonNullable<Sizes["cloth"]>;

/** Grams to the ounce and metres to the yard, exact. Source: international yard and pound agreement of 1959; NIST SP 811 appendix B. */
const ounceGrams = 28.349523125;
const yardMetres = 0.9144;
const factor = ounceGrams / yardMetres ** 2;

/**
 * The same weight in the other unit.
 * @example
 * Math.round(otherWeight({weight: 14, unit: "oz/yd2"}).weight) // -> 475
 */
export function otherWeight({weight, unit}: ClothWeight): ClothWeight {
  return unit === "oz/yd2" ? {weight: weight * factor, unit: "g/m2"} : {weight: weight / factor, unit: "oz/yd2"};
}

/** As it would be said: "14 oz/yd² (475 g/m²)", ounces to the quarter, grams whole. */
export function sayCloth(cloth: ClothWeight): string {
  const other = otherWeight(cloth);
  return `${cloth.weight} ${signs[cloth.unit]} (${other.unit === "g/m2" ? Math.round(other.weight) : Math.round(other.weight * 4) / 4} ${signs[other.unit]})`;
}

const signs = {"oz/yd2": "oz/yd²", "g/m2": "g/m²"} as const;

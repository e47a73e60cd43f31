// Which place of a garment a spot on its drawing is: the nearest of the named ones.
import type {GarmentKind} from "./garment-kind.ts";
import type {Flaw} from "./model.ts";
import {placeTable} from "./place-table.ts";

/** A panel of the drawing, one side of the garment; spots are parts of it. */
export const panel = {width: 170, height: 380} as const;

/** Every named place of a side. */
export function placesOf(kind: GarmentKind, side: Flaw["side"]): string[] {
  return placeTable[kind].filter((one) => one.sides.includes(side)).flatMap(({name, pair}) => (pair ? [`left ${name}`, `right ${name}`] : [name]));
}

/**
 * The place nearest to a spot. Left and right are the wearer's.
 * @param x  part of the panel's width, from its left edge
 * @param y  part of the panel's height, from its top
 * @example
 * placeAt("trousers", "front", 0.7, 0.66) // -> "left knee"
 */
export function placeAt(kind: GarmentKind, side: Flaw["side"], x: number, y: number): string {
  const [px, py] = [x * panel.width, y * panel.height];
  const middle = side === "back" ? 86 : 84;
  const spots = placeTable[kind]
    .filter(({sides}) => sides.includes(side))
    .flatMap((one) => (one.pair ? [{...one, name: `${side === "back" ? "right" : "left"} ${one.name}`}, {...one, name: `${side === "back" ? "left" : "right"} ${one.name}`, x: -one.x}] : [one]));
  const far = (spot: {readonly x: number; readonly y: number}) => Math.hypot(middle + spot.x - px, spot.y - py);
  return spots.reduce((best, spot) => (far(spot) < far(best) ? spot : best)).name;
}

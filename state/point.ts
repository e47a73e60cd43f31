// Points of measure: where a tape is laid on a garment that lies flat, and what it is called.
import type {GarmentKind} from "./garment-kind.ts";
import {doubled, readLength, type Length} from "./length.ts";
import type {Measure, Sizes} from "./model.ts";
import type {Point} from "./point-shape.ts";
import {pointTable} from "./point-table.ts";

/** The points of a kind of garment, in the order in which a tape is laid. */
export const pointsOf = (kind: GarmentKind): readonly Point[] => pointTable[kind];

export const pointOf = (kind: GarmentKind, id: string): Point | undefined => pointTable[kind].find((point) => point.id === id);

export interface Measured {
  readonly point: Point;
  readonly measure: Measure;
  /** As laid. */
  readonly length: Length;
  /** All round where it was laid flat, as laid otherwise. */
  readonly whole: Length;
  /** How far `length` may be off, in millimetres: half of what was typed last, and the hand. */
  readonly errorMm: number;
}

/** Every point of this kind that has a length which can be read. */
export function measuredOf(kind: GarmentKind, {measures}: Pick<Sizes, "measures">): Measured[] {
  return pointsOf(kind).flatMap((point) => {
    const measure = measures.find((one) => one.point === point.id);
    const length = measure && readLength(measure.length);
    return length ? [{point, measure: measure!, length, whole: point.flat ? doubled(length) : length, errorMm: length.stepMm / 2 + point.handMm}] : [];
  });
}

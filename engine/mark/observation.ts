// What was seen of one mark, in the engine's own terms.
import type {PrintedRow} from "../cell/printed-row.ts";

/** A printed text that may be one of several, with weights; the largest weight is 1. */
export interface SeenText {
  readonly row: PrintedRow;
  readonly weight: number;
}

export type Observation =
  /** One of these values, the largest weight 1; "other" is a value the book does not list, "none" is nothing there. */
  | {readonly kind: "choice"; readonly values: readonly (readonly [string, number])[]}
  | {readonly kind: "presence"; readonly present: boolean}
  | {readonly kind: "serial"; readonly number: number}
  | {readonly kind: "coded"; readonly texts: readonly SeenText[]}
  | {readonly kind: "repeat"; readonly texts: readonly SeenText[]}
  /** Looked, and there is none: for marks that are numbers or texts. */
  | {readonly kind: "missing"};

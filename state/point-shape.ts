// What a point of measure is, and the measures of a body that some are worn over.

/** Measures of a body, by the names of ISO 8559-1, which took the place of EN 13402-1 and -2. Wordings of the terms are from memory. */
export const bodyNames = {
  chest: "chest girth", waist: "waist girth", hip: "hip girth", "inside-leg": "inside leg length", "outside-leg": "outside leg length", thigh: "thigh girth", neck: "neck girth", shoulder: "shoulder width", arm: "arm length",
} as const;
export type BodyMeasure = keyof typeof bodyNames;

export interface Point {
  readonly id: string;
  /** As the trade says it. */
  readonly name: string;
  /** Other words of the trade for it. */
  readonly also: readonly string[];
  /** How the tape is laid. */
  readonly how: string;
  /** Laid flat on both layers: twice the length is the girth. */
  readonly flat: boolean;
  /** The measure of the body that it is worn over. */
  readonly body: BodyMeasure | null;
  /** Usual lengths in millimetres as measured, of adults' garments; common practice, no source. */
  readonly usual: readonly [low: number, high: number];
  /** How far two careful people differ, in millimetres; common practice, no source. */
  readonly handMm: number;
}

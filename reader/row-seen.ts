// A row of a label as the engine takes it: whole readings with their weights, spacings told apart.
import type {ReadRow, SettledRow} from "./model.ts";
import {settle} from "./settle.ts";

/** Where on the label a row stands, as the engine names it. */
export type RowSide = "face" | "back" | "top edge" | "left edge" | "right edge" | "bottom edge";

/** The form of a garment's row that is whole readings with weights. */
export interface SeenReadings {
  readings: {text: string; weight: number}[];
  /** Chance that none of them is right. */
  none: number;
  at?: RowSide;
}

/** A row as the owner typed it. */
export interface SeenText {
  text: string;
  at?: RowSide;
}

/**
 * The row for the engine, after what the owner settled.
 * @returns null for a row that the owner left out, and for one in which nothing is read at all; a row that the owner typed comes as typed, with its ? and choices
 * @example
 * rowSeen({best: "0384", strings: [{text: "0384", p: 0.9}], none: 0.1, places: [...], quad}, null) // -> {readings: [{text: "0384", weight: 0.9}], none: 0.1}
 */
export function rowSeen(row: ReadRow, settled: SettledRow | null, at?: RowSide): SeenReadings | SeenText | null {
  const side = at === undefined ? {} : {at};
  if (settled?.left) return null;
  if (settled?.text != null) return settled.text.trim() === "" ? null : {text: settled.text, ...side};
  const now = settle(row, settled);
  const readings = now.strings.filter(({text, p}) => text.trim() !== "" && p > 0).map(({text, p}) => ({text, weight: p}));
  if (readings.length === 0) return null;
  const blank = now.strings.reduce((sum, {text, p}) => (text.trim() === "" ? sum + p : sum), 0);
  return {readings, none: Math.min(1, now.none + blank), ...side};
}

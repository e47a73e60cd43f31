// Readings whose truth the owner has settled: what the reader itself said, and what stands there.
import {noMap, unmapRow} from "../../../reader/map.ts";
import type {LabelReading, ReadRow} from "../../../reader/model.ts";
import {settle} from "../../../reader/settle.ts";

export interface Confirmed {
  /** As the recogniser itself says, any reading map taken back. */
  readonly row: ReadRow;
  /** What stands there, spaces told apart. */
  readonly truth: string;
}

/**
 * Rows of some readings that were settled, in part or as a whole.
 * @edge  rows that were left out are no rows of the label, and a row in which the owner typed doubt is no truth
 */
export function confirmedRows(readings: readonly Pick<LabelReading, "rows" | "map">[]): Confirmed[] {
  return readings.flatMap(({rows, map = noMap}) => rows.flatMap(({read, settled}): Confirmed[] => {
    if (!settled || settled.left || (settled.text === null && Object.keys(settled.places).length === 0) || read.strings.length === 0) return [];
    const truth = (settled.text ?? settle(read, settled).best).toUpperCase().trim().replace(/\s+/g, " ");
    return truth === "" || /[?()]/.test(truth) ? [] : [{row: unmapRow(read, map), truth}];
  }));
}

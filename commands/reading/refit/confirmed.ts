// Readings whose truth the owner has settled: what the reader itself said, and what stands there.
import type {KnownRow} from "../../../reader/fit-map.ts";
import {noMap, unmapRow} from "../../../reader/map.ts";
import type {LabelReading} from "../../../reader/model.ts";
import {settle} from "../../../reader/settle.ts";

/**
 * Rows of some readings that were settled, in part or as a whole.
 * @edge  rows that were left out are no rows of the label, and a row in which the owner typed doubt is no truth
 */
export function confirmedRows(readings: readonly Pick<LabelReading, "rows" | "map">[]): KnownRow[] {
  return readings.flatMap(({rows, map = noMap}) => rows.flatMap(({read, settled}): KnownRow[] => {
    if (!settled || settled.left || (settled.text === null && Object.keys(settled.places).length === 0) || read.strings.length === 0) return [];
    const truth = (settled.text ?? settle(read, settled).best).toUpperCase().trim().replace(/\s+/g, " ");
    return truth === "" || /[?()]/.test(truth) ? [] : [{row: unmapRow(read, map), truth}];
  }));
}

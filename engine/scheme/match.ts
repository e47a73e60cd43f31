// Reads a code scheme off the cells of a row: every way it fits, with its chance and what it would state.
import {boundaryChance, insideField, listedSeparator} from "../cell/boundary.ts";
import {noiseOf} from "../cell/noise.ts";
import {isSeparator, type PrintedRow, type Separator} from "../cell/printed-row.ts";
import type {ReadyScheme} from "./scheme.ts";
import type {Stated} from "./stated.ts";

/** One way a scheme fits: cells up to `until` (not included), the chance of seeing them, what they state. */
export type Emit = (until: number, chance: number, stated: Stated) => void;

/** Characters weighed at less than this part of a cell's likeliest one are not tried: a reader's full table has a long tail of them. */
const least = 1e-5;

/**
 * Every way in which the scheme's parts fit the row from cell `from` on.
 * A part may fit several texts when cells are doubtful; look-alikes of typed characters are tried too.
 * The chance is that of the cells given what the code states, all separators within the code included.
 */
export function matchScheme(scheme: ReadyScheme, row: PrintedRow, from: number, emit: Emit): void {
  const place = (at: number, pending: Separator): number =>
    at === from ? 1 : boundaryChance(row.boundaries[at - 1]!, pending === "" ? insideField : listedSeparator(pending));

  const walk = (index: number, at: number, pending: Separator, chance: number, stated: Stated): void => {
    const part = scheme.parts[index];
    if (part === undefined) {
      if (at > from) emit(at, chance, stated);
      return;
    }
    if ("free" in part) {
      const share = 1 / (part.until - part.from + 1);
      let c = chance * share;
      let gap = pending;
      for (let width = 0; width <= part.until; width++) {
        if (width >= part.from) walk(index + 1, at + width, gap, c, stated);
        const cell = row.cells[at + width];
        if (!cell || width === part.until) break;
        c *= place(at + width, gap) * (part.free === "digits" ? noiseOf(cell.weights).digit : noiseOf(cell.weights).letter);
        gap = "";
        if (c === 0) break;
      }
      return;
    }
    candidates: for (const {text, states} of part) {
      let c = chance;
      let position = at;
      let gap = pending;
      for (const sign of text) {
        if (isSeparator(sign)) {
          gap = sign;
          continue;
        }
        const cell = row.cells[position];
        const weight = cell?.weights.get(sign) ?? 0;
        if (!cell || weight <= cell.top * least) continue candidates;
        c *= weight * place(position, gap);
        gap = "";
        position++;
      }
      walk(index + 1, position, gap, c, {...stated, ...states});
    }
  };
  walk(0, from, "", 1, {});
}

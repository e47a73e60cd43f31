// A whole label of a garment with the reading of every row bracketed under its characters.
import type {Finding} from "../../engine/index.ts";
import {colours} from "../../rulebooks/svg.ts";
import {margin, sheet, stitches, top, words} from "./sheet.ts";
import {cloths, printedRow, rowWidth, slipParts} from "./slip.ts";

const rowTall = 76;

/**
 * Draws the likeliest reading of every row.
 * @param notes  what to say beside each row
 */
export function labelSlip(finding: Finding, {title, how, notes, width = 720}: {title: string; how: string; notes: readonly string[]; width?: number}): string {
  const rows = finding.rows.map((row) => slipParts(row, row.readings[0]!));
  const inside = Math.max(...rows.map(rowWidth));
  const slipWidth = inside + 64;
  const height = rows.length * rowTall + 28;
  return sheet({title, how, width, height: top + height + 24}, [
    cloths(margin, top, slipWidth, height),
    ...rows.map((parts, i) => printedRow(parts, margin + 32, top + 50 + i * rowTall)),
    ...notes.flatMap((note, i) => {
      const y = top + 50 + i * rowTall;
      return note.split("\n").map((one, j) => words(margin + slipWidth + 74, y - 6 + j * 17, one, {size: 12.5, fill: j === 0 ? colours.ink : colours.quiet})).concat(stitches(`M${margin + slipWidth + 12} ${y - 10}h50`));
    }),
  ]);
}

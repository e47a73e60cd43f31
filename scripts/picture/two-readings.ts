// One row of evenly spaced figures and its two readings, weighed without the button and with either stamp: why one more look settles it.
import {sayMonth, sayOdds, type Finding} from "../../engine/index.ts";
import {colours, element} from "../../rulebooks/svg.ts";
import {margin, sheet, top, words} from "./sheet.ts";
import {cloths, printedRow, rowWidth, slipParts} from "./slip.ts";

export interface Weighed {
  /** What was known beside the row. */
  readonly heading: string;
  readonly finding: Finding;
}

/**
 * Draws the two likeliest readings of one row, each with a bar for every case.
 * @param row  which of the garment's rows
 */
export function twoReadings(cases: readonly Weighed[], row: number, {title, how, width = 860}: {title: string; how: string; width?: number}): string {
  const first = cases[0]!.finding.rows[row]!;
  const readings = first.readings.slice(0, 2);
  const parts = slipParts(first, readings[0]!);
  const slipWidth = rowWidth(parts) + 60;
  const from = margin + slipWidth + 36;
  const each = (width - margin - from + 36) / cases.length;
  const columns = cases.map((_, i) => from + i * each);
  const barRoom = each - 36;
  const rowTall = 104;
  return sheet({title, how, width, height: top + 34 + readings.length * rowTall + 8}, [
    ...cases.map(({heading}, i) => words(columns[i]!, top + 12, heading, {size: 12.5, weight: "bold"})),
    ...readings.flatMap((reading, k) => {
      const y = top + 30 + k * rowTall;
      return [
        cloths(margin, y, slipWidth, rowTall - 16),
        printedRow(slipParts(first, reading), margin + 30, y + 45),
        ...cases.flatMap(({finding}, i) => {
          const same = finding.rows[row]!.readings.find(({brackets}) => JSON.stringify(brackets) === JSON.stringify(reading.brackets));
          const chance = same?.probability ?? 0;
          const x = columns[i]!;
          const middle = y + rowTall / 2 - 8;
          return [
            element("rect", {x, y: middle - 8, width: barRoom, height: 10, fill: colours.band}),
            chance < 0.005 ? "" : element("rect", {x, y: middle - 8, width: barRoom * chance, height: 10, fill: colours.ink}),
            words(x, middle + 20, sayOdds(chance), {size: 12}),
            words(x, middle - 16, sayMonth(reading.months[0]!), {size: 11.5, fill: colours.quiet}),
          ];
        }),
      ];
    }),
  ]);
}

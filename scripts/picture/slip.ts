// A label as printed, with its reading bracketed under the characters.
import {rowParts, type RowPart} from "../../commands/show-rows.ts";
import type {Reading, RowReadings} from "../../engine/index.ts";
import {colours, element, textElement} from "../../rulebooks/svg.ts";
import {line, stitches, words} from "./sheet.ts";

const advance = 19;
const size = 24;
const cloth = "#fdfbf4";

/** A part of a row as it is laid out: which of its characters follow a gap inside the part. */
export interface SlipPart extends RowPart {
  readonly gaps: readonly boolean[];
}

/** Cuts a row into the fields of a reading, with the gaps as printed. */
export function slipParts(row: RowReadings, reading: Reading): SlipPart[] {
  let at = 0;
  return rowParts(reading).map((part) => {
    const gaps = part.characters.map((_, i) => i > 0 && (row.row.boundaries[at + i - 1]?.[0] ?? 1) < 0.5);
    at += part.characters.length;
    return {...part, gaps};
  });
}

const gap = advance * 0.9;
const before = ({before: sign}: RowPart, first: boolean) => (first ? 0 : sign.trim() === "" ? (sign === "" ? 0 : gap) : advance * 1.25);

/** Width of a row without drawing it. */
export const rowWidth = (parts: readonly SlipPart[]): number =>
  parts.reduce((sum, part, i) => sum + part.characters.length * advance + part.gaps.filter((yes) => yes).length * gap + before(part, i === 0), 0);

/** One row: characters, brackets, names; y is the line that the characters stand on. */
export function printedRow(parts: readonly SlipPart[], x: number, y: number): string {
  let at = x;
  const markup: string[] = [];
  parts.forEach((part, i) => {
    const sign = part.before.trim();
    if (i > 0 && sign !== "") markup.push(glyph(sign, at + 2, y));
    at += before(part, i === 0);
    const from = at;
    part.characters.forEach(({shown, doubtful}, k) => {
      if (part.gaps[k]) at += gap;
      markup.push(glyph(shown[0]!, at, y, doubtful ? colours.accent : colours.ink));
      if (doubtful && shown.length > 1) markup.push(words(at + advance / 2, y - 24, shown.split("/").join(" "), {size: 10, anchor: "middle", fill: colours.accent}));
      at += advance;
    });
    if (part.field !== null) markup.push(bracket(from + 2, at - 2, y + 8, part.field));
  });
  return markup.join("");
}

const glyph = (sign: string, x: number, y: number, fill: string = colours.ink) =>
  textElement({x: x + advance / 2, y, "font-size": size, "font-family": "monospace", "text-anchor": "middle", fill}, sign);

/** A bracket from x to x2 with a name below it. */
export function bracket(from: number, until: number, y: number, name: string, colour: string = colours.accent): string {
  const middle = (from + until) / 2;
  return line(`M${from} ${y}v4H${until}v-4M${middle} ${y + 4}v5`, colour, 1.3) + words(middle, y + 22, name, {size: 11.5, anchor: "middle"});
}

/** The cloth of a label with its stitching round the edge. */
export function cloths(x: number, y: number, width: number, height: number): string {
  return element("rect", {x, y, width, height, rx: 3, fill: cloth, stroke: colours.line}) + stitches(`M${x + 7} ${y + 7}h${width - 14}v${height - 14}h${14 - width}z`);
}

// A printed row with its reading bracketed under the characters, as on a label slip.
import type {RowPart} from "../../commands/show-rows.ts";
import {centred, columnsOf} from "./wrap.ts";

interface Block {
  readonly lines: readonly [characters: string, bracket: string, name: string];
  readonly width: number;
}

/**
 * Draws a row: characters, brackets, names of the fields.
 * @param width  columns; a long row goes on below
 * @returns      three lines for each stretch that fits
 * @example
 * rowPicture(parts, 80)
 * // -> "3 (8)   2 1 ", "└─┬─┘   └┬┘", "date   plant"
 */
export function rowPicture(parts: readonly RowPart[], width: number): string[] {
  const stretches: Block[][] = [[]];
  let used = 0;
  parts.forEach((part, i) => {
    const block = blockOf(part);
    const gap = i === 0 ? [] : [gapOf(part.before)];
    const room = block.width + (gap[0]?.width ?? 0);
    if (used > 0 && used + room > width) {
      stretches.push([block]);
      used = block.width;
    } else {
      stretches.at(-1)!.push(...gap, block);
      used += room;
    }
  });
  return stretches.flatMap((blocks) => ([0, 1, 2] as const).map((line) => blocks.map(({lines}) => lines[line]).join("").trimEnd()).filter((line) => line !== ""));
}

function blockOf({field, characters}: RowPart): Block {
  const text = characters.map(({shown, doubtful}) => (doubtful && shown !== "?" ? `(${shown[0]})` : shown)).join(" ");
  const name = field ?? "";
  const width = Math.max(columnsOf(text), columnsOf(name));
  return {lines: [centred(text, width), centred(field === null ? "" : bracket(columnsOf(text)), width), centred(name, width)], width};
}

const gapOf = (separator: string): Block => {
  const text = separator.trim() === "" ? "   " : ` ${separator} `;
  return {lines: [text, "   ", "   "], width: 3};
};

function bracket(width: number): string {
  if (width === 1) return "│";
  if (width === 2) return "└┘";
  const left = Math.floor((width - 1) / 2);
  return `└${"─".repeat(left - 1)}┬${"─".repeat(width - left - 2)}┘`;
}

/** The doubtful characters in words: what each of them may be. */
export function sayDoubts(parts: readonly RowPart[]): string[] {
  return parts.flatMap(({characters}) =>
    characters.flatMap(({shown, doubtful}) => (doubtful && shown !== "?" ? [`(${shown[0]}) may be ${shown.split("/").join(", ").replace(/, ([^,]*)$/, " or $1")}`] : [])),
  );
}

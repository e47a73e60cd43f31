// Text cut into runs of one font file each, measured, and broken into lines.
import {cutFor, type Cut, type Face} from "./faces.ts";

export interface Run {
  readonly cut: Cut;
  readonly text: string;
}

/** What stands for a letter that no face has, so that nobody takes it for nothing. */
const unknownLetter = "?";

/** Letters that take no room, or have another that looks the same. */
const plain: Readonly<Record<string, string>> = {"\t": " ", "\u00a0": " ", "\u2009": " ", "\u202f": " ", "\u200b": "", "\ufeff": "", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "→": "to", "≥": "at least ", "≤": "at most "};

interface Letter {
  readonly cut: Cut;
  readonly text: string;
  /** In thousandths of the type size. */
  readonly width: number;
}

const known = new Map<string, readonly Letter[]>();

/** A sign as it is printed: none, itself, or the signs that stand for it. */
function lettersOf(face: Face, sign: string): readonly Letter[] {
  const key = `${face} ${sign}`;
  let letters = known.get(key);
  if (!letters) {
    letters = [...(plain[sign] ?? sign)].map((one) => {
      const cut = cutFor(face, one.codePointAt(0)!);
      if (!cut) return lettersOf(face, unknownLetter)[0]!;
      return {cut, text: one, width: (cut.font.glyphForCodePoint(one.codePointAt(0)!).advanceWidth / cut.font.unitsPerEm) * 1000};
    });
    if (known.size > 20_000) known.clear();
    known.set(key, letters);
  }
  return letters;
}

const letters = (face: Face, text: string): Letter[] => [...text.normalize("NFC").replace(/\p{Cc}/gu, " ")].flatMap((sign) => lettersOf(face, sign));

/** The runs of a text. */
export function runsOf(face: Face, text: string): Run[] {
  const runs: {cut: Cut; text: string}[] = [];
  for (const {cut, text: one} of letters(face, text)) {
    const last = runs.at(-1);
    if (last && (last.cut === cut || (one === " " && last.cut.font.hasGlyphForCodePoint(32)))) last.text += one;
    else runs.push({cut, text: one});
  }
  return runs;
}

/** How wide a text is printed, in the unit of the size; without kerning, which only makes it narrower. */
export const widthOf = (face: Face, text: string, size: number): number => (thousandths(face, text) * size) / 1000;

const measured = new Map<string, number>();

/** Words come again and again, on one paper and on the next. */
function thousandths(face: Face, text: string): number {
  const key = `${face} ${text}`;
  let width = measured.get(key);
  if (width === undefined) {
    width = letters(face, text).reduce((sum, letter) => sum + letter.width, 0);
    if (measured.size > 20_000) measured.clear();
    measured.set(key, width);
  }
  return width;
}

/** How many signs of a text no face can print. */
export const unprintable = (text: string): number => [...text.normalize("NFC")].filter((sign) => !/\p{Cc}/u.test(sign) && plain[sign] === undefined && !cutFor("sans", sign.codePointAt(0)!)).length;

/** A text broken into lines no wider than this; line ends in the text stay, and a word that is wider than a line is cut. */
export function linesOf(face: Face, text: string, size: number, width: number): string[] {
  return text.split("\n").flatMap((paragraph) => {
    const lines: string[] = [];
    const blank = widthOf(face, " ", size);
    let [line, taken] = ["", 0];
    for (const word of paragraph.split(/ +/).flatMap((one) => cutWord(face, one, size, width))) {
      const wide = widthOf(face, word, size);
      if (line !== "" && taken + blank + wide > width) {
        lines.push(line);
        [line, taken] = [word, wide];
      } else [line, taken] = line === "" ? [word, wide] : [`${line} ${word}`, taken + blank + wide];
    }
    return [...lines, line];
  });
}

function cutWord(face: Face, word: string, size: number, width: number): string[] {
  if (widthOf(face, word, size) <= width) return [word];
  const pieces: string[] = [];
  let piece = "";
  for (const sign of word) {
    if (piece !== "" && widthOf(face, piece + sign, size) > width) {
      pieces.push(piece);
      piece = "";
    }
    piece += sign;
  }
  return [...pieces, piece];
}

/** A text cut with an ellipsis so that it fits. */
export function fitted(face: Face, text: string, size: number, width: number): string {
  if (widthOf(face, text, size) <= width) return text;
  const signs = [...text];
  while (signs.length > 1 && widthOf(face, `${signs.join("").trimEnd()}…`, size) > width) signs.pop();
  return `${signs.join("").trimEnd()}…`;
}

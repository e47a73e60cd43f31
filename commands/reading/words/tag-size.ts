// The size that a label prints: waist and length in inches, a chest, a letter size; a suggestion for the sizes of the garment.
import {plainLetters} from "./find-phrase.ts";

/** A size as printed, with what it says in inches as far as it does. */
export interface TagSize {
  readonly text: string;
  readonly waist: number | null;
  readonly inseam: number | null;
  readonly chest: number | null;
  readonly neck: number | null;
  readonly row: number;
}

const none = {waist: null, inseam: null, chest: null, neck: null};
const two = "([2-6][0-9])";

/** Sizes in some rows, the plainest first. Waists of 20 to 66 inches and lengths of 20 to 40 are taken. Source: own choice. */
export function findSizes(rows: readonly string[]): TagSize[] {
  return rows.flatMap((given, row): TagSize[] => {
    const text = plainLetters(given).trim();
    const pair = new RegExp(`(?:^|[^0-9A-Z])(?:W\\.?\\s?)${two}\\s?(?:X\\s?)?L\\.?\\s?${two}(?!\\d)`).exec(text) ?? new RegExp(`(?:^|[^0-9])(?:SIZE\\s?)?${two}\\s?X\\s?${two}(?!\\d)`).exec(text) ?? new RegExp(`WAIST\\s?${two}.*(?:INSEAM|LENGTH)\\s?${two}`).exec(text);
    if (pair) {
      const [waist, inseam] = [Number(pair[1]), Number(pair[2])];
      return inseam <= 40 ? [{...none, text: pair[0].trim(), waist, inseam, row}] : [];
    }
    const neck = /(?:^|[^0-9])(1[3-9])(\s?1\/2)?\s?-\s?(3[0-8])(?!\d)/.exec(text);
    if (neck && /NECK|SLEEVE|SIZE/.test(text)) return [{...none, text: neck[0].trim(), neck: Number(neck[1]) + (neck[2] ? 0.5 : 0), row}];
    const chest = new RegExp(`(?:CHEST|SIZE)\\s?${two}(?!\\d)`).exec(text);
    if (chest) return [{...none, text: chest[0].trim(), ...(chest[0].startsWith("CHEST") ? {chest: Number(chest[1])} : {}), row}];
    const letter = /^(?:SIZE\s?)?(XXL|XL|XS|SMALL|MEDIUM|LARGE|X-LARGE|S|M|L)$/.exec(text);
    return letter ? [{...none, text: letter[1]!, row}] : [];
  });
}

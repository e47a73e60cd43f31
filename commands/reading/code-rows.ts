// Tells rows of codes from rows of words: the first go to the row grammar, the second suggest marks.
import {careHits, findCare} from "./words/care.ts";
import {fibreHits} from "./words/fibre-list.ts";
import {formHits} from "./words/number-forms.ts";

/** More rows than this are never codes of one label; the surest are kept. Source: own choice. */
const mostRows = 8;

/**
 * Which rows may carry a maker's codes: those with figures that are no care words, fibre shares, registered numbers or addresses.
 * @param rows  the likeliest reading of each
 * @returns     places of those rows, top to bottom
 * @example
 * codeRows(["MACHINE WASH", "412-0318", "RN 45321", "3 8 21"]) // -> [1, 3]
 */
export function codeRows(rows: readonly string[]): number[] {
  const words = new Set([...rows.keys()].filter((i) => isWords(rows[i]!)));
  return [...rows.keys()].filter((i) => !words.has(i)).slice(0, mostRows);
}

function isWords(text: string): boolean {
  const figures = (text.match(/\d/g) ?? []).length;
  const letters = (text.match(/[A-Za-z]/g) ?? []).length;
  if (figures === 0 || letters > figures + 5 || text.includes("%")) return true;
  return letters >= 2 && [...formHits([text]), ...careHits(findCare([text])), ...fibreHits([text])].length > 0;
}

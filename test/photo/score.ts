// How well rows and photos were read, against the truth of made-up photos.
import {standing} from "../../reader/align.ts";
import type {ReadRow} from "../../reader/model.ts";

export const digitsOf = (text: string) => text.replace(/\D/g, "");
export const runsOf = (text: string) => text.match(/\d+/g) ?? [];

export interface LineScore {
  /** Characters other than blanks that are right, and how many there are. */
  readonly right: number;
  readonly of: number;
  /** Whether any digit is printed there; the rest counts only then. */
  readonly hasDigits: boolean;
  /** Every digit of the row right, blanks set aside, in the likeliest reading or in one of the three likeliest. */
  readonly first: boolean;
  readonly third: boolean;
  /** The same with blanks counted: 4 8 is not 48. */
  readonly strictFirst: boolean;
  readonly strictThird: boolean;
  /** Of each digit read: what was said of it, and whether it was so. */
  readonly digits: readonly (readonly [said: number, so: boolean])[];
  /** Of the likeliest digits of the row: likewise. */
  readonly row: readonly [said: number, so: boolean];
}

export function scoreLine(truth: string, row: ReadRow): LineScore {
  const bare = (text: string) => text.replace(/ /g, "");
  const there = standing(bare(truth), bare(row.best));
  const right = [...bare(truth)].filter((character, i) => there[i] === character).length;
  const loose = likeliestBy(row, digitsOf);
  const strict = likeliestBy(row, (text) => runsOf(text).join(" "));
  const here = standing(row.best, truth);
  const digits = row.places.flatMap((place, i) => (/\d/.test(row.best[i]!) ? [[place.find(({character}) => character === row.best[i])?.p ?? 0, here[i] === row.best[i]] as const] : []));
  const [wanted, spaced] = [digitsOf(truth), runsOf(truth).join(" ")];
  return {
    right, of: bare(truth).length, hasDigits: wanted !== "", digits,
    first: loose[0]?.[0] === wanted, third: loose.slice(0, 3).some(([text]) => text === wanted),
    strictFirst: strict[0]?.[0] === spaced, strictThird: strict.slice(0, 3).some(([text]) => text === spaced),
    row: [loose[0]?.[1] ?? 0, loose[0]?.[0] === wanted],
  };
}

/** What the readings come to, likeliest first, when only a part of them is looked at. */
function likeliestBy({strings}: ReadRow, part: (text: string) => string): [string, number][] {
  const sums = new Map<string, number>();
  for (const {text, p} of strings) sums.set(part(text), (sums.get(part(text)) ?? 0) + p);
  return [...sums].sort((a, b) => b[1] - a[1]);
}

/** How many of the runs of digits printed on a label were read, each counted once, and how many were read at all. */
export function scoreRuns(printed: readonly string[], read: readonly string[]): {hit: number; printed: number; read: number} {
  const truth = printed.flatMap(runsOf);
  const left = read.flatMap(runsOf);
  const all = left.length;
  const hit = truth.filter((run) => {
    const at = left.indexOf(run);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  }).length;
  return {hit, printed: truth.length, read: all};
}

export const share = <T>(items: readonly T[], is: (item: T) => boolean) => (items.length === 0 ? NaN : items.filter(is).length / items.length);

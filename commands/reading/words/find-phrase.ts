// Finds words in a row as a reader saw it: spaces that came or went do not count, look-alikes count little, worn characters may be missing.
import {gapCost, swapCost} from "./look-alike-print.ts";

/** A row of a label without its gaps and signs, each character with its place in the row. */
export interface BareRow {
  readonly text: string;
  readonly bare: string;
  /** Place in `text` of each character of `bare`. */
  readonly at: readonly number[];
}

/** Where words were found. */
export interface Found {
  /** Places in the text of the row; `until` not included. */
  readonly from: number;
  readonly until: number;
  /** In characters; 0 is letter by letter. */
  readonly cost: number;
  /** 1 is letter by letter. */
  readonly likeness: number;
  /** The words as they were read. */
  readonly read: string;
}

/** Leaves figures, letters and per-cent signs. */
export function bareRow(text: string): BareRow {
  const upper = plainLetters(text);
  const at = [...upper].flatMap((sign, i) => (/[0-9A-Z%]/.test(sign) ? [i] : []));
  return {text: upper, bare: at.map((i) => upper[i]).join(""), at};
}

/** Capitals without their accents, as a reader of capitals sees them. */
export function plainLetters(text: string): string {
  const upper = text.toUpperCase();
  const plain = upper.normalize("NFD").replace(/\p{M}/gu, "");
  return plain.length === upper.length ? plain : [...upper].map((sign) => sign.normalize("NFD")[0]!).join("");
}

/**
 * The best place of a phrase in a row, or null when nothing there is like it.
 * Short phrases have to stand alone and nearly letter by letter; long ones bear about one wrong character in six.
 * @cost  length of the phrase times length of the row
 * @source edit distance with a free start: Sellers 1980, Journal of Algorithms 1:359-373 (from memory); costs and limits own choice
 */
export function findPhrase(phrase: string, row: BareRow): Found | null {
  const wanted = barePhrase(phrase);
  const {bare} = row;
  if (wanted === "" || bare.length < wanted.length - 2) return null;
  const allowed = mostCost(wanted.length);
  let costs = Array.from({length: bare.length + 1}, () => 0);
  let starts = costs.map((_, j) => j);
  for (let i = 1; i <= wanted.length; i++) {
    const nextCosts = [i * gapCost];
    const nextStarts = [0];
    for (let j = 1; j <= bare.length; j++) {
      const swap = costs[j - 1]! + swapCost(wanted[i - 1]!, bare[j - 1]!);
      const gone = costs[j]! + gapCost;
      const more = nextCosts[j - 1]! + gapCost;
      const best = Math.min(swap, gone, more);
      nextCosts.push(best);
      nextStarts.push(best === swap ? starts[j - 1]! : best === gone ? starts[j]! : nextStarts[j - 1]!);
    }
    [costs, starts] = [nextCosts, nextStarts];
  }
  let best: Found | null = null;
  for (let j = 1; j <= bare.length; j++) {
    if (costs[j]! > allowed || starts[j] === j) continue;
    const cost = costs[j]! + edgeCost(row, starts[j]!, j, wanted.length);
    if (cost > allowed || (best && cost >= best.cost)) continue;
    const [from, until] = [row.at[starts[j]!]!, row.at[j - 1]! + 1];
    best = {from, until, cost, likeness: Math.max(0, 1 - cost / wanted.length), read: row.text.slice(from, until)};
  }
  return best;
}

const barePhrases = new Map<string, string>();

/** Phrases come from lists, again and again. */
function barePhrase(phrase: string): string {
  let bare = barePhrases.get(phrase);
  if (bare === undefined) barePhrases.set(phrase, (bare = bareRow(phrase).bare));
  return bare;
}

const mostCost = (length: number) => (length <= 3 ? 0 : length === 4 ? 0.4 : length <= 6 ? 0.8 : 0.17 * length);

/** A word that begins or ends in the middle of another is less likely that word; the shorter, the less. */
function edgeCost({text, bare, at}: BareRow, from: number, until: number, length: number): number {
  const joined = (a: number, b: number) => a >= 0 && b < bare.length && at[b]! - at[a]! === 1 && /[A-Z]/.test(text[at[a]!]!) && /[A-Z]/.test(text[at[b]!]!);
  const each = length <= 5 ? 1 : length <= 8 ? 0.45 : 0.2;
  return each * (Number(joined(from - 1, from)) + Number(joined(until - 1, until)));
}

/** The best place of several phrases; the longer one when they are equally well found. */
export function findAny(phrases: readonly string[], row: BareRow): (Found & {readonly phrase: string}) | null {
  let best: (Found & {phrase: string}) | null = null;
  for (const phrase of phrases) {
    const found = findPhrase(phrase, row);
    if (found && (!best || worth(found) > worth(best))) best = {...found, phrase};
  }
  return best;
}

const worth = ({from, until, cost}: Found) => until - from - 4 * cost;

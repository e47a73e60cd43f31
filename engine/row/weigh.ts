// From ways to read a row to its chance by month: dates spread over their months, codes weighed against the lists.
import type {ReadyCodes} from "./code-list.ts";
import {codeChance, sightOf} from "./code-sight.ts";
import {dateChance, type DateShares} from "./date-span.ts";
import {codeNames, type CodeName, type ParseGroup, type ParseResult} from "./parse.ts";
import type {Tie} from "./tie.ts";

/** What a case says about rows: which schemes date them, and which codes are tied to other places. */
export interface RowContext {
  readonly n: number;
  /** The months that count, `until` not included: elsewhere the label kind does not occur, and vectors stay 0. */
  readonly from: number;
  readonly until: number;
  readonly codes: Readonly<Record<CodeName, ReadyCodes | null>>;
  /** Tied codes in the order of their digits in a tie key. */
  readonly tied: readonly CodeName[];
  readonly ties: Readonly<Partial<Record<CodeName, Tie>>>;
  readonly dating: DateShares;
  /** Tells contexts apart in caches: dating, months and ties. */
  readonly key: string;
  /** The same without what the ties are: dating, months, and the names of the tied codes. */
  readonly looseKey: string;
}

/**
 * How a row takes part in the hidden codes, one digit a tied code, the first lowest, to the base 3:
 * absent (0), the garment's own (1), drawn anew (2).
 */
export type TieKey = number;

export const tieDigit = (key: TieKey, i: number) => Math.floor(key / 3 ** i) % 3;

/** Chance of a row for each way it takes part in the tied codes: by month, or one number when it is the same in all months. */
export type RowChance = ReadonlyMap<TieKey, Float64Array | number>;

/** One way the codes of a group take part in the ties, with their chances by month. */
interface CodesWay {
  readonly tie: TieKey;
  readonly vectors: readonly Float64Array[];
}

/** Weighs the ways to read a row in which no code is the garment's own: they are the same whatever the ties are. */
export const weighLoose = (result: ParseResult, context: RowContext): RowChance => weigh(result, context, false);

/** Weighs the ways in which at least one code is the garment's own. */
export const weighOwn = (result: ParseResult, context: RowContext): RowChance => weigh(result, context, true);

/** All ways: those without the garment's own codes, and those with. */
export const bothWays = (loose: RowChance, own: RowChance): RowChance => (own.size === 0 ? loose : new Map([...loose, ...own]));

/** The chance of a row of which several whole readings are possible: theirs, each by its weight. */
export function mixed(chances: readonly (readonly [weight: number, chance: RowChance])[], {n, from, until}: RowContext): RowChance {
  if (chances.length === 1 && chances[0]![0] === 1) return chances[0]![1];
  const sums = new Map<TieKey, Float64Array | number>();
  for (const [weight, chance] of chances) {
    for (const [tie, added] of chance) {
      const sum = sums.get(tie) ?? 0;
      if (typeof sum === "number" && typeof added === "number") sums.set(tie, sum + weight * added);
      else {
        const into = typeof sum === "number" ? new Float64Array(n).fill(sum, from, until) : sum;
        for (let t = from; t < until; t++) into[t]! += weight * (typeof added === "number" ? added : added[t]!);
        sums.set(tie, into);
      }
    }
  }
  return sums;
}

function weigh({row, groups}: ParseResult, context: RowContext, own: boolean): RowChance {
  const {from, until} = context;
  const sums = new Map<TieKey, Float64Array | number>();
  for (const group of groups) {
    const ways = codeWays(group.spans, row, context).filter(({tie}) => showsOwn(tie, context.tied.length) === own);
    if (ways.length === 0) continue;
    const dates = datesOf(group, context);
    for (const {tie, vectors: [a, b, c]} of ways) {
      let sum = sums.get(tie) ?? 0;
      if (!dates && !a) {
        if (typeof sum === "number") sums.set(tie, sum + group.dateless);
        else for (let t = from; t < until; t++) sum[t]! += group.dateless;
        continue;
      }
      if (typeof sum === "number") {
        const before = sum;
        sums.set(tie, (sum = new Float64Array(context.n)));
        if (before > 0) sum.fill(before, from, until);
      }
      addWay(sum, dates, group.dateless, a, b, c, from, until);
    }
  }
  return sums;
}

/** Adds dates (or a number, where there are none) times up to three codes. */
function addWay(into: Float64Array, dates: Float64Array | null, dateless: number, a: Float64Array | undefined, b: Float64Array | undefined, c: Float64Array | undefined, from: number, until: number): void {
  if (c) for (let t = from; t < until; t++) into[t]! += (dates ? dates[t]! : dateless) * a![t]! * b![t]! * c[t]!;
  else if (b) for (let t = from; t < until; t++) into[t]! += (dates ? dates[t]! : dateless) * a![t]! * b[t]!;
  else if (a && dates) for (let t = from; t < until; t++) into[t]! += dates[t]! * a[t]!;
  else if (a) for (let t = from; t < until; t++) into[t]! += dateless * a[t]!;
  else for (let t = from; t < until; t++) into[t]! += dates![t]!;
}

/** What the dates of a group make of the months, its ways without a date added; null when none of its ways has a date. */
function datesOf(group: ParseGroup, {n, from, until, dating}: RowContext): Float64Array | null {
  if (group.dated.length === 0) return null;
  const result = new Float64Array(n);
  if (group.dateless > 0) result.fill(group.dateless, from, until);
  for (const {chance, span} of group.dated) {
    const vector = dateChance(span, dating);
    for (let t = from; t < until; t++) result[t]! += chance * vector[t]!;
  }
  return result;
}

function showsOwn(tie: TieKey, count: number): boolean {
  for (let i = 0; i < count; i++) if (tieDigit(tie, i) === 1) return true;
  return false;
}

/** The ways the codes of a group take part in the ties: every tied code once as the garment's own, once as drawn anew. */
export function codeWays(spans: ParseGroup["spans"], row: ParseResult["row"], context: RowContext): CodesWay[] {
  let ways: CodesWay[] = [{tie: 0, vectors: []}];
  for (const name of codeNames) {
    const span = spans[name];
    const codes = context.codes[name];
    if (!span || !codes) continue;
    const sight = sightOf(row, span, codes);
    const drawn = codeChance(sight, codes);
    const digit = context.tied.indexOf(name);
    const own = digit < 0 ? null : context.ties[name]!.own(sight);
    const step = digit < 0 ? 0 : 3 ** digit;
    ways = ways.flatMap(({tie, vectors}) => [
      ...(drawn ? [{tie: tie + 2 * step, vectors: [...vectors, drawn]}] : []),
      ...(own ? [{tie: tie + step, vectors: [...vectors, own]}] : []),
    ]);
  }
  return ways;
}

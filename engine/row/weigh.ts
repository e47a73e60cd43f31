// From ways to read a row to its chance by month: dates spread over their months, codes weighed against the lists.
import type {ReadyScheme} from "../scheme/scheme.ts";
import type {ReadyCodes} from "./code-list.ts";
import {codeChance, sightOf, type CodeSight} from "./code-sight.ts";
import {codeNames, type CodeName, type ParseResult, type RowParse} from "./parse.ts";
import type {Tie} from "./tie.ts";

/** What a case says about rows: which schemes date them, with shares by month, and which codes are tied to other places. */
export interface RowContext {
  readonly n: number;
  readonly codes: Readonly<Record<CodeName, ReadyCodes | null>>;
  readonly ties: Readonly<Partial<Record<CodeName, Tie>>>;
  /** Share by month of a scheme in this case; null when the case does not allow it. */
  share(scheme: ReadyScheme): Float64Array | null;
  /** Share by month of dates written in an unknown way. */
  readonly unknown: Float64Array;
}

/** How a row takes part in the hidden codes: for each tied code, absent (0), the garment's own (1), drawn anew (2). */
export type TieKey = string;

/** Chance by month of a row, for each way it takes part in the tied codes. */
export type RowChance = ReadonlyMap<TieKey, Float64Array>;

interface Pile {
  readonly tie: TieKey;
  readonly codes: readonly Float64Array[];
  none: number;
  unknown: number;
  dated: Float64Array | null;
}

export const tiedNames = (context: RowContext): CodeName[] => codeNames.filter((name) => context.ties[name]);

/** Weighs all ways to read a row. */
export function weighRow({row, parses}: ParseResult, context: RowContext): RowChance {
  const piles = new Map<string, Pile>();
  const sights = new Map<string, CodeSight>();
  const plain = new Map<CodeSight, Float64Array>();
  const tied = tiedNames(context);

  const sight = (name: CodeName, parse: RowParse): CodeSight | null => {
    const span = parse[name];
    const codes = context.codes[name];
    if (!span || !codes) return null;
    const key = `${name}${span.from}-${span.until}`;
    let found = sights.get(key);
    if (!found) sights.set(key, (found = sightOf(row, span, codes)));
    return found;
  };
  const chance = (name: CodeName, seen: CodeSight): Float64Array => {
    let found = plain.get(seen);
    if (!found) plain.set(seen, (found = codeChance(seen, context.codes[name]!, context.n)));
    return found;
  };

  for (const parse of parses) {
    const share = parse.date?.scheme ? context.share(parse.date.scheme) : null;
    if (parse.date?.scheme && !share) continue;
    for (const choice of tieChoices(parse, tied)) {
      const key = `${choice};${codeNames.map((name) => (parse[name] ? `${parse[name].from}-${parse[name].until}` : "")).join(";")}`;
      let pile = piles.get(key);
      if (!pile) {
        const codes = codeNames.flatMap((name) => {
          const seen = sight(name, parse);
          if (!seen) return [];
          return choice[tied.indexOf(name)] === "1" ? [context.ties[name]!.with(seen)] : [chance(name, seen)];
        });
        piles.set(key, (pile = {tie: choice, codes, none: 0, unknown: 0, dated: null}));
      }
      pour(pile, parse, share, context.n);
    }
  }
  return sumPiles(piles, context);
}

function pour(pile: Pile, parse: RowParse, share: Float64Array | null, n: number): void {
  if (!parse.date) pile.none += parse.chance;
  else if (!parse.date.scheme) pile.unknown += parse.chance;
  else {
    const {at, weight} = parse.date.months!;
    const dated = (pile.dated ??= new Float64Array(n));
    for (let i = 0; i < at.length; i++) dated[at[i]!]! += parse.chance * weight[i]! * share![at[i]!]!;
  }
}

function tieChoices(parse: RowParse, tied: readonly CodeName[]): string[] {
  let choices = [""];
  for (const name of tied) choices = choices.flatMap((choice) => (parse[name] ? [`${choice}1`, `${choice}2`] : [`${choice}0`]));
  return choices;
}

function sumPiles(piles: ReadonlyMap<string, Pile>, context: RowContext): RowChance {
  const result = new Map<TieKey, Float64Array>();
  for (const pile of piles.values()) {
    let total = result.get(pile.tie);
    if (!total) result.set(pile.tie, (total = new Float64Array(context.n)));
    const [first, second, third] = pile.codes;
    for (let t = 0; t < context.n; t++) {
      let value = pile.none + pile.unknown * context.unknown[t]! + (pile.dated ? pile.dated[t]! : 0);
      if (first) value *= first[t]!;
      if (second) value *= second[t]!;
      if (third) value *= third[t]!;
      total[t]! += value;
    }
  }
  return result;
}

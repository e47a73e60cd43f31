// The most that a row can come to in any month, known before any month is weighed.
import {sightOf} from "./code-sight.ts";
import {codeNames, type ParseResult} from "./parse.ts";
import type {RowContext} from "./weigh.ts";

export interface RowBound {
  /** Tied codes that the row can show, as bits. */
  readonly shows: number;
  /** When no other row can show its codes: each is the garment's own or not shown. */
  readonly alone: number;
  /** When others can, too. */
  readonly any: number;
}

const plainBound = new WeakMap<ParseResult, RowBound>();
const boundsKnown = new WeakMap<ParseResult, Map<RowContext["ties"], RowBound>>();

/** Bounds what a row can come to: shares by month are at most 1. */
export function boundRow(result: ParseResult, context: RowContext): RowBound {
  if (context.tied.length === 0) {
    let plain = plainBound.get(result);
    if (!plain) plainBound.set(result, (plain = makeBound(result, context)));
    return plain;
  }
  let known = boundsKnown.get(result);
  if (!known) boundsKnown.set(result, (known = new Map()));
  let found = known.get(context.ties);
  if (!found) known.set(context.ties, (found = makeBound(result, context)));
  return found;
}

/** The bound of a row of which several whole readings are possible. */
export function mixedBound(bounds: readonly (readonly [weight: number, bound: RowBound])[]): RowBound {
  if (bounds.length === 1 && bounds[0]![0] === 1) return bounds[0]![1];
  const result = {shows: 0, alone: 0, any: 0};
  for (const [weight, {shows, alone, any}] of bounds) {
    result.shows |= shows;
    result.alone += weight * alone;
    result.any += weight * any;
  }
  return result;
}

function makeBound({row, groups}: ParseResult, context: RowContext): RowBound {
  let shows = 0;
  let alone = 0;
  let any = 0;
  for (const group of groups) {
    let own = group.dateless;
    for (const {chance, span} of group.dated) own += chance * span.most;
    let drawn = own;
    for (const name of codeNames) {
      const codes = context.codes[name];
      const span = group.spans[name];
      if (!span || !codes) continue;
      const sight = sightOf(row, span, codes);
      const all = sight.listed.reduce((sum, [, chance]) => sum + chance, sight.unlisted);
      const digit = context.tied.indexOf(name);
      if (digit < 0) own *= all;
      else {
        const {kept} = context.ties[name]!;
        shows |= 1 << digit;
        own *= sight.listed.reduce((sum, [j, chance]) => (kept.has(j) ? sum + chance : sum), kept.unlisted ? sight.unlisted : 0);
      }
      drawn *= all;
    }
    alone += own;
    any += drawn;
  }
  return {shows, alone, any};
}

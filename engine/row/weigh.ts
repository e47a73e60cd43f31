// From ways to read a row to its chance by month: dates spread over their months, codes weighed against the lists.
import {addInto} from "../num/vector.ts";
import type {ReadyScheme} from "../scheme/scheme.ts";
import type {ReadyCodes} from "./code-list.ts";
import {codeTerms, sightOf, type CodeSight, type Term} from "./code-sight.ts";
import {codeNames, type CodeName, type ParseGroup, type ParseResult} from "./parse.ts";
import type {Tie} from "./tie.ts";

/** What a case says about rows: which schemes date them, with shares by month, and which codes are tied to other places. */
export interface RowContext {
  readonly n: number;
  readonly codes: Readonly<Record<CodeName, ReadyCodes | null>>;
  /** Tied codes in the order of their digits in a tie key. */
  readonly tied: readonly CodeName[];
  readonly ties: Readonly<Partial<Record<CodeName, Tie>>>;
  /** Tells contexts apart in caches: dating and ties. */
  readonly key: string;
  /** Share by month of a scheme in this case; null when the case does not allow it. */
  share(scheme: ReadyScheme): Float64Array | null;
  /** Share by month of dates written in an unknown way. */
  readonly unknown: Float64Array;
}

/**
 * How a row takes part in the hidden codes, one digit a tied code, the first lowest, to the base 3:
 * absent (0), the garment's own (1), drawn anew (2).
 */
export type TieKey = number;

export const tieDigit = (key: TieKey, i: number) => Math.floor(key / 3 ** i) % 3;

/** Chance of a row for each way it takes part in the tied codes: by month, or one number when it is the same in all months. */
export type RowChance = ReadonlyMap<TieKey, Float64Array | number>;

/** A product of terms, one a code, with the way it takes part in the ties. */
interface Product {
  readonly tie: TieKey;
  readonly factor: number;
  readonly vectors: readonly Float64Array[];
}

/** What is gathered for one tie key: a constant, products over all months, and what dates put on single months. */
interface Sum {
  constant: number;
  readonly products: Map<string, {vectors: readonly Float64Array[]; factor: number}>;
  dated: Float64Array | null;
}

const ids = new WeakMap<Float64Array, number>();
let lastId = 0;
const idOf = (vector: Float64Array) => {
  let id = ids.get(vector);
  if (id === undefined) ids.set(vector, (id = ++lastId));
  return id;
};

/** Weighs all ways to read a row. */
export function weighRow({row, groups}: ParseResult, context: RowContext): RowChance {
  const sums = new Map<TieKey, Sum>();
  const sumAt = (tie: TieKey) => {
    let sum = sums.get(tie);
    if (!sum) sums.set(tie, (sum = {constant: 0, products: new Map(), dated: null}));
    return sum;
  };
  for (const group of groups) {
    for (const product of productsOf(group, row, context)) {
      const sum = sumAt(product.tie);
      pour(sum, group.dateless * product.factor, product.vectors);
      if (group.unknown > 0) pour(sum, group.unknown * product.factor, [...product.vectors, context.unknown]);
      pourDates(sum, group, product, context);
    }
  }
  return new Map([...sums].map(([tie, sum]) => [tie, total(sum, context.n)]));
}

function pour(sum: Sum, factor: number, vectors: readonly Float64Array[]): void {
  if (factor === 0) return;
  if (vectors.length === 0) {
    sum.constant += factor;
    return;
  }
  const key = vectors.length === 1 ? String(idOf(vectors[0]!)) : vectors.map(idOf).join();
  const same = sum.products.get(key);
  if (same) same.factor += factor;
  else sum.products.set(key, {vectors, factor});
}

function pourDates(sum: Sum, {dated}: ParseGroup, {factor, vectors}: Product, context: RowContext): void {
  for (const {chance, scheme, months} of dated) {
    const share = context.share(scheme);
    if (!share) continue;
    const into = (sum.dated ??= new Float64Array(context.n));
    for (let i = 0; i < months.at.length; i++) {
      const t = months.at[i]!;
      let value = factor * chance * months.weight[i]! * share[t]!;
      for (const vector of vectors) value *= vector[t]!;
      into[t]! += value;
    }
  }
}

function total({constant, products, dated}: Sum, n: number): Float64Array | number {
  if (products.size === 0 && !dated) return constant;
  const result = dated ?? new Float64Array(n);
  if (constant > 0) for (let t = 0; t < n; t++) result[t]! += constant;
  for (const {vectors, factor} of products.values()) {
    const [first, second, third, fourth] = vectors;
    if (!second) addInto(result, first!, factor);
    else for (let t = 0; t < n; t++) result[t]! += factor * first![t]! * second[t]! * (third ? third[t]! : 1) * (fourth ? fourth[t]! : 1);
  }
  return result;
}

const sights = new WeakMap<ParseGroup["spans"], Map<ReadyCodes, CodeSight>>();

/** What the cells of a group's code can be, worked out once. */
function groupSight(spans: ParseGroup["spans"], name: CodeName, row: ParseResult["row"], codes: ReadyCodes): CodeSight {
  let known = sights.get(spans);
  if (!known) sights.set(spans, (known = new Map()));
  let found = known.get(codes);
  if (!found) known.set(codes, (found = sightOf(row, spans[name]!, codes)));
  return found;
}

/** The most a row can come to in any month, without weighing the months. */
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

function makeBound({row, groups}: ParseResult, context: RowContext): RowBound {
  let shows = 0;
  let alone = 0;
  let any = 0;
  for (const group of groups) {
    let own = group.dateless + group.unknown;
    for (const {chance} of group.dated) own += chance;
    let drawn = own;
    for (const name of codeNames) {
      const codes = context.codes[name];
      if (!group.spans[name] || !codes) continue;
      const sight = groupSight(group.spans, name, row, codes);
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

/** The products of code terms of a group: every tied code once as the garment's own, once as drawn anew. */
export function productsOf({spans}: Pick<ParseGroup, "spans">, row: ParseResult["row"], context: RowContext): Product[] {
  let products: Product[] = [{tie: 0, factor: 1, vectors: []}];
  for (const name of codeNames) {
    const span = spans[name];
    const codes = context.codes[name];
    if (!span || !codes) continue;
    const sight = groupSight(spans, name, row, codes);
    const digit = context.tied.indexOf(name);
    const step = 3 ** digit;
    const choices: (Term & {tie: number})[] = codeTerms(sight, codes).map((term) => ({...term, tie: digit < 0 ? 0 : 2 * step}));
    if (digit >= 0) choices.push(...context.ties[name]!.terms(sight).map((term) => ({...term, tie: step})));
    products = products.flatMap(({tie, factor, vectors}) =>
      choices.map((choice) => ({tie: tie + choice.tie, factor: factor * choice.factor, vectors: [...vectors, choice.vector]})),
    );
  }
  return products;
}

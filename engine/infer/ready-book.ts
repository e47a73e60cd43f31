// A rule book made ready for an axis: marks, schemes, code lists and label layouts, with what they remember between garments.
import {versionsOf, type PrintedRow} from "../cell/printed-row.ts";
import {choiceKind, type Shares} from "../mark/choice.ts";
import {codedKind, schemeShares, type SchemeShares} from "../mark/coded.ts";
import type {Observation} from "../mark/observation.ts";
import {presenceKind} from "../mark/presence.ts";
import {constant, readyMark, type MarkKind, type ReadyMark} from "../mark/ready-mark.ts";
import {serialKind} from "../mark/serial.ts";
import {parseMonth} from "../month/month.ts";
import {readyCodes, type ReadyCodes} from "../row/code-list.ts";
import {parseFreely} from "../row/free.ts";
import {parseByLayout, type RowGrammar} from "../row/layout.ts";
import {codeNames, parseResult, type CodeName, type ParseResult} from "../row/parse.ts";
import {tieKey, tieOf, type CodeClass, type Repeat, type Tie} from "../row/tie.ts";
import {boundRow} from "../row/bound.ts";
import {bothWays, mixed, weighLoose, weighOwn, type RowChance, type RowContext} from "../row/weigh.ts";
import type {Book, LayoutRow, Mark, RepeatMark} from "../rule/schema.ts";
import {caseKey, holds, type Case, type Distinctions} from "../rule/when.ts";
import {readyScheme, type ReadyScheme} from "../scheme/scheme.ts";
import {monthIndex} from "../units.ts";
import {heights, windowOf, type Span} from "../window/window.ts";

export interface ReadyBook {
  readonly book: Book;
  readonly axis: Span;
  readonly n: number;
  readonly marks: ReadonlyMap<string, ReadyMark>;
  readonly schemes: readonly ReadyScheme[];
  readonly codes: Readonly<Record<CodeName, ReadyCodes | null>>;
  readonly label: ReadyLabel | null;
  /** Every way to read one version of a row by a layout row, or freely when that is null. Remembered. */
  parse(row: PrintedRow, layout: LayoutRow | null): ParseResult;
  /** Ties a code to its repeats, for one class of codes. Remembered. */
  tie(name: CodeName, repeats: readonly Repeat[], kept: CodeClass): Tie;
  /** The chance of a row by a layout row, or freely, in a context. Remembered. */
  weigh(row: PrintedRow, layout: LayoutRow | null, context: RowContext): RowChance;
}

export interface ReadyLabel {
  readonly mark: ReadyMark;
  readonly kinds: ReadonlyMap<string, {readonly layout: readonly LayoutRow[]; readonly schemes: readonly ReadyScheme[]}>;
  readonly extra: number;
  shares(in_: Case): Shares;
  /** The observation that the label is of one kind, always the same object. */
  one(kind: string): Observation;
  /** Shares of the schemes that may date a label kind in a case. */
  dating(kind: string, in_: Case): Dating;
}

/** Shares of schemes, with a key that tells which schemes they are. */
export interface Dating extends SchemeShares {
  readonly key: string;
}

/** The id under which a garment's label kind is stated. */
export const labelId = "label";
const unknownDates = 0.1;

/** Makes a book ready. The book has been validated: references hold. */
export function readyBook(book: Book, axis: Span): ReadyBook {
  const n = axis.until - axis.from + 1;
  const schemes = Object.entries(book.schemes).map(([id, scheme]) => readyScheme(id, scheme, axis));
  const codes = Object.fromEntries(codeNames.map((name) => [name, codesOf(book, name, axis)])) as Record<CodeName, ReadyCodes | null>;
  const grammar: RowGrammar = {
    schemes,
    codes: Object.fromEntries(codeNames.map((name) => [name, codes[name] && {widest: codes[name].widest, prefix: codes[name].list.prefix}])) as RowGrammar["codes"],
    figures: {size: book.fields.size?.figures ?? [2, 2], inspector: book.fields.inspector?.figures ?? [1, 2], other: book.fields.other?.figures ?? [1, 4]},
  };
  const temperOf = (id: string) => Object.values(book.groups).find((group) => group.marks.includes(id))?.temper ?? 1;
  const marks = new Map(
    Object.entries(book.marks).map(([id, mark]) => [id, readyMark(id, book.book, mark, temperOf(id), axis, kindOf(mark, schemes, axis, n))]),
  );
  const parses = new Remembered<ParseResult>(1000);
  const versionParses = new WeakMap<PrintedRow, Map<number, ParseResult>>();
  const chances = new Remembered<RowChance>(6000);
  const ties = new Remembered<Tie>(500);
  const parseNow = (row: PrintedRow, layout: LayoutRow | null) => parseResult(row, layout ? parseByLayout(row, layout, grammar) : parseFreely(row, grammar));
  const parse = (row: PrintedRow, layout: LayoutRow | null) => {
    if (!row.oneOfSeveral) return parses.at(layout, row.key, () => parseNow(row, layout));
    // There can be hundreds of them; they are kept as long as their row.
    let known = versionParses.get(row);
    if (!known) versionParses.set(row, (known = new Map()));
    const line = parses.lineOf(layout);
    let found = known.get(line);
    if (!found) known.set(line, (found = parseNow(row, layout)));
    return found;
  };
  /** What is made of the versions that can count on a line, each by its weight. */
  const ofVersions = (row: PrintedRow, layout: LayoutRow | null, context: RowContext, weigh: (result: ParseResult, context: RowContext) => RowChance): RowChance => {
    const versions = versionsOf(row);
    if (versions.length === 1) return weigh(parse(versions[0]!.row, layout), context);
    const bounded = versions.map(({row, weight}) => ({result: parse(row, layout), weight})).map((one) => ({...one, most: one.weight * boundRow(one.result, context).any}));
    const best = Math.max(...bounded.map(({most}) => most));
    return mixed(bounded.filter(({most}) => most > best * leastVersion).map(({result, weight}) => [weight, weigh(result, context)]), context);
  };
  return {
    book,
    axis,
    n,
    marks,
    schemes,
    codes,
    label: readyLabel(book, schemes, axis, temperOf(labelId)),
    parse,
    tie: (name, repeats, kept) => ties.at(null, `${name}|${tieKey(repeats, kept)}`, () => tieOf(codes[name]!, repeats, kept, n)),
    weigh(row, layout, context) {
      const loose = chances.at(layout, `${row.key}|${context.looseKey}`, () => ofVersions(row, layout, context, weighLoose));
      return context.tied.length === 0 ? loose : chances.at(layout, `${row.key}|${context.key}`, () => bothWays(loose, ofVersions(row, layout, context, weighOwn)));
    },
  };
}

/** Whole readings that come to less than this part of the best one on a line of the label are left out there. */
const leastVersion = 1e-12;

/** The months that a book covers, on an axis; null when there are none. */
export function coveredSpan(book: Book, axis: Span): Span | null {
  const from = Math.max(axis.from, parseMonth(book.covers.from)!);
  const until = Math.min(axis.until, book.covers.until ? parseMonth(book.covers.until)! : axis.until);
  return from <= until ? {from: monthIndex(from), until: monthIndex(until)} : null;
}

/** Remembers the newest results, at most so many, so that memory stays flat however long a batch is. */
class Remembered<T> {
  private readonly results = new Map<string, T>();
  /** Lines with the same fields read a row alike, whichever label they are on. */
  private readonly lines = new Map<LayoutRow | null, number>();
  private readonly fields = new Map<string, number>();
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
  }

  lineOf(layout: LayoutRow | null): number {
    let line = this.lines.get(layout);
    if (line === undefined) {
      const fields = JSON.stringify(layout?.fields ?? null);
      line = this.fields.get(fields) ?? this.fields.size;
      this.fields.set(fields, line);
      this.lines.set(layout, line);
    }
    return line;
  }

  at(layout: LayoutRow | null, key: string, make: () => T): T {
    const whole = `${this.lineOf(layout)}|${key}`;
    let found = this.results.get(whole);
    if (found === undefined) {
      found = make();
      if (this.results.size >= this.most) this.results.delete(this.results.keys().next().value!);
      this.results.set(whole, found);
    }
    return found;
  }
}

function codesOf(book: Book, name: CodeName, axis: Span): ReadyCodes | null {
  const list = name === "plant" ? book.plants : name === "lot" ? book.lots : book.fabrics;
  return list ? readyCodes(list, axis) : null;
}

function kindOf(mark: Mark, schemes: readonly ReadyScheme[], axis: Span, n: number): MarkKind {
  switch (mark.kind) {
    case "choice":
      return choiceKind(mark, axis);
    case "presence":
      return presenceKind(mark, axis);
    case "serial":
      return serialKind(mark, axis);
    case "coded":
      return codedKind(mark, schemes.filter(({id}) => mark.schemes.includes(id)), n);
    case "repeat":
      return repeatKind(mark, axis, n);
  }
}

/** Share of garments that carry a repeat, by month. */
export function repeatShare(mark: RepeatMark, axis: Span): Float64Array {
  return heights(windowOf(mark.window), axis).map((h) => mark.outside + (mark.inside - mark.outside) * h);
}

/** A repeat without a text (none there) is an ordinary mark; with one it is tied to the label, see `hub.ts`. */
function repeatKind(mark: RepeatMark, axis: Span, n: number): MarkKind {
  return {
    chance(seen, in_) {
      if (seen.kind !== "missing") return constant(n, 1);
      if (!holds(mark.when, in_)) return constant(n, 1 - mark.elsewhere);
      return repeatShare(mark, axis).map((s) => mark.lost + (1 - mark.lost) * (1 - s));
    },
    outcomes: () => [],
    distinguish: (into) => into.note(mark.when),
  };
}

function readyLabel(book: Book, schemes: readonly ReadyScheme[], axis: Span, temper: number): ReadyLabel | null {
  if (!book.labels) return null;
  const labels = book.labels;
  const n = axis.until - axis.from + 1;
  const kind = choiceKind({...labels, values: labels.kinds}, axis);
  const kinds = new Map(
    Object.entries(labels.kinds).map(([id, label]) => [
      id,
      {layout: label.rows, schemes: label.schemes ? schemes.filter((scheme) => label.schemes!.includes(scheme.id)) : schemes},
    ]),
  );
  const ones = new Map<string, Observation>();
  const dates = new Map<string, Dating>();
  const byCase = new Map<string, Dating>();
  const mark: Mark = {...labels, kind: "choice", values: labels.kinds};
  return {
    mark: readyMark(labelId, book.book, mark, temper, axis, {
      ...kind,
      distinguish(into: Distinctions) {
        kind.distinguish(into);
        for (const {scheme} of schemes) into.note(scheme.when);
      },
    }),
    kinds,
    extra: labels.extra,
    shares: kind.shares,
    one(id) {
      let found = ones.get(id);
      if (!found) ones.set(id, (found = {kind: "choice", values: [[id, 1]]}));
      return found;
    },
    dating(id, in_) {
      const key = `${id}|${caseKey(in_)}`;
      let found = byCase.get(key);
      if (!found) {
        const with_ = {...in_, label: id};
        const allowed = (kinds.get(id)?.schemes ?? schemes).filter(({scheme}) => holds(scheme.when, with_));
        const allowedKey = allowed.map((scheme) => scheme.id).join();
        found = dates.get(allowedKey) ?? {...schemeShares(allowed, unknownDates, n), key: allowedKey};
        dates.set(allowedKey, found);
        byCase.set(key, found);
      }
      return found;
    },
  };
}

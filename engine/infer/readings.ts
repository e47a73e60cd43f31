// How the printed rows can be understood, each way with its probability given everything seen.
import {addInto, affine, multiplyInto, sum, times} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import {addJoined} from "../row/label-rows.ts";
import {codesKey, type Bracket, type CellSpan, type RowParse} from "../row/parse.ts";
import type {DateFit} from "../row/date-span.ts";
import {codeWays, tieDigit, type RowContext, type TieKey} from "../row/weigh.ts";
import type {LayoutRow} from "../rule/schema.ts";
import {sayStated} from "../scheme/say.ts";
import {statedKey} from "../scheme/scheme.ts";
import {sliceText, versionsOf, type PrintedRow} from "../cell/printed-row.ts";
import {heavyCases, type Evaluation} from "./evaluate.ts";
import {arranged, kindsOf, layoutOf, monthsOf, rowContext, rowsChance, rowTable} from "./label-rows.ts";
import type {Ties} from "./repeats.ts";
import {monthIndex, type MonthIndex} from "../units.ts";

export interface Reading {
  readonly probability: number;
  /** The row as this reading takes it; brackets count its cells. */
  readonly row: PrintedRow;
  /** What the row's date says, in words; null when no date is read. */
  readonly date: string | null;
  readonly scheme: string | null;
  /** The months of the date that the evidence leaves, likeliest first, at most six. */
  readonly months: readonly MonthIndex[];
  readonly plant: string | null;
  readonly lot: string | null;
  readonly fabric: string | null;
  readonly brackets: readonly (Bracket & {readonly text: string})[];
}

export interface RowReadings {
  readonly row: PrintedRow;
  readonly readings: readonly Reading[];
}

interface Mass {
  total: number;
  best: number;
  row: PrintedRow;
  parse: RowParse;
  /** The date as a scheme reads it; null when none is read. */
  fit: DateFit | null;
  months: Map<number, number>;
}

const shown = 6;
/** Label kinds, and ways to read a row, that hold less than this part of the probability are not looked at singly. */
const leastReading = 1e-9;

/** The readings of every row for one possible maker; probabilities of a row's readings add up to 1. */
export function readingsOf(evaluation: Evaluation): RowReadings[] {
  const {evidence, space} = evaluation;
  const book = evidence.view.own;
  if (!book?.label || evidence.rows.length === 0) return [];
  const total = sum(evaluation.joint);
  const open = new Map<string, OpenParses>();
  for (const c of heavyCases(evaluation)) {
    const hub = c.factors.find((factor) => factor.hub);
    if (!hub?.hub) continue;
    const rest = affine(evidence.view.prior, c.weight);
    for (const factor of c.factors) if (factor !== hub) multiplyInto(rest, factor.vector);
    for (const [ties, coefficient] of coefficients(hub.hub, rest)) {
      for (const {kind, chance} of kindsOf(book.label, evidence.label, c.case, space.apart, evidence.rows.length)) {
        const months = monthsOf(chance);
        if (months.from === months.until) continue;
        const weight = times(coefficient, chance);
        if (massOf(weight, rowsChance(book, book.label, kind, months, evidence.rows, c.case, ties, evidence.trifle)) < total * leastReading) continue;
        const context = rowContext(book, book.label, kind, months, c.case, ties);
        addKind(evaluation, layoutOf(book.label, kind), context, weight, open);
      }
    }
  }
  const least = total * leastReading;
  const masses: Map<string, Mass>[] = evidence.rows.map(() => new Map());
  for (const {o, line, context, tie, rest} of open.values()) {
    for (const {row, weight} of versionsOf(evidence.rows[o]!)) addParses(book.parse(row, line).parses, row, weight, context, tie, rest, least, masses[o]!);
  }
  return evidence.rows.map((row, o) => ({row, readings: finish(masses[o]!, book.axis.from)}));
}

/** One row on one line in one context, with what everything else makes of its months; label kinds alike in these share it. */
interface OpenParses {
  readonly o: number;
  readonly line: LayoutRow | null;
  readonly context: RowContext;
  readonly tie: TieKey;
  readonly rest: Float64Array;
}

/** What multiplies label kind and rows, by the ties they enter with: a coefficient for each month. */
function coefficients(hub: NonNullable<Evaluation["cases"][number]["factors"][number]["hub"]>, rest: Float64Array): Map<Ties, Float64Array> {
  const result = new Map<Ties, Float64Array>();
  const at = (ties: Ties) => {
    let found = result.get(ties);
    if (!found) result.set(ties, (found = constant(rest.length, 0)));
    return found;
  };
  for (const {ties, own, stray} of hub.terms) {
    let strayMass = 0;
    const into = at(ties);
    for (let t = 0; t < rest.length; t++) {
      into[t]! += rest[t]! * own[t]! * hub.onLabel[t]!;
      strayMass += rest[t]! * stray[t]!;
    }
    const untied = at(hub.untied);
    for (let t = 0; t < rest.length; t++) untied[t]! += (strayMass * hub.onLabel[t]!) / rest.length;
  }
  return result;
}

function addKind(evaluation: Evaluation, layout: readonly LayoutRow[], context: RowContext, weight: Float64Array, open: Map<string, OpenParses>): void {
  const {evidence} = evaluation;
  const total = sum(evaluation.joint);
  const book = evidence.view.own!;
  const table = rowTable(book, layout, evidence.rows, context);
  const possible = arranged(evidence.rows, layout, book.label!.extra, table, evidence.trifle).kept;
  evidence.rows.forEach((_, o) => {
    for (const line of new Set(possible.map(({lines}) => lines[o]!))) {
      const keys = [...table.chance(o, line ?? layout.length).keys()];
      for (const key of keys) {
        const rest = constant(context.n, 0);
        for (const {lines, chance, chances} of possible) {
          if (lines[o] === line) addJoined(rest, chances.map((c, i) => (i === o ? new Map([[key, 1]]) : c)), chance, context);
        }
        multiplyInto(rest, weight);
        if (!worthTelling(rest, table.chance(o, line ?? layout.length).get(key)!, total)) continue;
        const id = `${o}|${line === null ? "" : lineId(layout[line]!)}|${key}|${context.key}`;
        const same = open.get(id);
        if (same) addInto(same.rest, rest);
        else open.set(id, {o, line: line === null ? null : layout[line]!, context, tie: key, rest});
      }
    }
  });
}

const lineIds = new WeakMap<LayoutRow, number>();
let lastLine = 0;

function lineId(line: LayoutRow): number {
  let id = lineIds.get(line);
  if (id === undefined) lineIds.set(line, (id = ++lastLine));
  return id;
}

function massOf(a: Float64Array, b: Float64Array): number {
  let mass = 0;
  for (let t = 0; t < a.length; t++) mass += a[t]! * b[t]!;
  return mass;
}

/** Whether all ways to read a row so hold more than a millionth of the probability; what is less is not told. */
function worthTelling(rest: Float64Array, chance: Float64Array | number, total: number): boolean {
  let mass = 0;
  for (let t = 0; t < rest.length; t++) mass += rest[t]! * (typeof chance === "number" ? chance : chance[t]!);
  return mass > total * 1e-6;
}

interface CodeWeight {
  readonly vector: Float64Array;
  readonly total: number;
  readonly unknown: number;
}

/** Adds each way to read a row, weighed by what everything else makes of its months. */
function addParses(parses: readonly RowParse[], row: PrintedRow, weight: number, context: RowContext, tie: TieKey, rest: Float64Array, least: number, into: Map<string, Mass>): void {
  const known = new Map<string, CodeWeight>();
  for (const parse of parses) {
    if (context.tied.some((name, i) => (parse[name] !== null) !== (tieDigit(tie, i) !== 0))) continue;
    const key = codesKey(parse);
    let codes = known.get(key);
    if (!codes) known.set(key, (codes = codeWeight(parse, row, weight, context, tie, rest)));
    if (parse.chance * (parse.date?.most ?? 1) * codes.total > least) addParse(parse, codes, row, context, into);
  }
}

function codeWeight(parse: RowParse, row: PrintedRow, weight: number, context: RowContext, tie: TieKey, rest: Float64Array): CodeWeight {
  const {from, until} = context;
  const vector = constant(context.n, 0);
  for (const way of codeWays(parse, row, context)) {
    if (way.tie !== tie) continue;
    for (let t = from; t < until; t++) {
      let value = weight * rest[t]!;
      for (const code of way.vectors) value *= code[t]!;
      vector[t]! += value;
    }
  }
  let total = 0;
  let unknown = 0;
  for (let t = from; t < until; t++) {
    total += vector[t]!;
    unknown += vector[t]! * context.dating.unknown[t]!;
  }
  return {vector, total, unknown};
}

function addParse(parse: RowParse, codes: CodeWeight, row: PrintedRow, {dating}: RowContext, into: Map<string, Mass>): void {
  const {date} = parse;
  const told = `;${codeText(row, parse.plant)};${codeText(row, parse.lot)};${codeText(row, parse.fabric)}`;
  if (!date) return addMass(into, told, {total: parse.chance * codes.total, row, parse, fit: null, months: new Map()});
  addMass(into, told, {total: parse.chance * date.unknown * codes.unknown, row, parse, fit: null, months: new Map()});
  for (const fit of date.fits) {
    const share = dating.schemes.get(fit.scheme);
    if (!share) continue;
    const months = new Map<number, number>();
    let total = 0;
    const {at, weight} = fit.months;
    for (let i = 0; i < at.length; i++) {
      const m = parse.chance * fit.chance * weight[i]! * share[at[i]!]! * codes.vector[at[i]!]!;
      total += m;
      if (m > 0) months.set(at[i]!, m);
    }
    if (total > 0) addMass(into, `${fit.scheme.id}:${statedKey(fit.stated)}@${date.from}${told}`, {total, row, parse, fit, months});
  }
}

function addMass(into: Map<string, Mass>, key: string, {total, row, parse, fit, months}: Omit<Mass, "best">): void {
  if (!(total > 0)) return;
  const same = into.get(key);
  if (!same) {
    into.set(key, {total, best: total, row, parse, fit, months});
    return;
  }
  same.total += total;
  for (const [t, m] of months) same.months.set(t, (same.months.get(t) ?? 0) + m);
  if (total > same.best) Object.assign(same, {best: total, row, parse, fit});
}

function codeText(row: PrintedRow, span: CellSpan | null): string {
  return span ? sliceText(row, span.from, span.until) : "";
}

function finish(masses: ReadonlyMap<string, Mass>, first: MonthIndex): Reading[] {
  let total = 0;
  for (const mass of masses.values()) total += mass.total;
  return [...masses.values()]
    .sort((a, b) => b.total - a.total)
    .map(({total: mass, row, parse, fit, months}) => {
      return {
        probability: total > 0 ? mass / total : 0,
        row,
        date: fit ? sayStated(fit.stated) : null,
        scheme: fit?.scheme.id ?? null,
        months: [...months].sort((a, b) => b[1] - a[1]).slice(0, shown).map(([t]) => monthIndex(first + t)),
        plant: codeText(row, parse.plant) || null,
        lot: codeText(row, parse.lot) || null,
        fabric: codeText(row, parse.fabric) || null,
        brackets: parse.brackets.map((bracket) => ({
          ...bracket,
          field: bracket.field === "date" && !fit ? "unread date" : bracket.field,
          text: sliceText(row, bracket.from, bracket.until),
        })),
      };
    });
}

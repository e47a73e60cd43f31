// The label, its rows and the codes repeated elsewhere hang together through hidden values: they are weighed as one factor.
import {mean, multiplyInto} from "../num/vector.ts";
import type {Observation} from "../mark/observation.ts";
import {constant} from "../mark/ready-mark.ts";
import {arrangements, joinRows} from "../row/label-rows.ts";
import {codeNames, type CodeName} from "../row/parse.ts";
import {anyCode, tieOf, trueChance, type CodeClass, type Repeat, type Tie} from "../row/tie.ts";
import {weighRow, type RowChance, type RowContext} from "../row/weigh.ts";
import type {LayoutRow} from "../rule/schema.ts";
import {anyOther, type Case} from "../rule/when.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import type {CaseSpace} from "./cases.ts";
import type {SeenRepeat} from "./evidence.ts";
import {repeatShare, type ReadyBook, type ReadyLabel} from "./ready-book.ts";

export type Ties = Partial<Record<CodeName, Tie>>;

/** Repeats made ready for tying, by the code that they repeat. */
export function readyRepeats(book: ReadyBook, repeats: readonly SeenRepeat[]): Map<CodeName, Repeat[]> {
  const result = new Map<CodeName, Repeat[]>();
  for (const {mark, texts} of repeats) {
    const of = mark.mark.of;
    if (!book.codes[of]) continue;
    const list = result.get(of) ?? [];
    list.push({
      mark: mark.id,
      stray: mark.mark.stray,
      lost: mark.mark.lost,
      share: repeatShare(mark.mark, book.axis),
      texts: texts.map(({row, weight}) => ({cells: row.cells.map((cell) => cell.weights), weight, shown: row.text})),
    });
    result.set(of, list);
  }
  return result;
}

/** The ties that a case needs: codes with repeats, and codes that rules tell apart. */
export function tiesOf(book: ReadyBook, repeats: ReadonlyMap<CodeName, readonly Repeat[]>, in_: Case, apart: CaseSpace["apart"]): Ties {
  const ties: Ties = {};
  for (const name of codeNames) {
    const codes = book.codes[name];
    const told = name === "fabric" ? [] : apart[name];
    const own = repeats.get(name) ?? [];
    if (!codes || (own.length === 0 && told.length === 0)) continue;
    ties[name] = tieOf(codes, own, classOf(codes.codes, told, name === "fabric" ? undefined : in_[name]), book.n);
  }
  return ties;
}

function classOf(codes: readonly string[], told: readonly string[], value: string | undefined): CodeClass {
  if (told.length === 0 || value === undefined) return anyCode;
  if (value === anyOther) return {has: (j) => !told.includes(codes[j]!), unlisted: true};
  return {has: (j) => codes[j] === value, unlisted: false};
}

/** The chance by month of the ties' classes and repeats when no label tells the codes. */
export function tiesAlone(ties: Ties, n: number): Float64Array {
  const result = constant(n, 1);
  for (const name of codeNames) if (ties[name]) multiplyInto(result, ties[name].alone);
  return result;
}

/** Chance by month of a repeat as if its code were the garment's own, and as an average: what a stray piece would show. */
export function repeatMarginal(repeat: Repeat, book: ReadyBook, of: CodeName): Float64Array {
  const chance = trueChance(repeat, book.codes[of]!, book.n);
  const base = repeat.stray * mean(chance);
  return chance.map((p) => (1 - repeat.stray) * p + base);
}

/** One label kind that the label may be, with its weight by month. */
interface KindChance {
  readonly kind: string;
  readonly chance: Float64Array;
}

/** The label kinds that fit what was seen and the case, each with its chance by month. */
export function kindsOf(label: ReadyLabel, seen: Observation | null, in_: Case, apart: CaseSpace["apart"], rows: number): KindChance[] {
  const inCase = (kind: string) => in_.label === undefined || in_.label === kind || (in_.label === anyOther && !apart.label.includes(kind));
  if (seen?.kind === "choice") {
    return seen.values
      .filter(([kind]) => seen.values.length === 1 || inCase(kind))
      .map(([kind, weight]) => ({kind, chance: label.mark.likelihood({kind: "choice", values: [[kind, 1]]}, in_).map((p) => p * weight)}));
  }
  const shares = label.shares(in_);
  const lost = rows > 0 ? 0 : label.mark.mark.lost;
  const all: KindChance[] = [...shares.values, ["other", shares.other] as const].map(([kind, share]) => ({kind, chance: share.map((s) => s * (1 - lost))}));
  if (lost > 0) all.push({kind: "none", chance: constant(shares.other.length, lost)});
  return all.filter(({kind}) => inCase(kind));
}

/** What one layout (or none) makes of the rows: chance by month for a label of that kind. */
export function rowsChance(book: ReadyBook, label: ReadyLabel, kind: string, rows: readonly PrintedRow[], in_: Case, ties: Ties): Float64Array {
  const context = rowContext(book, label, kind, in_, ties);
  const layout = kind === "none" ? [] : (label.kinds.get(kind)?.layout ?? []);
  const table = rows.map((row) => [...layout, null].map((line) => weighRow(book.parse(row, line), context)));
  const total = constant(book.n, 0);
  for (const {chances, chance} of arranged(rows, layout, label.extra, table)) {
    const joined = joinRows(chances, context);
    for (let t = 0; t < book.n; t++) total[t]! += chance * joined[t]!;
  }
  return total;
}

export interface Arranged {
  readonly lines: readonly (number | null)[];
  readonly chance: number;
  readonly chances: readonly RowChance[];
}

/** The arrangements of the rows on the layout that count: those too small to move any month by a part in 10^12 are left out. */
export function arranged(rows: readonly PrintedRow[], layout: readonly LayoutRow[], extra: number, table: readonly (readonly RowChance[])[]): Arranged[] {
  const tops = table.map((line) => line.map(top));
  const all = arrangements(rows, layout, extra, (o, l) => tops[o]![l]! > 0).map(({lines, chance}) => ({
    lines,
    chance,
    chances: lines.map((l, o) => table[o]![l ?? layout.length]!),
    bound: lines.reduce<number>((product, l, o) => product * tops[o]![l ?? layout.length]!, chance),
  }));
  const best = Math.max(...all.map(({bound}) => bound));
  return all.filter(({bound}) => bound > best * 1e-19);
}

function top(chance: RowChance): number {
  let most = 0;
  for (const vector of chance.values()) for (const value of vector) if (value > most) most = value;
  return most;
}

export function rowContext(book: ReadyBook, label: ReadyLabel, kind: string, in_: Case, ties: Ties): RowContext {
  const dating = label.dating(kind, in_);
  return {n: book.n, codes: book.codes, ties, share: (scheme) => dating.schemes.get(scheme) ?? null, unknown: dating.unknown};
}

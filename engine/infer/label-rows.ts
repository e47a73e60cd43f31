// What a label's kind and rows make of the months, the codes on them tied to where they are repeated.
import {affine} from "../num/vector.ts";
import type {Observation} from "../mark/observation.ts";
import {constant} from "../mark/ready-mark.ts";
import {addJoined, arrangements, mostPlaced, type Arrangement} from "../row/label-rows.ts";
import {codeNames} from "../row/parse.ts";
import {boundRow, mixedBound, type RowBound} from "../row/bound.ts";
import type {RowChance, RowContext} from "../row/weigh.ts";
import type {LayoutRow} from "../rule/schema.ts";
import {anyOther, type Case} from "../rule/when.ts";
import {versionsOf, type PrintedRow} from "../cell/printed-row.ts";
import type {CaseSpace} from "./cases.ts";
import type {ReadyBook, ReadyLabel} from "./ready-book.ts";
import type {Ties} from "./repeats.ts";

/** One label kind that the label may be, with its weight by month. */
interface KindChance {
  readonly kind: string;
  readonly chance: Float64Array;
}

/**
 * The label kinds that fit what was seen and the case, each with its chance by month.
 * @param misjudged  only the part in which the kind as seen is a stray one: its average share in every month
 */
export function kindsOf(label: ReadyLabel, seen: Observation | null, in_: Case, apart: CaseSpace["apart"], rows: number, misjudged = false): KindChance[] {
  const inCase = (kind: string) => in_.label === undefined || in_.label === kind || (in_.label === anyOther && !apart.label.includes(kind));
  if (seen?.kind === "choice") {
    return seen.values
      .filter(([kind]) => seen.values.length === 1 || inCase(kind))
      .map(([kind, weight]) => {
        const one = label.one(kind);
        const chance = label.mark.likelihood(one, in_);
        if (misjudged) return {kind, chance: constant(chance.length, weight * label.mark.strayChance(one, in_))};
        return {kind, chance: weight === 1 ? chance : affine(chance, weight)};
      });
  }
  const shares = label.shares(in_);
  const lost = rows > 0 ? 0 : label.mark.mark.lost;
  const all: KindChance[] = [...shares.values, ["other", shares.other] as const].map(([kind, share]) => ({kind, chance: affine(share, 1 - lost)}));
  if (lost > 0) all.push({kind: "none", chance: constant(shares.other.length, lost)});
  return all.filter(({kind}) => inCase(kind));
}

interface RowsSeen {
  readonly chances: Map<string, Float64Array>;
  /** The most that any arrangement has come to so far. */
  best: number;
}

const rowsSeen = new WeakMap<readonly PrintedRow[], RowsSeen>();

/**
 * What one layout (or none) makes of the rows: chance by month for a label of that kind. Remembered as long as the rows.
 * @param months  outside of them the kind does not occur, and the rows are not weighed
 * @param trifle  arrangements below this part of the best are left out
 */
export function rowsChance(book: ReadyBook, label: ReadyLabel, kind: string, months: Months, rows: readonly PrintedRow[], in_: Case, ties: Ties, trifle: number): Float64Array {
  const context = rowContext(book, label, kind, months, in_, ties);
  let known = rowsSeen.get(rows);
  if (!known) rowsSeen.set(rows, (known = {chances: new Map(), best: 0}));
  const key = `${book.book.book}|${layoutKey(label, kind)}|${context.key}`;
  let found = known.chances.get(key);
  if (!found) {
    const layout = layoutOf(label, kind);
    found = constant(book.n, 0);
    const {kept, best} = arranged(rows, layout, label.extra, rowTable(book, layout, rows, context), trifle, known.best);
    known.best = best;
    for (const {chances, chance} of kept) addJoined(found, chances, chance, context);
    known.chances.set(key, found);
  }
  return found;
}

const noLayout: readonly LayoutRow[] = [];

/** The layout rows of a label kind; none for a kind that the book does not know. */
export function layoutOf(label: ReadyLabel, kind: string): readonly LayoutRow[] {
  return (kind === "none" ? null : label.kinds.get(kind)?.layout) ?? noLayout;
}

/** The rows of a label as each line of its layout and, last, as a row of unknown layout; weighed by month only when asked for. */
export interface RowTable {
  bound(o: number, l: number): RowBound;
  chance(o: number, l: number): RowChance;
}

export function rowTable(book: ReadyBook, layout: readonly LayoutRow[], rows: readonly PrintedRow[], context: RowContext): RowTable {
  return {
    bound: (o, l) => mixedBound(versionsOf(rows[o]!).map(({row, weight}) => [weight, boundRow(book.parse(row, layout[l] ?? null), context)])),
    chance: (o, l) => book.weigh(rows[o]!, layout[l] ?? null, context),
  };
}

export interface Arranged {
  readonly lines: readonly (number | null)[];
  readonly chance: number;
  readonly chances: readonly RowChance[];
}

/**
 * The arrangements of the rows on the layout that count: those below `trifle` of the best cannot move any month by a billionth.
 * @param before  the best of other cases of the same rows
 */
export function arranged(
  rows: readonly PrintedRow[],
  layout: readonly LayoutRow[],
  extra: number,
  table: RowTable,
  trifle: number,
  before = 0,
): {kept: Arranged[]; best: number} {
  const free = layout.length;
  const bounds = rows.map((_, o) => Array.from({length: free + 1}, (_, l) => table.bound(o, l)));
  const all: {lines: readonly (number | null)[]; chance: number; bound: number}[] = [];
  let best = before;
  const consider = ({lines, chance}: Arrangement, bound: number) => {
    if (bound <= best * trifle) return;
    if (bound > best) best = bound;
    all.push({lines, chance, bound});
  };
  for (const one of arrangements(rows, layout, extra, placedRows(bounds, rows.length))) consider(one, one.chance * boundOf(one.lines.map((l, o) => bounds[o]![l ?? free]!)));
  const kept = all.filter(({bound}) => bound > best * trifle);
  return {kept: kept.map(({lines, chance}) => ({lines, chance, chances: lines.map((l, o) => table.chance(o, l ?? free))})), best};
}

/** The product of rows' bounds; a code that only one row can show must there be the garment's own. */
function boundOf(rows: readonly RowBound[]): number {
  let once = 0;
  let twice = 0;
  for (const {shows} of rows) {
    twice |= once & shows;
    once |= shows;
  }
  return rows.reduce((product, row) => product * (row.shows & twice ? row.any : row.alone), 1);
}

/** The rows that gain most by standing on a line of the layout; see `mostPlaced`. */
function placedRows(bounds: readonly (readonly RowBound[])[], count: number): boolean[] {
  let left = mostPlaced(count);
  if (left === count) return bounds.map(() => true);
  const gain = bounds.map((line) => Math.max(0, ...line.slice(0, -1).map(({any}) => any)) / Math.max(line.at(-1)!.any, 1e-300));
  const least = [...gain].sort((a, b) => b - a)[left - 1]!;
  return gain.map((g) => g >= least && left-- > 0);
}

/** A stretch of months, `until` not included, counted from the first of the book. */
export interface Months {
  readonly from: number;
  readonly until: number;
}

/** The months from the first to the last with a value above 0. */
export function monthsOf(chance: Float64Array): Months {
  let from = 0;
  let until = chance.length;
  while (from < until && chance[from] === 0) from++;
  while (until > from && chance[until - 1] === 0) until--;
  return {from, until};
}

const contexts = new WeakMap<Ties, Map<string, RowContext>>();

export function rowContext(book: ReadyBook, label: ReadyLabel, kind: string, {from, until}: Months, in_: Case, ties: Ties): RowContext {
  let known = contexts.get(ties);
  if (!known) contexts.set(ties, (known = new Map()));
  const dating = label.dating(kind, in_);
  const dated = `${dating.key}|${from}-${until}`;
  let found = known.get(dated);
  if (!found) {
    const tied = codeNames.filter((name) => ties[name]);
    found = {
      n: book.n,
      from,
      until,
      codes: book.codes,
      tied,
      ties,
      dating,
      key: `${dated}|${tied.map((name) => `${name}:${ties[name]!.key}`).join(";")}`,
      looseKey: `${dated}|${tied.join()}`,
    };
    known.set(dated, found);
  }
  return found;
}

const layoutKeys = new WeakMap<readonly LayoutRow[], string>();

/** Label kinds with the same layout read rows alike. */
function layoutKey(label: ReadyLabel, kind: string): string {
  const layout = layoutOf(label, kind);
  let key = layoutKeys.get(layout);
  if (key === undefined) layoutKeys.set(layout, (key = layout.length === 0 ? "" : JSON.stringify(layout)));
  return key;
}

// The label, its rows and the codes repeated elsewhere hang together through hidden values: they are weighed as one factor.
import {affine, mean, multiplyInto} from "../num/vector.ts";
import type {Observation} from "../mark/observation.ts";
import {constant} from "../mark/ready-mark.ts";
import {addJoined, arrangements} from "../row/label-rows.ts";
import {codeNames, type CodeName} from "../row/parse.ts";
import {anyCode, trueChance, type CodeClass, type Repeat, type Tie} from "../row/tie.ts";
import type {RowChance, RowContext} from "../row/weigh.ts";
import type {LayoutRow} from "../rule/schema.ts";
import {anyOther, type Case} from "../rule/when.ts";
import type {PrintedRow} from "../cell/printed-row.ts";
import type {CaseSpace} from "./cases.ts";
import type {SeenRepeat} from "./evidence.ts";
import {repeatShare, type ReadyBook, type ReadyLabel} from "./ready-book.ts";

export type Ties = Partial<Record<CodeName, Tie>>;

/** How a repeat may be stray: by itself, and with its piece where nothing else was seen on it. */
export interface StrayChance {
  readonly own: number;
  readonly stray: number;
}

/** A repeat with the chances of belonging and being stray that its piece leaves it. */
export interface TiedRepeat {
  readonly repeat: SeenRepeat;
  readonly piece: StrayChance;
}

interface RepeatSight {
  readonly texts: Repeat["texts"];
  readonly share: Float64Array;
  /** Chance by month when it belongs. */
  readonly chance: Float64Array;
  readonly mean: number;
}

const sights = new WeakMap<SeenRepeat, RepeatSight>();

/** What a repeat shows, against its code list; worked out once. */
function repeatSight(book: ReadyBook, repeat: SeenRepeat): RepeatSight {
  let found = sights.get(repeat);
  if (!found) {
    const {mark, texts} = repeat;
    const cells = texts.map(({row, weight}) => ({cells: row.cells.map((cell) => cell.weights), weight, shown: row.text}));
    const share = repeatShare(mark.mark, book.axis);
    const kept = 1 - mark.mark.lost;
    const chance = trueChance(cells, share, book.codes[mark.mark.of]!).map((p) => p * kept);
    sights.set(repeat, (found = {texts: cells, share, chance, mean: mean(chance)}));
  }
  return found;
}

/** Repeats made ready for tying, by the code that they repeat. */
export function readyRepeats(book: ReadyBook, tied: readonly TiedRepeat[]): Map<CodeName, Repeat[]> {
  const result = new Map<CodeName, Repeat[]>();
  for (const {repeat, piece} of tied) {
    const {mark} = repeat;
    if (!book.codes[mark.mark.of]) continue;
    const {texts, share, mean: average} = repeatSight(book, repeat);
    const list = result.get(mark.mark.of) ?? [];
    list.push({
      mark: mark.id,
      texts,
      share,
      own: piece.own * (1 - mark.mark.stray) * (1 - mark.mark.lost),
      base: (piece.stray + piece.own * mark.mark.stray) * average,
    });
    result.set(mark.mark.of, list);
  }
  return result;
}

/** The average chance of a repeat's texts over the months: what a stray one shows. */
export function repeatAverage(book: ReadyBook, repeat: SeenRepeat): number {
  return repeatSight(book, repeat).mean;
}

/** The ties that a case needs: codes with repeats, and codes that rules tell apart. */
export function tiesOf(book: ReadyBook, repeats: ReadonlyMap<CodeName, readonly Repeat[]>, in_: Case, apart: CaseSpace["apart"]): Ties {
  const ties: Ties = {};
  for (const name of codeNames) {
    const codes = book.codes[name];
    const told = name === "fabric" ? [] : apart[name];
    const own = repeats.get(name) ?? [];
    if (!codes || (own.length === 0 && told.length === 0)) continue;
    ties[name] = book.tie(name, own, classOf(codes.codes, told, name === "fabric" ? undefined : in_[name]));
  }
  return ties;
}

function classOf(codes: readonly string[], told: readonly string[], value: string | undefined): CodeClass {
  if (told.length === 0 || value === undefined) return anyCode;
  if (value === anyOther) return {key: `not ${told.join()}`, has: (j) => !told.includes(codes[j]!), unlisted: true};
  return {key: value, has: (j) => codes[j] === value, unlisted: false};
}

/** The chance by month of the ties' classes and repeats when no label tells the codes. */
export function tiesAlone(ties: Ties, n: number): Float64Array {
  const result = constant(n, 1);
  for (const name of codeNames) if (ties[name]) multiplyInto(result, ties[name].alone);
  return result;
}

/** Chance by month of a repeat, its own strays counted, the garment's code drawn like any other. */
export function repeatMarginal(book: ReadyBook, repeat: SeenRepeat): Float64Array {
  const {chance, mean: average} = repeatSight(book, repeat);
  const {stray} = repeat.mark.mark;
  return affine(chance, 1 - stray, stray * average);
}

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

const rowsSeen = new WeakMap<readonly PrintedRow[], Map<string, Float64Array>>();

/** What one layout (or none) makes of the rows: chance by month for a label of that kind. Remembered as long as the rows. */
export function rowsChance(book: ReadyBook, label: ReadyLabel, kind: string, rows: readonly PrintedRow[], in_: Case, ties: Ties): Float64Array {
  const context = rowContext(book, label, kind, in_, ties);
  let known = rowsSeen.get(rows);
  if (!known) rowsSeen.set(rows, (known = new Map()));
  const key = `${book.book.book}|${kind}|${context.key}`;
  let found = known.get(key);
  if (!found) {
    const layout = layoutOf(label, kind);
    found = constant(book.n, 0);
    for (const {chances, chance} of arranged(rows, layout, label.extra, rowTable(book, layout, rows, context))) addJoined(found, chances, chance, context);
    known.set(key, found);
  }
  return found;
}

/** The layout rows of a label kind; none for a kind that the book does not know. */
export function layoutOf(label: ReadyLabel, kind: string): readonly LayoutRow[] {
  return kind === "none" ? [] : (label.kinds.get(kind)?.layout ?? []);
}

/** The chance of each row as each line of the layout and, last, as a row of unknown layout. */
export function rowTable(book: ReadyBook, layout: readonly LayoutRow[], rows: readonly PrintedRow[], context: RowContext): RowChance[][] {
  return rows.map((row) => [...layout, null].map((line) => book.weigh(row, line, context)));
}

export interface Arranged {
  readonly lines: readonly (number | null)[];
  readonly chance: number;
  readonly chances: readonly RowChance[];
}

/** The arrangements of the rows on the layout that count: those too small to move any month by a part in 10^9 are left out. */
export function arranged(rows: readonly PrintedRow[], layout: readonly LayoutRow[], extra: number, table: readonly (readonly RowChance[])[]): Arranged[] {
  const most = table.map((line) => line.map(top));
  const all = arrangements(rows, layout, extra, (o, l) => most[o]![l]! > 0).map(({lines, chance}) => ({
    lines,
    chance,
    chances: lines.map((l, o) => table[o]![l ?? layout.length]!),
    bound: lines.reduce<number>((product, l, o) => product * most[o]![l ?? layout.length]!, chance),
  }));
  const best = Math.max(...all.map(({bound}) => bound));
  return all.filter(({bound}) => bound > best * 1e-12);
}

const tops = new WeakMap<RowChance, number>();

function top(chance: RowChance): number {
  let most = tops.get(chance) ?? -1;
  if (most >= 0) return most;
  most = 0;
  for (const vector of chance.values()) {
    if (typeof vector === "number") most = Math.max(most, vector);
    else for (let t = 0; t < vector.length; t++) if (vector[t]! > most) most = vector[t]!;
  }
  tops.set(chance, most);
  return most;
}

export function rowContext(book: ReadyBook, label: ReadyLabel, kind: string, in_: Case, ties: Ties): RowContext {
  const dating = label.dating(kind, in_);
  const tied = codeNames.filter((name) => ties[name]);
  return {
    n: book.n,
    codes: book.codes,
    tied,
    ties,
    key: `${dating.key}|${tied.map((name) => `${name}:${ties[name]!.key}`).join(";")}`,
    share: (scheme) => dating.schemes.get(scheme) ?? null,
    unknown: dating.unknown,
  };
}

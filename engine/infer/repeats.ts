// Codes repeated elsewhere on the garment, made ready for tying to the label's rows.
import {affine, mean, multiplyInto} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import {innerBoundaries} from "../row/figures.ts";
import {codeNames, type CodeName} from "../row/parse.ts";
import {anyCode, trueChance, type CodeClass, type Repeat, type Tie} from "../row/tie.ts";
import {anyOther, type Case} from "../rule/when.ts";
import type {CaseSpace} from "./cases.ts";
import type {SeenRepeat} from "./evidence.ts";
import {repeatShare, type ReadyBook} from "./ready-book.ts";

/** The ties of a case; one and the same object for the same repeats and classes. */
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

/** What a repeat shows, against its code list. */
interface RepeatSight {
  readonly id: number;
  readonly texts: Repeat["texts"];
  readonly share: Float64Array;
  /** Chance by month when it belongs. */
  readonly chance: Float64Array;
  readonly mean: number;
}

const sights = new WeakMap<ReadyBook, WeakMap<SeenRepeat["texts"], RepeatSight>>();
let lastSight = 0;

/** Worked out once for a text: the same texts come again and again in a batch. */
function repeatSight(book: ReadyBook, {mark, texts}: SeenRepeat): RepeatSight {
  let known = sights.get(book);
  if (!known) sights.set(book, (known = new WeakMap()));
  let found = known.get(texts);
  if (!found) {
    const cells = texts.map(({row, weight}) => ({
      cells: row.cells.map((cell) => cell.weights),
      weight: weight * innerBoundaries(row, 0, row.cells.length),
      shown: row.text,
    }));
    const share = repeatShare(mark.mark, book.axis);
    const chance = affine(trueChance(cells, share, book.codes[mark.mark.of]!), 1 - mark.mark.lost);
    known.set(texts, (found = {id: ++lastSight, texts: cells, share, chance, mean: mean(chance)}));
  }
  return found;
}

/** The average chance of a repeat's texts over the months: what a stray one shows. */
export function repeatAverage(book: ReadyBook, repeat: SeenRepeat): number {
  return repeatSight(book, repeat).mean;
}

/** Chance by month of a repeat, its own strays counted, the garment's code drawn like any other. */
export function repeatMarginal(book: ReadyBook, repeat: SeenRepeat): Float64Array {
  const {chance, mean: average} = repeatSight(book, repeat);
  const {stray} = repeat.mark.mark;
  return affine(chance, 1 - stray, stray * average);
}

const tied = new WeakMap<ReadyBook, Map<string, Ties>>();
const mostTies = 500;

/** The ties that a case needs: codes with repeats, and codes that rules tell apart. */
export function tiesOf(book: ReadyBook, repeats: readonly TiedRepeat[], in_: Case, apart: CaseSpace["apart"]): Ties {
  let known = tied.get(book);
  if (!known) tied.set(book, (known = new Map()));
  const classes = `${apart.plant.length > 0 ? (in_.plant ?? "") : "-"}/${apart.plant.join()}|${apart.lot.length > 0 ? (in_.lot ?? "") : "-"}/${apart.lot.join()}`;
  const usable = repeats.filter(({repeat}) => book.codes[repeat.mark.mark.of]);
  const key = `${classes}|${usable.map(({repeat, piece}) => `${repeatSight(book, repeat).id}:${piece.own}:${piece.stray}`).join()}`;
  let found = known.get(key);
  if (!found) {
    found = makeTies(book, usable, in_, apart);
    if (known.size >= mostTies) known.delete(known.keys().next().value!);
    known.set(key, found);
  }
  return found;
}

function makeTies(book: ReadyBook, repeats: readonly TiedRepeat[], in_: Case, apart: CaseSpace["apart"]): Ties {
  const ties: Ties = {};
  for (const name of codeNames) {
    const codes = book.codes[name];
    const told = name === "fabric" ? [] : apart[name];
    const own = repeats.filter(({repeat}) => repeat.mark.mark.of === name).map((each) => readyRepeat(book, each));
    if (!codes || (own.length === 0 && told.length === 0)) continue;
    ties[name] = book.tie(name, own, classOf(codes.codes, told, name === "fabric" ? undefined : in_[name]));
  }
  return ties;
}

function readyRepeat(book: ReadyBook, {repeat, piece}: TiedRepeat): Repeat {
  const {mark} = repeat;
  const {texts, share, mean: average} = repeatSight(book, repeat);
  return {
    mark: mark.id,
    texts,
    share,
    own: piece.own * (1 - mark.mark.stray) * (1 - mark.mark.lost),
    base: (piece.stray + piece.own * mark.mark.stray) * average,
  };
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

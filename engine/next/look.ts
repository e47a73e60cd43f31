// What to look at next: every mark not yet examined, by the bits it is expected to settle for its effort.
import {codeOutcomes} from "../mark/coded.ts";
import {constant, outcome, type Outcome, type ReadyMark} from "../mark/ready-mark.ts";
import {mean, normalized} from "../num/vector.ts";
import {readTypedRow} from "../cell/printed-row.ts";
import {marketWeights} from "../infer/cases.ts";
import {evaluate, rescoped, type CaseJoint, type Evaluation} from "../infer/evaluate.ts";
import {rowsId, type Seen} from "../infer/evidence.ts";
import {everything} from "../infer/factors.ts";
import {kindsOf} from "../infer/hub.ts";
import {labelId, repeatShare, type ReadyBook} from "../infer/ready-book.ts";
import type {RowReadings} from "../infer/readings.ts";
import {anyOther, Distinctions, type Case} from "../rule/when.ts";
import type {RepeatMark} from "../rule/schema.ts";
import type {Bits} from "../units.ts";
import {expectedBits, type Group} from "./information.ts";

export interface NextLook {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  /** How to look, in words; empty when the book describes no place. */
  readonly look: string;
  /** Expected drop of entropy over months. */
  readonly bits: Bits;
  /** 1 a glance to 5 tools. */
  readonly effort: number;
  readonly opensSeam: boolean;
}

interface Asked {
  readonly evaluations: readonly Evaluation[];
  readonly seen: Seen;
  readonly readings: readonly RowReadings[];
  /** Marks that the owner could not look at or has looked at. */
  readonly skip: ReadonlySet<string>;
  readonly posterior: Float64Array;
}

/** Ranks the looks by expected bits per effort; looks that open a seam come last. */
export function nextLooks(asked: Asked): NextLook[] {
  const marks = new Map<string, {mark: ReadyMark; book: ReadyBook}>();
  for (const {evidence} of asked.evaluations) {
    for (const book of new Set([...(evidence.view.own ? [evidence.view.own] : []), ...evidence.view.books])) {
      for (const [id, mark] of book.marks) if (!marks.has(id) && !asked.skip.has(id)) marks.set(id, {mark, book});
      if (book.label && !marks.has(labelId) && !asked.skip.has(labelId)) marks.set(labelId, {mark: book.label.mark, book});
    }
  }
  const total = asked.evaluations.reduce((sum, {joint}) => sum + joint.reduce((a, b) => a + b, 0), 0);
  const looks = [...marks].map(([id, {mark, book}]) => {
    const joints = mark.mark.kind === "repeat" ? repeatGroups(asked, mark as ReadyMark & {mark: RepeatMark}, total) : markGroups(asked, id, mark, total);
    return look(id, mark.mark.name, mark.mark.place, book, joints.length > 0 ? expectedBits(joints, asked.posterior) : (0 as Bits));
  });
  const rows = asked.skip.has(rowsId) ? null : rowsLook(asked, total);
  if (rows) looks.push(rows);
  return looks
    .filter(({bits}) => bits > 1e-4)
    .sort((a, b) => Number(a.opensSeam) - Number(b.opensSeam) || b.bits / b.effort - a.bits / a.effort || (a.id < b.id ? -1 : 1));
}

function look(id: string, name: string, place: string, book: ReadyBook, bits: Bits): NextLook {
  const described = book.book.places[place];
  return {id, name, place: described?.name ?? place, look: described?.look ?? "", bits, effort: described?.effort ?? 2, opensSeam: described?.cost === "opens a seam"};
}

/** The cases in which a mark's outcomes differ, each with its joint; circumstances that no seen mark told apart are weighed by their prior. */
function markGroups(asked: Asked, id: string, mark: ReadyMark, total: number): Group[] {
  const apart = new Distinctions();
  mark.distinguish(apart);
  return asked.evaluations.flatMap((evaluation) => {
    const known = evaluation.evidence.view.books.some((book) => book.marks.get(id) === mark) || evaluation.evidence.view.own?.label?.mark === mark;
    return evaluation.cases.flatMap((c) => {
      if (!known) return [{joint: scaled(c.joint, 1 / total), outcomes: [outcome("none", constant(c.joint.length, 1))]}];
      return spread(evaluation, apart, c.case).map(({case: in_, weight}) => group(evaluation, mark, c, in_, weight / total));
    });
  });
}

function spread(evaluation: Evaluation, apart: Distinctions, in_: Case): {case: Case; weight: number}[] {
  const markets = apart.values("market");
  if (markets.length === 0 || in_.market !== undefined) return [{case: in_, weight: 1}];
  const weights = marketWeights(evaluation.evidence);
  const all = Object.values(weights).reduce((sum, w) => sum + w, 0);
  if (!(all > 0)) return [{case: {...in_, market: anyOther}, weight: 1}];
  const named = markets.map((market) => ({case: {...in_, market}, weight: (weights[market] ?? 0) / all}));
  const rest = 1 - named.reduce((sum, {weight}) => sum + weight, 0);
  return [...named, {case: {...in_, market: anyOther}, weight: Math.max(0, rest)}].filter(({weight}) => weight > 0);
}

const scaled = (vector: Float64Array, factor: number) => vector.map((p) => p * factor);

/** A mark's outcomes with strays counted: its own, and its piece's when marks on that piece were already seen. */
function group(evaluation: Evaluation, mark: ReadyMark, c: CaseJoint, in_: Case, factor: number): Group {
  const joint = scaled(c.joint, factor);
  const outcomes = mixedOutcomes(mark, in_);
  const piece = mark.mark.piece;
  const holder = piece ? c.factors.find((f) => f.pieces.includes(piece)) : undefined;
  if (!piece || !holder) return {joint, outcomes};
  const {stray, own} = straysOf(evaluation, piece)[evaluation.cases.indexOf(c)]!;
  return {
    joint,
    outcomes: outcomes.map(({name, at, chance}) => {
      const average = chance.reduce((sum, p, i) => sum + p * own[at ? at[i]! : i]!, 0);
      return outcome(name, c.joint.map((all, t) => (all > 0 ? (1 - stray[t]! / all) * valueAt({at, chance}, t) + (stray[t]! / all) * average : 0)));
    }),
  };
}

interface PieceStray {
  /** Joint with the piece stray. */
  readonly stray: Float64Array;
  /** Month of the garment that a stray piece would have come from. */
  readonly own: Float64Array;
}

const pieceStrays = new WeakMap<Evaluation, Map<string, PieceStray[]>>();

function straysOf(evaluation: Evaluation, piece: string): PieceStray[] {
  let known = pieceStrays.get(evaluation);
  if (!known) pieceStrays.set(evaluation, (known = new Map()));
  let found = known.get(piece);
  if (!found) {
    const stray = rescoped(evaluation, {...everything, fixed: {piece, stray: true}}, [piece]);
    found = evaluation.cases.map((c, i) => ({
      stray: stray[i]!,
      own: normalized(c.factors.find((factor) => factor.pieces.includes(piece))!.vector),
    }));
    known.set(piece, found);
  }
  return found;
}

const valueAt = ({at, chance}: Pick<Outcome, "at" | "chance">, t: number) => (at ? (chance[at.indexOf(t)] ?? 0) : chance[t]!);

const mixed = new WeakMap<ReadyMark, Map<string, readonly Outcome[]>>();

function mixedOutcomes(mark: ReadyMark, in_: Case): readonly Outcome[] {
  let known = mixed.get(mark);
  if (!known) mixed.set(mark, (known = new Map()));
  const key = JSON.stringify(in_);
  let found = known.get(key);
  if (!found) {
    found = mixOutcomes(mark.outcomes(in_), mark.mark.stray, mark.n);
    known.set(key, found);
  }
  return found;
}

/** Counts a stray rate into outcomes; the strays' average goes into dense outcomes, sparse ones keep it as one outcome of its own. */
function mixOutcomes(outcomes: readonly Outcome[], stray: number, n: number): Outcome[] {
  let sparse = 0;
  const result = outcomes.map(({name, at, chance}) => {
    if (!at) {
      const base = stray * mean(chance);
      return outcome(name, chance.map((p) => (1 - stray) * p + base));
    }
    sparse += (stray * chance.reduce((a, b) => a + b, 0)) / n;
    return outcome(name, chance.map((p) => (1 - stray) * p), at);
  });
  if (sparse > 0) result.push(outcome("stray", constant(n, sparse)));
  return result;
}

/** The outcomes of turning the button over: the codes that the rows leave open, each weighed as if it stood there. */
function repeatGroups(asked: Asked, mark: ReadyMark & {mark: RepeatMark}, total: number): Group[] {
  const of = mark.mark.of;
  return asked.evaluations.flatMap((evaluation) => {
    const book = evaluation.evidence.view.own;
    const codes = book?.codes[of];
    if (!book || !codes || !book.marks.has(mark.id)) return evaluation.cases.map((c) => ({joint: scaled(c.joint, 1 / total), outcomes: [outcome("none", constant(book?.n ?? c.joint.length, 1))]}));
    const present = repeatShare(mark.mark, book.axis).map((s) => s * (1 - mark.mark.lost));
    const told = asked.readings.flatMap(({readings}) => readings.filter(({probability}) => probability > 0.01).map((reading) => reading[of]));
    const texts = [...new Set(told.filter((text): text is string => text !== null))].slice(0, 5);
    if (texts.length === 0) return aloneGroups(evaluation, codes, mark.mark.stray, present, total);
    return [supposed(evaluation, asked.seen, mark, texts, present, total)];
  });
}

function aloneGroups(evaluation: Evaluation, codes: NonNullable<ReadyBook["codes"]["plant"]>, stray: number, present: Float64Array, total: number): Group[] {
  const shown = (vector: Float64Array) => vector.map((p, t) => p * present[t]!);
  const outcomes = mixOutcomes(
    [
      ...codes.codes.map((code, j) => outcome(code, shown(codes.listed[j]!))),
      ...codes.widths.map((width, w) => outcome(`${w + 1} figures, unlisted`, shown(width))),
      outcome("none", present.map((p) => 1 - p)),
    ],
    stray,
    present.length,
  );
  return evaluation.cases.map((c) => ({joint: scaled(c.joint, 1 / total), outcomes}));
}

/** One group whose outcomes are computed by supposing each text seen; what is left is "another code". */
function supposed(evaluation: Evaluation, seen: Seen, mark: ReadyMark & {mark: RepeatMark}, texts: readonly string[], present: Float64Array, total: number): Group {
  const all = evaluation.joint;
  const left = Float64Array.from(all, (p, t) => p * present[t]!);
  const outcomes: Outcome[] = [outcome("none", present.map((p) => 1 - p))];
  const given = (vector: Float64Array) => vector.map((p, t) => (all[t]! > 0 ? Math.max(0, p) / all[t]! : 0));
  for (const text of texts) {
    const row = readTypedRow(text);
    if ("slip" in row) continue;
    const joint = evaluate({...evaluation.evidence, repeats: [...evaluation.evidence.repeats, {mark, texts: [{row, weight: 1}]}]}, seen).joint;
    for (let t = 0; t < left.length; t++) left[t]! -= joint[t]!;
    outcomes.push(outcome(text, given(joint)));
  }
  outcomes.push(outcome("another code", given(left)));
  return {joint: scaled(all, 1 / total), outcomes};
}

/** Reading the rows: the dates they could show, by the schemes that the label kind allows. */
function rowsLook(asked: Asked, total: number): NextLook | null {
  const groups: Group[] = [];
  let where: {book: ReadyBook; place: string} | null = null;
  for (const evaluation of asked.evaluations) {
    const {view, label} = evaluation.evidence;
    const book = view.own;
    if (!book?.label) continue;
    where ??= {book, place: "care-label-back"};
    for (const c of evaluation.cases) {
      const kinds = kindsOf(book.label, label, c.case, evaluation.space.apart, 1);
      const sum = kinds.reduce((all, {chance}) => all.map((p, t) => p + chance[t]!), constant(book.n, 0));
      for (const {kind, chance} of kinds) {
        groups.push({
          joint: c.joint.map((p, t) => (sum[t]! > 0 ? (p * chance[t]!) / sum[t]! / total : 0)),
          outcomes: dateOutcomes(book, kind, c.case),
        });
      }
    }
  }
  if (!where || groups.length === 0) return null;
  return look(rowsId, "rows of numbers on the label", where.place, where.book, expectedBits(groups, asked.posterior));
}

const dated = new WeakMap<ReadyBook, Map<string, readonly Outcome[]>>();

function dateOutcomes(book: ReadyBook, kind: string, in_: Case): readonly Outcome[] {
  let known = dated.get(book);
  if (!known) dated.set(book, (known = new Map()));
  const key = `${kind}|${JSON.stringify(in_)}`;
  let found = known.get(key);
  if (!found) {
    const layout = book.label!.kinds.get(kind)?.layout ?? [];
    const unreadable = layout.filter(({fields}) => fields.includes("date")).reduce((miss, {share}) => miss * (1 - share), 1);
    const dating = book.label!.dating(kind, in_);
    const kept = (share: Float64Array) => share.map((s) => s * (1 - unreadable));
    found = [
      ...[...dating.schemes].flatMap(([scheme, share]) => codeOutcomes(scheme, kept(share))),
      outcome("no date", dating.unknown.map((u) => unreadable + u * (1 - unreadable))),
    ];
    known.set(key, found);
  }
  return found;
}

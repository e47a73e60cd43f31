// What to look at next: every mark not yet examined, by the bits it is expected to settle for its effort.
import {constant, outcome, type Outcome, type ReadyMark} from "../mark/ready-mark.ts";
import {addInto, affine, normalized, sum, times} from "../num/vector.ts";
import {readTypedRow} from "../cell/printed-row.ts";
import {marketWeights} from "../infer/cases.ts";
import {evaluate, heavyCases, rescoped, type CaseJoint, type Evaluation} from "../infer/evaluate.ts";
import {rowsId, type Seen} from "../infer/evidence.ts";
import {everything} from "../infer/factor.ts";
import {kindsOf} from "../infer/label-rows.ts";
import {pieceRule} from "../infer/pieces.ts";
import {labelId, repeatShare, type ReadyBook} from "../infer/ready-book.ts";
import type {RowReadings} from "../infer/readings.ts";
import type {PieceLine} from "../explain/ledger.ts";
import type {RepeatMark} from "../rule/schema.ts";
import {bits, type Bits, type MonthIndex} from "../units.ts";
import {expectedBits, prepared, preparedBits, strayBits, supportOf, type Group, type PieceStray, type Prepared, type Support} from "./information.ts";
import {dateOutcomes, mixStrays, outcomesOf} from "./outcomes.ts";

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

/** What the ranking starts from. */
export interface Asked {
  readonly evaluations: readonly Evaluation[];
  readonly seen: Seen;
  readonly readings: readonly RowReadings[];
  readonly pieces: readonly PieceLine[];
  /** Marks that have been looked at. */
  readonly skip: ReadonlySet<string>;
  readonly posterior: Float64Array;
  readonly first: MonthIndex;
}

/** Looks expected to settle less than this many bits are not named. */
const leastBits = 1e-3;
/** A piece less likely stray than this is taken as belonging when the worth of looking at more of its marks is worked out. */
const leastStray = 0.01;

/** How finely rows are read, and how many codes are supposed, to tell what turning a button over is worth. */
const supposedTrifle = 1e-3;
const mostTexts = 3;

/** The case of one possible maker, its joint scaled so that all of them sum to 1. */
interface Scaled {
  readonly evaluation: Evaluation;
  readonly c: CaseJoint;
  readonly joint: Float64Array;
  readonly offset: number;
}

/** Ranks the looks by expected bits per effort; looks that open a seam come last. */
export function nextLooks(asked: Asked): NextLook[] {
  const scaled = scaledOf(asked);
  if (!scaled) return [];
  const spread = spreadOf(asked, scaled);
  const looks: NextLook[] = [];
  for (const [id, {mark, book}] of unseen(asked)) {
    const worth = mark.mark.kind === "repeat" ? expectedBits(repeatGroups(asked, scaled, mark as ReadyMark & {mark: RepeatMark}), asked.posterior, spread.support.at) : markBits(asked, scaled, mark, spread);
    if (worth > leastBits) looks.push(look(id, mark.mark.name, mark.mark.place, book, worth));
  }
  const rows = asked.skip.has(rowsId) ? null : rowsLook(asked, scaled);
  if (rows && rows.bits > leastBits) looks.push(rows);
  return looks.sort((a, b) => Number(a.opensSeam) - Number(b.opensSeam) || b.bits / b.effort - a.bits / a.effort || (a.id < b.id ? -1 : 1));
}

/** Null when nothing that was seen is possible. */
function scaledOf({evaluations, first}: Asked): Scaled[] | null {
  const total = evaluations.reduce((all, {joint}) => all + sum(joint), 0);
  if (!(total > 0)) return null;
  return evaluations.flatMap((evaluation) => heavyCases(evaluation).map((c) => ({evaluation, c, joint: affine(c.joint, 1 / total), offset: evaluation.evidence.view.axis.from - first})));
}

/**
 * What a look could show, maker by maker and case by case; null for one that is not among the looks.
 * @returns the groups, and the chance that the mark's piece is stray, which they leave out
 */
export function groupsOfLook(asked: Asked, id: string): {readonly groups: readonly Group[]; readonly stray: number} | null {
  const scaled = scaledOf(asked);
  if (!scaled) return null;
  if (id === rowsId) {
    const rows = rowsGroups(scaled);
    return rows && {groups: rows.groups, stray: 0};
  }
  const mark = unseen(asked).get(id)?.mark;
  if (!mark) return null;
  if (mark.mark.kind === "repeat") return {groups: repeatGroups(asked, scaled, mark as ReadyMark & {mark: RepeatMark}), stray: 0};
  const {piece} = mark.mark;
  return {groups: markGroups(scaled, mark, outcomesByCase(scaled, mark)), stray: asked.pieces.find((line) => line.id === piece)?.stray ?? 0};
}

function unseen({evaluations, skip}: Asked): Map<string, {mark: ReadyMark; book: ReadyBook}> {
  const marks = new Map<string, {mark: ReadyMark; book: ReadyBook}>();
  for (const {evidence} of evaluations) {
    for (const book of evidence.view.books) {
      for (const [id, mark] of book.marks) if (!marks.has(id) && !skip.has(id)) marks.set(id, {mark, book});
      if (book.label && !marks.has(labelId) && !skip.has(labelId)) marks.set(labelId, {mark: book.label.mark, book});
    }
  }
  return marks;
}

function look(id: string, name: string, place: string, book: ReadyBook, worth: Bits): NextLook {
  const described = book.book.places[place];
  return {id, name, place: described?.name ?? place, look: described?.look ?? "", bits: worth, effort: described?.effort ?? 2, opensSeam: described?.cost === "opens a seam"};
}

const knowsMark = ({evidence: {view}}: Evaluation, mark: ReadyMark) =>
  view.books.some((book) => book.marks.get(mark.id) === mark || book.label?.mark === mark);

function markBits(asked: Asked, scaled: readonly Scaled[], mark: ReadyMark, spread: Spread): Bits {
  const {piece} = mark.mark;
  const each = outcomesByCase(scaled, mark);
  const first = each[0]!;
  const stray = piece === undefined ? null : spread.stray(piece);
  if (first && each.every((other) => other === first)) {
    // One maker, or a mark that means the same for all: the outcomes are known by month, whatever the case.
    const lead = asked.first - mark.axis.from;
    return stray ? strayBits(first, spread.support, lead, stray) : preparedBits(first, spread.support, lead);
  }
  return expectedBits(markGroups(scaled, mark, each), asked.posterior, spread.support.at);
}

/** In each case; null where the maker's books do not know the mark. */
function outcomesByCase(scaled: readonly Scaled[], mark: ReadyMark): (Prepared | null)[] {
  const {piece} = mark.mark;
  return scaled.map(({evaluation, c}) => {
    if (!knowsMark(evaluation, mark)) return null;
    const unseen = piece !== undefined && !c.factors.some(({pieces}) => pieces.includes(piece));
    const markets = {weights: marketWeights(evaluation.evidence), apart: evaluation.space.apart.market};
    return outcomesOf(mark, c.case, markets, unseen ? pieceRule(evaluation.evidence, piece).stray : 0);
  });
}

/** Cases in which the mark means the same are one group. */
function markGroups(scaled: readonly Scaled[], mark: ReadyMark, each: readonly (Prepared | null)[]): Group[] {
  const groups = new Map<unknown, {joint: Float64Array; offset: number; outcomes: readonly Outcome[]; lead: number}>();
  scaled.forEach((s, i) => {
    const {view} = s.evaluation.evidence;
    const key = each[i] ? (view.maker === scaled[0]!.evaluation.evidence.view.maker ? each[i] : `${view.maker} ${i}`) : view;
    const group = groups.get(key);
    if (group) addInto(group.joint, s.joint);
    else {
      const outcomes = each[i]?.outcomes ?? [outcome("none", constant(s.joint.length, 1))];
      groups.set(key, {joint: s.joint.slice(), offset: s.offset, outcomes, lead: each[i] ? view.axis.from - mark.axis.from : 0});
    }
  });
  return [...groups.values()];
}

/** The answer as the looks need it: its months, and for each piece the chance that it is stray. */
interface Spread {
  readonly support: Support;
  stray(piece: string): PieceStray | null;
}

function spreadOf(asked: Asked, scaled: readonly Scaled[]): Spread {
  const known = new Map<string, PieceStray | null>();
  return {
    support: supportOf(asked.posterior),
    stray(piece) {
      let found = known.get(piece);
      if (found === undefined) {
        const line = asked.pieces.find(({id}) => id === piece);
        known.set(piece, (found = line && line.stray > leastStray ? pieceStray(asked, scaled, piece) : null));
      }
      return found;
    },
  };
}

/** By month: the chance that the piece is stray; and the month that a stray piece would itself be from. */
function pieceStray(asked: Asked, scaled: readonly Scaled[], piece: string): PieceStray {
  const away = constant(asked.posterior.length, 0);
  const own = constant(asked.posterior.length, 0);
  for (const evaluation of asked.evaluations) {
    const cases = scaled.filter((s) => s.evaluation === evaluation);
    const strays = rescoped(evaluation, {...everything, fixed: {piece, stray: true}}, cases.map(({c}) => c));
    const total = sum(evaluation.joint);
    const mass = cases.reduce((all, {joint}) => all + sum(joint), 0);
    cases.forEach(({c, offset}, i) => {
      const scale = total > 0 ? mass / total : 0;
      const factor = c.factors.find(({pieces}) => pieces.includes(piece));
      const months = factor ? normalized(factor.own) : null;
      const weight = scale * sum(strays[i]!);
      for (let t = 0; t < strays[i]!.length; t++) {
        away[offset + t]! += strays[i]![t]! * scale;
        if (months) own[offset + t]! += weight * months[t]!;
      }
    });
  }
  return {
    away: away.map((p, t) => (asked.posterior[t]! > 0 ? Math.min(1, p / asked.posterior[t]!) : 0)),
    own: supportOf(normalized(own)),
    chance: Math.min(1, sum(away)),
  };
}

/** Turning the button over: the codes that the rows leave open, each weighed as if it stood there. */
function repeatGroups(asked: Asked, scaled: readonly Scaled[], mark: ReadyMark & {mark: RepeatMark}): Group[] {
  const of = mark.mark.of;
  const told = asked.readings.flatMap(({readings}) => readings.filter(({probability}) => probability > 0.01).map((reading) => reading[of]));
  const texts = [...new Set(told.filter((text): text is string => text !== null))].slice(0, mostTexts);
  return asked.evaluations.flatMap((evaluation): Group[] => {
    const cases = scaled.filter((s) => s.evaluation === evaluation);
    const book = evaluation.evidence.view.own;
    if (!book?.codes[of] || !knowsMark(evaluation, mark)) return cases.map(({joint, offset}) => ({joint, offset, outcomes: [outcome("none", constant(joint.length, 1))]}));
    const present = affine(repeatShare(mark.mark, book.axis), 1 - mark.mark.lost);
    if (texts.length === 0) {
      const outcomes = codeOutcomesAlone(book.codes[of], mark.mark.stray, present);
      return cases.map(({joint, offset}) => ({joint, offset, outcomes}));
    }
    const joint = constant(book.n, 0);
    for (const s of cases) addInto(joint, s.joint);
    return [{joint, offset: cases[0]!.offset, outcomes: supposed(evaluation, asked.seen, mark, texts, present)}];
  });
}

function codeOutcomesAlone(codes: NonNullable<ReadyBook["codes"]["plant"]>, stray: number, present: Float64Array): readonly Outcome[] {
  const shown = (vector: Float64Array) => times(vector, present);
  return mixStrays(
    [
      ...codes.codes.map((code, j) => outcome(code, shown(codes.listed[j]!))),
      ...codes.widths.map((width, w) => outcome(`${w + 1} figures, unlisted`, shown(width))),
      outcome("none", affine(present, -1, 1)),
    ],
    stray,
    present.length,
  );
}

/** Outcomes worked out by supposing each text seen; what is left is "another code". */
function supposed(evaluation: Evaluation, seen: Seen, mark: ReadyMark & {mark: RepeatMark}, texts: readonly string[], present: Float64Array): Outcome[] {
  const all = evaluation.joint;
  const left = Float64Array.from(all, (p, t) => p * present[t]!);
  const given = (vector: Float64Array) => vector.map((p, t) => (all[t]! > 0 ? Math.max(0, p) / all[t]! : 0));
  const outcomes = [outcome("none", affine(present, -1, 1))];
  for (const text of texts) {
    const row = readTypedRow(text);
    if ("slip" in row) continue;
    const joint = evaluate({...evaluation.evidence, trifle: supposedTrifle, rows: [...evaluation.evidence.rows], repeats: [...evaluation.evidence.repeats, {mark, texts: [{row, weight: 1}]}]}, seen).joint;
    for (let t = 0; t < left.length; t++) left[t]! -= joint[t]!;
    outcomes.push(outcome(text, given(joint)));
  }
  return [...outcomes, outcome("another code", given(left))];
}

/** Reading the rows: the dates they could show, by the schemes that the label kind allows. */
function rowsLook(asked: Asked, scaled: readonly Scaled[]): NextLook | null {
  const found = rowsGroups(scaled);
  if (!found) return null;
  const {groups, named} = found;
  const [only] = groups;
  const worth = groups.length === 1 ? preparedBits(only!.prepared, supportOf(only!.joint), 0) : expectedBits(groups, asked.posterior);
  return look(rowsId, "rows of numbers on the label", "care-label-back", named, bits(worth));
}

/** Null when no possible maker has a label with rows. */
function rowsGroups(scaled: readonly Scaled[]): {readonly groups: readonly (Group & {readonly prepared: Prepared})[]; readonly named: ReadyBook} | null {
  const groups: (Group & {prepared: Prepared})[] = [];
  let named: ReadyBook | null = null;
  for (const {evaluation, c, joint, offset} of scaled) {
    const {view, label} = evaluation.evidence;
    const book = view.own;
    if (!book?.label) {
      const none = prepared([outcome("no date", constant(joint.length, 1))], joint.length);
      groups.push({joint, offset, outcomes: none.outcomes, prepared: none});
      continue;
    }
    named ??= book;
    const kinds = kindsOf(book.label, label, c.case, evaluation.space.apart, 1);
    const all = constant(book.n, 0);
    for (const {chance} of kinds) addInto(all, chance);
    for (const {kind, chance} of kinds) {
      const weighed = kinds.length === 1 ? joint : joint.map((p, t) => (all[t]! > 0 ? (p * chance[t]!) / all[t]! : 0));
      const ready = dateOutcomes(book, kind, c.case);
      groups.push({joint: weighed, offset, outcomes: ready.outcomes, prepared: ready});
    }
  }
  return named && {groups, named};
}

// Examines a garment: from what was written down to the finding.
//
//   garment ──1──► observations ──2──► makers, axis ──3──► evidence ──4──► joint over months, case by case
//                                                                                │
//   finding ◄──7── ledger, odd marks, two dates, next looks ◄──6── readings ◄──5── posterior, sets, bounds
//
// Every stage returns plain values, so that a trace can print it.
import type {Problem} from "../problem.ts";
import {entropyBits, normalized, sum} from "../num/vector.ts";
import {constant} from "../mark/ready-mark.ts";
import {bounds, credibleSet} from "../range/credible.ts";
import {byDecade, byYear} from "../range/groups.ts";
import {ledgerOf} from "../explain/ledger.ts";
import {oddMarks} from "../explain/odd.ts";
import {rulesUsed} from "../explain/rules-used.ts";
import {twoDates} from "../explain/two-dates.ts";
import {unreadCodes} from "../explain/unread.ts";
import {nextLooks, type Asked, type NextLook} from "../next/look.ts";
import {lookOutcomes, type LookOutcome} from "../next/look-outcomes.ts";
import type {Garment} from "../rule/garment.ts";
import type {Book} from "../rule/schema.ts";
import {monthIndex, probability, type MonthIndex} from "../units.ts";
import {evaluate, type Evaluation} from "./evaluate.ts";
import {evidenceFor, rowsId, type MakerView, type Seen} from "./evidence.ts";
import type {Brief, Finding} from "./finding.ts";
import {defaultSince, type ExamineOptions} from "./options.ts";
import {readingsOf} from "./readings.ts";
import {coveredSpan, readyBook, type ReadyBook} from "./ready-book.ts";
import {knownMarks, makeResolver, type Resolver} from "./resolve.ts";
import * as say from "./problems.ts";
import {addView, firstMonth, possibleMakers, viewsOf} from "./views.ts";

export type Examined<T> = {readonly finding: T; readonly problems?: never} | {readonly finding?: never; readonly problems: readonly Problem[]};

/** Books made ready once, to examine any number of garments. */
export interface Examiner {
  /** The whole finding, or what is wrong with the garment as written. */
  examine(garment: Garment): Examined<Finding>;
  /** Date, bounds, sets and makers only: a few times faster, for batches. */
  brief(garment: Garment): Examined<Brief>;
  /** The stages up to the joint, for tracing and for studies. */
  stages(garment: Garment): Examined<Stages>;
  /** The whole finding, and for its first next looks what each could show. @param most  of so many looks */
  lookAhead(garment: Garment, most: number): Examined<LookAhead>;
}

export interface LookAhead {
  readonly finding: Finding;
  readonly looks: readonly {readonly look: NextLook; readonly outcomes: readonly LookOutcome[]}[];
}

export interface Stages {
  readonly garment: Garment;
  readonly seen: Seen;
  readonly first: MonthIndex;
  readonly evaluations: readonly Evaluation[];
  readonly posterior: Float64Array;
}

/**
 * Makes books ready for examining.
 * @param books    validated books: public ones hold for every garment, makers' ones when the garment names them
 * @param options  `today` is the last month considered; the engine itself has no clock
 * @cost           some 50 ms for the shipped books; each examination then about a millisecond
 * @example
 * makeExaminer(books, {today: parseMonth("2026-11")}).examine(garment).finding.best
 */
export function makeExaminer(books: readonly Book[], options: ExamineOptions): Examiner {
  const since = options.since ?? defaultSince;
  const all = knownMarks(books);
  const open = books.filter(({kind}) => kind === "public");
  const resolvers = new Map<string, Resolver>();
  const ready = new Map<string, ReadyBook | null>();
  const views = new Map<string, MakerView[] | null>();

  const readyOn = (book: Book, first: MonthIndex): ReadyBook | null =>
    once(ready, `${book.book} ${first}`, () => {
      const axis = {from: first, until: options.today};
      const span = book.kind === "public" ? axis : coveredSpan(book, axis);
      return span && readyBook(book, span);
    });
  const resolverFor = (makers: readonly (string | null)[]): Resolver =>
    once(resolvers, makers.join(), () => makeResolver(knownMarks(books.filter(({kind, book}) => kind === "public" || makers.includes(book))), all));
  const viewsFor = (makers: readonly (string | null)[], first: MonthIndex): MakerView[] | null =>
    once(views, `${first} ${makers.join()}`, () => {
      const axis = {from: first, until: options.today};
      const own = (maker: string) => readyOn(books.find(({book}) => book === maker)!, first);
      return viewsOf(makers, open.map((book) => readyOn(book, first)!), own, axis, priorFor(options, first, options.today - first + 1));
    });

  const stages = (garment: Garment, trifle?: number): Examined<Stages> => {
    const {makers, problems: makerProblems} = possibleMakers(garment, books);
    const {seen, problems} = resolverFor(makers).resolve(garment);
    if (problems.length + makerProblems.length > 0) return {problems: [...makerProblems, ...problems]};
    const first = firstMonth(seen, books, since);
    const possible = viewsFor(makers, first);
    if (!possible) return {problems: [say.notPossible("maker")]};
    const evaluations = possible.map((view) => evaluate(evidenceFor(view, seen, possible, trifle), seen));
    const joint = constant(options.today - first + 1, 0);
    for (const evaluation of evaluations) addView(joint, first, evaluation.evidence.view, evaluation.joint);
    return {finding: {garment, seen, first, evaluations, posterior: normalized(joint)}};
  };

  return {
    stages: (garment) => stages(garment),
    brief(garment) {
      const staged = stages(garment, briefTrifle);
      return staged.finding ? {finding: briefOf(staged.finding)} : staged;
    },
    examine(garment) {
      const staged = stages(garment);
      return staged.finding ? {finding: wholeOf(staged.finding)} : staged;
    },
    lookAhead(garment, most) {
      const staged = stages(garment);
      if (!staged.finding) return staged;
      const finding = wholeOf(staged.finding);
      const asked = askedOf(staged.finding, finding);
      return {finding: {finding, looks: finding.next.slice(0, most).map((look) => ({look, outcomes: lookOutcomes(asked, look.id)}))}};
    },
  };
}

function once<T>(known: Map<string, T>, key: string, make: () => T): T {
  let found = known.get(key);
  if (found === undefined) known.set(key, (found = make()));
  return found;
}

/** A brief finding leaves out arrangements of rows below this part of the best: months are right to six places. */
const briefTrifle = 1e-9;

/** Examines one garment; for more than one, make an examiner once. */
export function examine(garment: Garment, books: readonly Book[], options: ExamineOptions): Examined<Finding> {
  return makeExaminer(books, options).examine(garment);
}

function priorFor(options: ExamineOptions, first: MonthIndex, n: number): Float64Array {
  if (!options.prior) return constant(n, 1 / n);
  const offset = (options.since ?? defaultSince) - first;
  return normalized(Float64Array.from({length: n}, (_, t) => Math.max(0, options.prior![t - offset] ?? 0)));
}

function briefOf({garment, first, evaluations, posterior}: Stages): Brief {
  let best = 0;
  for (let t = 1; t < posterior.length; t++) if (posterior[t]! > posterior[best]!) best = t;
  const totals = evaluations.map(({joint}) => sum(joint));
  const total = sum(totals);
  return {
    garment: garment.garment,
    first,
    posterior,
    best: {month: monthIndex(first + best), probability: probability(posterior[best]!)},
    sets: [0.5, 0.9, 0.95].map((share) => credibleSet(posterior, share, first)),
    ...bounds(posterior, 0.025, first),
    makers: evaluations.map(({evidence}, i) => ({maker: evidence.view.maker, probability: probability(total > 0 ? totals[i]! / total : 1 / totals.length)})),
    entropy: entropyBits(posterior),
    years: byYear(posterior, first),
    decades: byDecade(posterior, first),
  };
}

function wholeOf(stages: Stages): Finding {
  const {first, evaluations, posterior} = stages;
  const brief = briefOf(stages);
  const likeliest = evaluations[brief.makers.reduce((best, {probability: p}, i) => (p > brief.makers[best]!.probability ? i : best), 0)]!;
  const rows = readingsOf(likeliest);
  const ledger = ledgerOf(evaluations, posterior, first);
  return {
    ...brief,
    rows,
    unread: unreadCodes(likeliest, rows),
    ledger: ledger.lines,
    pieces: ledger.pieces,
    odd: oddMarks(ledger, likeliest),
    twoDates: twoDates(evaluations, first, posterior.length),
    next: nextLooks(askedOf(stages, {rows, pieces: ledger.pieces})),
    rules: rulesUsed(likeliest),
  };
}

function askedOf({evaluations, seen, posterior, first}: Stages, {rows: readings, pieces}: Pick<Finding, "rows" | "pieces">): Asked {
  const skip = new Set([...seen.marks.keys(), ...(seen.rows.length > 0 ? [rowsId] : [])]);
  return {evaluations, seen, readings, pieces, skip, posterior, first};
}

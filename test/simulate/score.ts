// Examines drawn garments and holds what was said against the truth.
import {makeExaminer, type Book, type Brief, type Examiner, type Finding, type Reading, type RowReadings} from "../../engine/index.ts";
import {sliceText} from "../../engine/cell/printed-row.ts";
import {sayStated} from "../../engine/scheme/say.ts";
import {monthIndex} from "../../engine/units.ts";
import {seeded} from "./random.ts";
import type {RowTruth} from "./rows.ts";
import {drawGarment, type Drawn, type Source, type Truth} from "./sampler.ts";

/** Something said with a probability, and whether it was so. */
export interface Said {
  readonly probability: number;
  readonly so: boolean;
}

export interface Scores {
  readonly draws: number;
  /** By set, 50, 90 and 95 %: the mass held as said, and whether the true month was in it. */
  readonly sets: readonly (readonly Said[])[];
  /** Draws made before "no earlier than", and after "no later than". */
  readonly tooEarly: number;
  readonly tooLate: number;
  /** Where the true month lies in the posterior, spread evenly within the month: uniform when all is honest. */
  readonly transform: readonly number[];
  readonly bestMonth: readonly Said[];
  readonly bestYear: readonly Said[];
  readonly strayMarks: readonly Said[];
  readonly strayPieces: readonly Said[];
  readonly readings: readonly Said[];
  readonly makers: readonly Said[];
}

/** Books for examining, when they differ from those that the garments were drawn from. */
export function examinerFor({makers, axis}: Source, books: readonly Book[] = makers): Examiner {
  return makeExaminer(books, {since: monthIndex(axis.from), today: monthIndex(axis.until)});
}

/**
 * Draws garments and scores the findings.
 * @param detailEvery  strays and readings, which take most of the time, are worked out for every so manieth garment; 0 for none
 */
export function scoreDraws(source: Source, draws: number, seed: number, {examiner = examinerFor(source), detailEvery = 1} = {}): Scores {
  const random = seeded(seed);
  const scorer = new Scorer();
  for (let i = 0; i < draws; i++) {
    const drawn = drawGarment(source, `draw ${i}`, random);
    scorer.add(examiner, drawn, random.next(), detailEvery > 0 && i % detailEvery === 0);
  }
  return scorer;
}

export const joinScores = (all: readonly Scores[]): Scores => {
  const flat = <T>(pick: (scores: Scores) => readonly T[]) => all.flatMap(pick);
  const count = (pick: (scores: Scores) => number) => all.reduce((sum, scores) => sum + pick(scores), 0);
  return {
    draws: count((s) => s.draws),
    sets: [0, 1, 2].map((i) => flat((s) => s.sets[i]!)),
    tooEarly: count((s) => s.tooEarly),
    tooLate: count((s) => s.tooLate),
    transform: flat((s) => s.transform),
    bestMonth: flat((s) => s.bestMonth),
    bestYear: flat((s) => s.bestYear),
    strayMarks: flat((s) => s.strayMarks),
    strayPieces: flat((s) => s.strayPieces),
    readings: flat((s) => s.readings),
    makers: flat((s) => s.makers),
  };
};

class Scorer implements Scores {
  draws = 0;
  sets: Said[][] = [[], [], []];
  tooEarly = 0;
  tooLate = 0;
  transform: number[] = [];
  bestMonth: Said[] = [];
  bestYear: Said[] = [];
  strayMarks: Said[] = [];
  strayPieces: Said[] = [];
  readings: Said[] = [];
  makers: Said[] = [];

  add(examiner: Examiner, {garment, truth}: Drawn, within: number, detail: boolean): void {
    const brief = detail ? examiner.examine(garment).finding : examiner.brief(garment).finding;
    if (!brief) throw new Error(`a drawn garment was not understood: ${JSON.stringify(garment)}`);
    this.draws++;
    this.months(brief, truth.month, within);
    if (brief.makers.length > 1) for (const {maker, probability} of brief.makers) this.makers.push({probability, so: maker === truth.maker});
    if ("ledger" in brief) this.details(brief as Finding, truth);
  }

  private details({ledger, pieces, rows, makers}: Finding, truth: Truth): void {
    for (const {id, stray} of ledger) if (stray !== null) this.strayMarks.push({probability: stray, so: truth.strayMarks.get(id)!});
    for (const {id, stray} of pieces) this.strayPieces.push({probability: stray, so: truth.strayPieces.get(id)!});
    if (makers.length === 1) rows.forEach((row, i) => this.row(row, truth.rows[i]!));
  }

  private months(brief: Brief, month: number, within: number): void {
    const t = month - brief.first;
    brief.sets.forEach(({mass, runs}, i) => this.sets[i]!.push({probability: mass, so: runs.some(({from, until}) => month >= from && month <= until)}));
    if (month < brief.noEarlier) this.tooEarly++;
    if (month > brief.noLater) this.tooLate++;
    const before = brief.posterior.slice(0, t).reduce((sum, p) => sum + p, 0);
    this.transform.push(before + within * brief.posterior[t]!);
    this.bestMonth.push({probability: brief.best.probability, so: brief.best.month === month});
    const years = new Map<number, number>();
    brief.posterior.forEach((p, i) => years.set(yearOf(brief.first + i), (years.get(yearOf(brief.first + i)) ?? 0) + p));
    const [year, probability] = [...years].reduce((a, b) => (b[1] > a[1] ? b : a));
    this.bestYear.push({probability, so: yearOf(month) === year});
  }

  private row({row, readings}: RowReadings, truth: RowTruth): void {
    const text = (cells: readonly [number, number] | null) => (cells ? sliceText(row, cells[0], cells[1]) : null);
    const right = (reading: Reading) =>
      reading.plant === text(truth.plant) && reading.lot === text(truth.lot) && reading.fabric === text(truth.fabric) &&
      (truth.date === null ? reading.date === null
        : reading.scheme === truth.date.scheme && reading.date === sayStated(truth.date.stated) && reading.brackets.some(({field, from}) => field === "date" && from === truth.date!.from));
    // Readings of next to no chance are many and say nothing.
    for (const reading of readings) if (reading.probability > 1e-3) this.readings.push({probability: reading.probability, so: right(reading)});
  }
}

const yearOf = (month: number) => 1900 + Math.floor(month / 12);

// Books are guesses: how the answers hold up in worlds whose windows are wrong, or whose marks changed together.
import {describe, expect, test} from "vitest";
import {gorsehill, saltmarsh, testSources} from "../simulate/books.ts";
import {long} from "../simulate/honest.ts";
import {seeded} from "../simulate/random.ts";
import {binOf} from "../simulate/reliability.ts";
import {examinerFor, joinScores, scoreDraws, type Scores} from "../simulate/score.ts";
import type {Book} from "../../engine/index.ts";
import {changedTogether, tempered, wrongWindows} from "../simulate/worlds.ts";

/** Garments of many worlds, all examined with the same book. */
function acrossWorlds(book: Book, worlds: number, each: number, seed: number, worldOf: (random: ReturnType<typeof seeded>) => Book): Scores {
  const source = testSources[book.book]!;
  const random = seeded(seed);
  const examiner = examinerFor(source, [book]);
  return joinScores(Array.from({length: worlds}, (_, w) => scoreDraws({...source, makers: [worldOf(random)]}, each, seed * 1000 + w, {examiner, detailEvery: 0})));
}

const held90 = (scores: Scores) => binOf(scores.sets[1]!);

describe("every window of the world is a year off, one way or the other", () => {
  // Floors: own choice, four standard errors below what ten thousand draws gave (0.896 and 0.916).
  for (const {book, each, floor} of [{book: gorsehill, each: 100, floor: 0.865}, {book: saltmarsh, each: long ? 100 : 8, floor: 0.82}]) {
    test(`the 90 % set of ${book.book} still holds most of the truth`, () => {
      const {so, said, count} = held90(acrossWorlds(book, long ? 100 : 20, each, 301, (random) => wrongWindows(book, 12, random)));
      console.log(`${book.book}, windows a year off: the 90 % set says ${said.toFixed(3)} and holds ${so.toFixed(3)} of ${count}`);
      expect(so).toBeGreaterThan(floor);
    });
  }
});

test("when all marks change together, tempering brings the sets back to what they say", () => {
  // One shift of up to four years, the same for all marks of a world: what one mark gets wrong, all get wrong.
  const coverage = (temper: number) => {
    const scores = acrossWorlds(tempered(gorsehill, temper), long ? 500 : 100, 25, 302, (random) => changedTogether(gorsehill, Object.keys(gorsehill.marks), 48, random));
    return scores.sets.map((set) => binOf(set).so);
  };
  const [plain, calm] = [coverage(1), coverage(0.6)];
  console.log(`marks changed together: the 50, 90 and 95 % sets hold ${plain.map((x) => x.toFixed(3))} as independent, ${calm.map((x) => x.toFixed(3))} with temper 0.6`);
  [0.5, 0.9, 0.95].forEach((nominal, i) => {
    expect(plain[i]!).toBeLessThan(nominal);
    expect(Math.abs(calm[i]! - nominal)).toBeLessThan(Math.abs(plain[i]! - nominal));
  });
});

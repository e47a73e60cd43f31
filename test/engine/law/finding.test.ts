// Laws that hold for every finding, whatever the books and the garment.
import fc from "fast-check";
import {describe, expect, test} from "vitest";
import type {Brief, Finding} from "../../../engine/index.ts";
import {allClose, close} from "../../helper/close.ts";
import {bookOf, markOf} from "../../helper/small-book.ts";
import {examinerOf, givens, plainGivens, type Given} from "./arbitrary.ts";

const settings = {seed: 7, numRuns: 1000};
const because = "probabilities, which sum to 1; the promise of the design is 1e-9";
const mass = (list: ArrayLike<number>) => Array.from(list).reduce((sum, p) => sum + p, 0);
const within = (value: number, least: number, most: number) => {
  if (!(value >= least && value <= most)) throw new Error(`${value} is not in [${least}, ${most}]`);
};

/** What an examination found; made-up garments never write what a book does not know. */
function foundBy<T extends Brief>({books, garment}: Given, depth: "brief" | "examine"): T {
  const result = examinerOf(books)[depth](garment);
  if (!result.finding) throw new Error(JSON.stringify(result.problems));
  return result.finding as T;
}

describe("for any books and any garment", () => {
  test("months and makers sum to 1, the sets hold their share one within the other, the bounds leave 2.5 %", () => {
    fc.assert(
      fc.property(givens, (given) => {
        const {posterior, makers, sets, first, noEarlier, noLater, best} = foundBy<Brief>(given, "brief");
        for (const p of posterior) within(p, 0, 1);
        close(mass(posterior), 1, {abs: 1e-9, because});
        close(mass(makers.map(({probability}) => probability)), 1, {abs: 1e-9, because});
        const inside = sets.map(({runs}) => new Set(runs.flatMap(({from, until}) => Array.from({length: until - from + 1}, (_, i) => from + i))));
        sets.forEach(({share, mass: held, months}, i) => {
          within(held, share - 1e-9, 1 + 1e-9);
          expect(months).toBe(inside[i]!.size);
          close(mass([...inside[i]!].map((m) => posterior[m - first]!)), held, {abs: 1e-9, because});
          if (i > 0) expect([...inside[i - 1]!].every((m) => inside[i]!.has(m))).toBe(true);
        });
        within(mass(posterior.slice(0, noEarlier - first)), 0, 0.025 + 1e-9);
        within(mass(posterior.slice(noLater - first + 1)), 0, 0.025 + 1e-9);
        expect(best.probability).toBe(Math.max(...posterior));
      }),
      settings,
    );
  });

  test("years and decades sum to 1, ledger and strays are chances, no look settles more than there is, readings sum to 1", () => {
    fc.assert(
      fc.property(plainGivens, (given) => {
        const {years, decades, ledger, pieces, odd, twoDates, next, entropy, rows} = foundBy<Finding>(given, "examine");
        for (const list of [years, decades]) close(mass(list.map(({probability}) => probability)), 1, {abs: 1e-9, because});
        for (const {bits, stray, moved} of ledger) {
          within(bits, 0, Infinity);
          within(moved, -1000, 1000);
          if (stray !== null) within(stray, 0, 1);
        }
        for (const {stray} of pieces) within(stray, 0, 1);
        for (const {probability} of odd) within(probability, 1 / 3, 1);
        if (twoDates) within(twoDates.probability, 0, 1);
        for (const {bits} of next) within(bits, 0, entropy + 1e-9);
        for (const {row, readings} of rows) {
          for (const {brackets} of readings) {
            let last = 0;
            for (const {from, until} of brackets) {
              expect(last <= from && from < until && until <= row.cells.length).toBe(true);
              last = until;
            }
          }
          if (readings.length > 0) close(mass(readings.map(({probability}) => probability)), 1, {abs: 1e-9, because});
        }
      }),
      {...settings, numRuns: 250},
    );
  });

  // Evidence that no month can explain leaves the flat answer; without the mark the answer has months of probability 0, and the
  // divergence of the one from the other is infinite, which no file of JSON can hold.
  test("the ledger's bits are finite even where marks that are never stray contradict each other", () => {
    const step = (begins: string, ends: string) => ({begins: [begins, begins], ends: [ends, ends]});
    const book = bookOf({
      marks: {
        early: markOf({kind: "presence", window: step("1962-01", "1963-12"), inside: 1, outside: 0}),
        late: markOf({kind: "presence", window: step("1966-01", "1967-12"), inside: 1, outside: 0}),
      },
    });
    const {ledger} = foundBy<Finding>({books: [book], garment: {garment: "torn", saw: {early: "present", late: "present"}}}, "examine");
    expect(ledger.every(({bits}) => Number.isFinite(bits))).toBe(true);
  });
});

// The chance that a tempered mark is stray divides by its likelihood, which is 0 where the mark cannot be: 0 · 0 / 0.
test("a tempered mark that is impossible in some month has a stray chance all the same", () => {
  const mark = (begins: string) => markOf({kind: "presence", window: {begins: [begins, begins]}, inside: 0.5, outside: 0});
  const book = bookOf({marks: {one: mark("1963-01"), two: mark("1964-01")}, groups: {both: {marks: ["one", "two"], temper: 0.5}}});
  const {ledger} = foundBy<Finding>({books: [book], garment: {garment: "plain", saw: {one: "present"}}}, "examine");
  expect(ledger.map(({stray}) => stray)).toEqual([0]);
});

describe("an examination is a function", () => {
  test("the same question has the same answer, from the same examiner and from a new one", () => {
    fc.assert(
      fc.property(givens, ({books, garment}) => {
        const examiner = examinerOf(books);
        const answer = examiner.examine(garment);
        expect(examiner.examine(garment)).toEqual(answer);
        expect(examinerOf(books).examine(garment)).toEqual(answer);
      }),
      {...settings, numRuns: 60},
    );
  });

  test("books and garment are left as they were", () => {
    fc.assert(
      fc.property(givens, ({books, garment}) => {
        const examiner = examinerOf(deepFrozen(books));
        expect(examiner.examine(deepFrozen(garment)).problems).toBeUndefined();
      }),
      {...settings, numRuns: 100},
    );
  });

  test("a brief is the same as the head of the whole finding", () => {
    fc.assert(
      fc.property(givens, ({books, garment}) => {
        const examiner = examinerOf(books);
        const [brief, whole] = [examiner.brief(garment).finding!, examiner.examine(garment).finding!];
        allClose(brief.posterior, whole.posterior, {rel: 0});
        expect([brief.best, brief.sets, brief.noEarlier, brief.noLater, brief.makers]).toEqual([whole.best, whole.sets, whole.noEarlier, whole.noLater, whole.makers]);
      }),
      {...settings, numRuns: 60},
    );
  });
});

function deepFrozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) {
    Object.values(value).forEach(deepFrozen);
    Object.freeze(value);
  }
  return value;
}

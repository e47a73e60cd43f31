// Probabilities must come true: garments drawn from a book's own model, examined without knowing the truth.
// The sampler in test/simulate is written from docs/model.md and shares no code with the engine but the calendar's names.
import {describe, expect, test} from "vitest";
import {testSources} from "../simulate/books.ts";
import {drawsOr, expectFlat, expectHonestBounds, expectHonestSets, expectReliable, show} from "../simulate/honest.ts";
import {scoreDraws} from "../simulate/score.ts";

const runs = [
  {name: "gorsehill", everyday: 2000, seed: 101, detailEvery: 1},
  {name: "saltmarsh", everyday: 300, seed: 102, detailEvery: 2},
  {name: "saltmarsh or heronbeck", everyday: 150, seed: 103, detailEvery: 0},
];

for (const {name, everyday, seed, detailEvery} of runs) {
  describe(`garments drawn from ${name}`, () => {
    const scores = scoreDraws(testSources[name]!, drawsOr(everyday), seed, {detailEvery});
    show(name, scores);

    test("the sets of months hold the truth as often as they say", () => expectHonestSets(scores));
    test("no earlier than and no later than miss no more than they say", () => expectHonestBounds(scores));
    test("the true month lies evenly in the posterior", () => expectFlat(scores));
    test("the best month and the best year come true as often as said", () => {
      expectReliable("best month", scores.bestMonth);
      expectReliable("best year", scores.bestYear);
    });
    if (detailEvery > 0) {
      test("marks said to be stray are stray as often", () => expectReliable("stray mark", scores.strayMarks));
      test("pieces said to come from elsewhere do so as often", () => expectReliable("stray piece", scores.strayPieces));
    }
    if (name === "saltmarsh") {
      test("readings of the rows are right as often as said", () => expectReliable("reading", scores.readings));
    }
    if (name.includes(" or ")) {
      test("the maker is the one said as often as said", () => expectReliable("maker", scores.makers));
    }
  });
}

test("the same seed draws the same garments", () => {
  const [first, second] = [1, 2].map(() => scoreDraws(testSources.gorsehill!, 20, 7, {detailEvery: 0}).transform);
  expect(first).toEqual(second);
});

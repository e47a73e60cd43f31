// The makers' books that come with the tool, held against garments drawn from them; their groups are taken apart, see `independent`.
import {describe, expect, test} from "vitest";
import {shippedBooks} from "../../rulebooks/load.ts";
import {independent, shippedAxis} from "../simulate/books.ts";
import {drawsOr, expectFlat, expectHonestBounds, expectHonestSets, expectReliable, show} from "../simulate/honest.ts";
import {binOf} from "../simulate/reliability.ts";
import {examinerFor, scoreDraws} from "../simulate/score.ts";

const makers = (shippedBooks().books ?? []).filter(({kind}) => kind === "maker");

test("makers' books come with the tool", () => expect(makers.length).toBeGreaterThan(0));

for (const [i, book] of makers.entries()) {
  describe(`garments drawn from ${book.title}`, () => {
    const source = {makers: [independent(book)], axis: shippedAxis};
    const scores = scoreDraws(source, drawsOr(80), 201 + i, {detailEvery: 4});
    show(book.book, scores);

    test("the sets of months hold the truth as often as they say", () => expectHonestSets(scores));
    test("no earlier than and no later than miss no more than they say", () => expectHonestBounds(scores));
    test("the true month lies evenly in the posterior", () => expectFlat(scores));
    test("the best year comes true as often as said", () => expectReliable("best year", scores.bestYear));
    test("strays and readings come true as often as said", () => {
      expectReliable("stray mark", scores.strayMarks);
      expectReliable("stray piece", scores.strayPieces);
      expectReliable("reading", scores.readings);
    });

    test("as published, with tempered groups, the 90 % set holds no less than it says", () => {
      const published = scoreDraws(source, drawsOr(80), 211 + i, {examiner: examinerFor(source, [book]), detailEvery: 0});
      show(`${book.book}, groups tempered`, published);
      const {said, so} = binOf(published.sets[1]!);
      expect(so).toBeGreaterThan(said - 4 * Math.sqrt((said * (1 - said)) / published.draws));
    });
  });
}

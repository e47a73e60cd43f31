// What a look could show: chances that add up, months that average back to what is known, and as many bits as the ranking says.
import {expect, test} from "vitest";
import {makeExaminer, parseMonth, type MonthIndex} from "../../../engine/index.ts";
import {demoGarments, shippedBooks} from "../../../rulebooks/load.ts";

const examiner = makeExaminer(shippedBooks().books!, {today: parseMonth("2026-11") as MonthIndex});
const garments = demoGarments().filter((_, i) => i % 3 === 0);
const ahead = garments.map((garment) => ({garment, ...examiner.lookAhead(garment, 40).finding!}));
const sum = (numbers: Iterable<number>) => [...numbers].reduce((all, one) => all + one, 0);

test("the looks are those of the finding, in its order", () => {
  expect(sum(ahead.map(({looks}) => looks.length))).toBeGreaterThan(100);
  for (const {finding, looks} of ahead) expect(looks.map(({look}) => look.id)).toEqual(finding.next.slice(0, 40).map(({id}) => id));
});

// Source: law of total probability.
test("chances of what a look shows add up to 1, and the months after it average to the months before it", () => {
  for (const {finding, looks} of ahead) {
    for (const {outcomes} of looks) {
      expect(sum(outcomes.map(({probability}) => probability))).toBeCloseTo(1, 9);
      for (const {months} of outcomes) expect(sum(months)).toBeCloseTo(1, 6);
      const average = finding.posterior.map((_, t) => sum(outcomes.map(({probability, months}) => probability * months[t]!)));
      for (const [t, p] of average.entries()) expect(Math.abs(p - finding.posterior[t]!)).toBeLessThan(1e-6);
    }
  }
});

// Source: Lindley 1956: the expected gain of information is the expected divergence of what is known after from what is known before.
test("the divergence of the months after a look from those before it is, on average, the bits that the ranking gives it", () => {
  let compared = 0;
  for (const {finding: {posterior, pieces}, looks} of ahead) {
    if (pieces.some(({stray}) => stray > 0.01)) continue;
    for (const {look, outcomes} of looks) {
      const bits = sum(outcomes.map(({probability, months}) => probability * sum(months.map((p, t) => (p > 0 ? p * Math.log2(p / posterior[t]!) : 0)))));
      // Rare outcomes are told together, which can only lose, and most where there is little to settle.
      expect(bits).toBeLessThan(look.bits + 1e-4);
      if (look.bits < 0.1) continue;
      expect(bits).toBeGreaterThan(look.bits * 0.8);
      compared++;
    }
  }
  expect(compared).toBeGreaterThan(15);
});

// The odds of a date as a price takes them: years that add up, a later thing in an older look counted as made later, looks that average back, alike in a worker.
import {expect, test} from "vitest";
import {dateOdds} from "../../../commands/worth/date-odds.ts";
import {makeWorld} from "../../../commands/world.ts";
import {parseMonth, type Garment, type MonthIndex} from "../../../engine/index.ts";
import {demoGarments, shippedBooks} from "../../../rulebooks/load.ts";
import {makeCrew} from "../../../server/crew.ts";
import {world as small} from "../small-world.ts";

const world = makeWorld(shippedBooks().books!, parseMonth("2026-11") as MonthIndex);
const demo = (number: string): Garment => demoGarments().find(({garment}) => garment === number)!;
const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0);
const between = ({first, shares}: {first: number; shares: readonly number[]}, from: number, until: number) => sum(shares.filter((_, i) => first + i >= from && first + i <= until));

test("years and makers add up to 1, and the likeliest year is the finding's", () => {
  for (const number of ["0147", "0204", "0211"]) {
    const {odds} = dateOdds(demo(number), world, false);
    expect(sum(odds!.years.shares)).toBeCloseTo(1, 4);
    expect(sum(odds!.makers.map(({probability}) => probability))).toBeCloseTo(1, 2);
    expect(odds!.looks).toEqual([]);
  }
  expect(dateOdds(demo("0147"), world, false).odds).toMatchObject({lot: "412", makers: [{maker: "marrowfield"}]});
});

test("a later thing in an older look counts as made later with the chance that it is one", () => {
  const {twoDates} = world.examiner().examine(demo("0195")).finding!;
  expect(twoDates!.probability).toBeGreaterThan(0.5);
  const {years} = dateOdds(demo("0195"), world, false).odds!;
  expect(between(years, 1990, 2026)).toBeGreaterThan(0.5);
});

test("the years that looks could leave average to the years as they are", () => {
  const {odds} = dateOdds(demo("0147"), world, true);
  expect(odds!.looks.length).toBeGreaterThan(2);
  for (const {outcomes} of odds!.looks) {
    for (const [from, until] of [[1950, 1959], [1960, 1969], [1970, 1979]] as const) {
      expect(sum(outcomes.map(({probability, years}) => probability * between(years, from, until)))).toBeCloseTo(between(odds!.years, from, until), 3);
    }
  }
});

test("a garment that the books cannot read says why", () => {
  expect(dateOdds({garment: "x", saw: {"no-such-mark": "y"}}, small, true).problems!.map(({code}) => code)).toEqual(["garment/unknown-mark"]);
});

test("a worker gives the same odds", async () => {
  const crew = makeCrew(1);
  const garment: Garment = {garment: "x", maker: "wickerlow", saw: {label: "grey-tape"}};
  expect(await crew.weigh(garment, true, small)).toEqual(dateOdds(garment, small, true));
  await crew.close();
});

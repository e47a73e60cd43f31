// Measures that hang together raise no doubt; each usual slip of the hand is named where it happened. The limits are common practice, no source.
import fc from "fast-check";
import {expect, test} from "vitest";
import {garmentKinds} from "../../state/garment-kind.ts";
import {pointsOf} from "../../state/point.ts";
import {sizeDoubts} from "../../state/plausible.ts";
import {relationTable} from "../../state/relation-table.ts";
import {sizes, straight} from "./sized.ts";

test("a straight pair of trousers raises no doubt, in inches and in centimetres", () => {
  expect(sizeDoubts("trousers", sizes(straight))).toEqual([]);
  expect(sizeDoubts("trousers", sizes(Object.fromEntries(Object.entries(straight).map(([point, typed]) => {
    const [whole, part] = typed.split(" ");
    const [top, bottom] = (part ?? "0/1").split("/").map(Number);
    return [point, `${((Number(whole) + top! / bottom!) * 2.54).toFixed(1)} cm`];
  }))))).toEqual([]);
});

test("a waist measured all round is told beside the waist, with its half", () => {
  const [doubt, ...others] = sizeDoubts("trousers", sizes({...straight, waist: "34"}));
  expect(others).toEqual([]);
  expect(doubt!.points).toEqual(["waist"]);
  expect(doubt!.problem.fix).toContain("17 in");
});

test("an inseam typed in centimetres while inches are chosen is told", () => {
  expect(sizeDoubts("trousers", sizes({inseam: "81"}))[0]!.problem.fix).toContain("81 cm");
  expect(sizeDoubts("trousers", sizes({inseam: "81 cm"}))).toEqual([]);
});

test("an outseam ten inches too long does not go with rise and inseam", () => {
  const doubts = sizeDoubts("trousers", sizes({...straight, outseam: "49 1/2"}));
  expect(doubts.flatMap(({points}) => points)).toEqual(expect.arrayContaining(["inseam", "front-rise", "outseam"]));
});

test("a length that is doubted by itself is not doubted again beside others", () => {
  expect(sizeDoubts("trousers", sizes({...straight, hip: "60"})).map(({points}) => points)).toEqual([["hip"]]);
});

test("text that is no length, a point of another garment and a point twice are each told", () => {
  const twice = sizes({waist: "about 17", chest: "21"});
  const doubts = sizeDoubts("trousers", {...twice, measures: [...twice.measures, twice.measures[0]!]});
  expect(doubts.map(({problem}) => problem.code)).toEqual(["state/not-a-length", "state/strange-point", "state/twice"]);
});

test("a chest below the body that its tag is for is told, by letter and by figure", () => {
  expect(sizeDoubts("jacket", sizes({chest: "16 1/2"}, "L", "jacket"))[0]!.problem.code).toBe("state/below-tag");
  expect(sizeDoubts("jacket", sizes({chest: "19"}, "44", "jacket"))[0]!.problem.code).toBe("state/below-tag");
  expect(sizeDoubts("jacket", sizes({chest: "23"}, "L", "jacket"))).toEqual([]);
});

test("every relation speaks of points that the garment has", () => {
  for (const kind of garmentKinds) {
    const known = new Set(pointsOf(kind).map(({id}) => id));
    for (const {id, terms} of relationTable[kind]) for (const point of Object.keys(terms)) expect([kind, id, known.has(point)]).toEqual([kind, id, true]);
  }
});

test("no set of measures makes the check fail, and the order in which they were typed does not matter", () => {
  const typed = fc.dictionary(fc.constantFrom(...pointsOf("trousers").map(({id}) => id)), fc.oneof(fc.integer({min: 1, max: 120}).map(String), fc.string({minLength: 1, maxLength: 8})));
  fc.assert(
    fc.property(typed, (lengths) => {
      const forwards = sizes(lengths);
      const said = (doubts: ReturnType<typeof sizeDoubts>) => doubts.map(({problem}) => JSON.stringify(problem)).sort();
      expect(said(sizeDoubts("trousers", {...forwards, measures: [...forwards.measures].reverse()}))).toEqual(said(sizeDoubts("trousers", forwards)));
    }),
  );
});

// Measuring, grading and fitting as commands: the answers that terminal, server and screens share, and the problems they share.
import {expect, test} from "vitest";
import {perform} from "../../../commands/command.ts";
import {fitGarment} from "../../../commands/state/fit-garment.ts";
import {gradeGarment} from "../../../commands/state/grade-garment.ts";
import {measureGarment} from "../../../commands/state/measure-garment.ts";
import {noteFlaw} from "../../../commands/state/note-flaw.ts";
import {defaultRule} from "../../../state/default-rule.ts";
import {sayFlaw} from "../../../state/grade.ts";
import {sizes, state, straight} from "../../state/sized.ts";
import {world} from "../small-world.ts";

const of = {name: "garment 7", type: "trousers", sizes: sizes({...straight, inseam: "28", outseam: "38 1/2"}, "W 34 L 32"), state: null};

test("measuring tells every point as laid and all round, and what a needle did", () => {
  const {answer} = perform(measureGarment, {of}, world);
  expect(answer!.points[0]).toMatchObject({point: "waist", mm: 431.8, girthMm: 863.6, says: "17 in laid flat, 34 in all round"});
  expect(answer!.doubts).toEqual([]);
  expect(answer!.odd.map(({id, says}) => [id, says])).toEqual([["sizes.inseam", "a shortened hem, by about 4 in: inseam 28 in, tagged 32 in (-12.5 %)"]]);
  expect(JSON.parse(JSON.stringify(measureGarment.json(answer!)))).toEqual(answer);
});

test("a garment that nobody measured has nothing but open points", () => {
  const {answer} = perform(measureGarment, {of: {type: "jacket"}}, world);
  expect([answer!.points, answer!.open[0], answer!.tag]).toEqual([[], "chest", []]);
});

test("a garment nobody looked at has no grade, and is told so", () => {
  expect(perform(gradeGarment, {of}, world).problems!.map(({code, at}) => [code, at])).toEqual([["state/not-looked-at", "garment 7"]]);
  expect(perform(gradeGarment, {of: {...of, state: state({wear: "light"})}}, world).answer!.grade).toBe("excellent");
});

test("a body is compared by name; a name the fit does not know, a slip and an unmeasured garment are all told at once", () => {
  expect(perform(fitGarment, {of, body: {waist: {typed: "33", unit: "in"}}}, world).answer!.points.map(({word}) => word)).toEqual(["good"]);
  const {problems} = perform(fitGarment, {of: {name: "garment 7", type: "trousers"}, body: {waist: {typed: "about 33", unit: "in"}, neck: {typed: "15", unit: "in"}}}, world);
  expect(problems!.map(({code}) => code)).toEqual(["state/not-a-length", "state/not-a-body-measure", "state/nothing-measured"]);
});

test.each([
  ["hole at the left knee", {kind: "hole", place: "left knee", severity: "plain", side: "front", mended: false}],
  ["Slight hole at left knee, mended", {kind: "hole", place: "left knee", severity: "slight", mended: true}],
  ["heavy thin cloth at the seat", {kind: "thin-cloth", place: "seat", severity: "heavy", side: "back"}],
  ["stain at the lining, inside", {kind: "stain", place: "lining", side: "inside"}],
])("“%s” is noted as it is said", (words, flaw) => expect(noteFlaw(words).answer).toMatchObject(flaw));

test("what the rule says of a flaw is noted as that flaw", () => {
  for (const {kind} of defaultRule.flaws) {
    const said = sayFlaw({kind, place: "left knee", side: "front", x: null, y: null, size: null, severity: "heavy", mended: true, note: ""});
    expect(noteFlaw(said).answer).toMatchObject({kind, place: "left knee", severity: "heavy", mended: true});
  }
});

test("a flaw that no rule names is told with the nearest that one does", () => expect(noteFlaw("slight hol at the knee").problems![0]!.fix).toContain("hole"));

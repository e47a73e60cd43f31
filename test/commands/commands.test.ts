// Commands as data: names stay unique, inputs are checked, answers keep their documented shape.
import {expect, test} from "vitest";
import {askNext} from "../../commands/ask.ts";
import {perform} from "../../commands/command.ts";
import {examineGarment} from "../../commands/examine.ts";
import {findingShape} from "../../commands/finding-shape.ts";
import {commands} from "../../commands/list.ts";
import {possibleReproduction, verdictOf} from "../../commands/verdict.ts";
import {showBook} from "../../commands/show-book.ts";
import {showSchema} from "../../commands/show-schema.ts";
import {writeGarment} from "../../commands/write-garment.ts";
import type {Finding} from "../../engine/index.ts";
import {world} from "./small-world.ts";

const garment = {garment: "7", maker: "wickerlow", saw: {rows: ["3 8 21"], label: "grey-tape"}};

test("no two commands have one name, and every one says what it is for", () => {
  expect(new Set(commands.map(({name}) => name)).size).toBe(commands.length);
  for (const {name, summary} of commands) {
    expect(name).toMatch(/^[a-z]+\.[a-z]+$/);
    expect(summary.length).toBeGreaterThan(10);
  }
});

test("a finding as JSON has the documented shape, and its months sum to 1", () => {
  const {answer} = perform(examineGarment, {garment, trace: true}, world);
  const {trace, ...finding} = examineGarment.json(answer!) as {trace: string[]};
  const shaped = findingShape.parse(finding);
  expect(trace.length).toBeGreaterThan(5);
  expect(shaped.best.month).toBe("1968-03");
  const sum = shaped.months.probabilities.reduce((a, b) => a + b, 0);
  expect(Math.abs(sum - 1)).toBeLessThan(1e-6); // nine figures are kept of each of some 1,500 months
});

test("an input that does not fit is a list of problems, not an exception", () => {
  const {problems} = perform(examineGarment, {garment: {garment: 7, saw: {}}, tracee: true}, world);
  expect(problems!.map(({at}) => at)).toEqual(expect.arrayContaining(["garment.garment", "tracee"]));
});

test("the next question is the best look that was not passed over", () => {
  const first = perform(askNext, {garment: {garment: "7", maker: "wickerlow"}}, world).answer!;
  const second = perform(askNext, {garment: {garment: "7", maker: "wickerlow"}, skip: [first.question!.id]}, world).answer!;
  expect(first.question!.id).toBe("rows");
  expect(second.question!.id).not.toBe("rows");
  const label = [first, second].map(({question}) => question!).find(({id}) => id === "label");
  expect(label?.values.map(({id}) => id)).toEqual(["grey-tape", "blue-satin"]);
});

test("a mark's page names its values, windows and sources", () => {
  const {answer} = perform(showBook, {book: "wickerlow", mark: "label"}, world);
  expect(answer!.page!.statements.map(({id, window}) => [id, window])).toEqual([
    ["grey-tape", "to 1969-06…1970-06"],
    ["blue-satin", "from 1969-06…1970-06, still in use"],
  ]);
  expect(perform(showBook, {book: "wickerlow", mark: "lable"}, world).problems![0]!.fix).toMatch(/did you mean label\?/);
});

test("schemas are given for every file a person writes and for the finding", () => {
  for (const of of ["book", "subject", "garment", "finding"]) expect(perform(showSchema, {of}, world).answer).toHaveProperty("title");
});

test("pieces given on their own win over the file, and an empty value takes a mark out", () => {
  const before = {garment: "7", maker: "wickerlow", saw: {rows: ["1"], label: "grey-tape", "hem-tape": "present"}};
  const {garment: after, problems} = writeGarment(before, {maker: "a|b", rows: ["3 8 21"], saw: ["label=", "hem-tape = x | y", "novalue"]});
  expect(after).toEqual({garment: "7", maker: ["a", "b"], saw: {rows: ["3 8 21"], "hem-tape": ["x", "y"]}});
  expect(problems.map(({code}) => code)).toEqual(["input/not-a-pair"]);
});

test("a reproduction that is likelier than not is the verdict; one that is only possible is mentioned", () => {
  const {finding} = perform(examineGarment, {garment}, world).answer!;
  const at = (month: number) => Float64Array.from(finding.posterior, (_, t) => Number(t === month - finding.first));
  const withTwo = (probability: number) => ({...finding, twoDates: {probability, look: at(60 * 12), made: at(104 * 12 + 9), speaking: []}}) as unknown as Finding;
  expect(verdictOf(withTwo(0.9)).sentence).toBe("Most likely a later reproduction, 90 in 100: made October 2004, in the look of January 1960");
  expect(verdictOf(withTwo(0.3)).kind).toBe("one date");
  expect(possibleReproduction(withTwo(0.3))?.words).toBe("made October 2004, in the look of January 1960");
  expect(possibleReproduction(withTwo(0.1))).toBeNull();
});

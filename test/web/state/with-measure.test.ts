// Typing a length changes that point alone; a garment that nobody measured stays as it was.
import {expect, test} from "vitest";
import {contentSchema} from "../../../store/model.ts";
import {kindFor, withEntry} from "../../../web/state/rule-kinds.ts";
import {sizesOf, withMeasure, withSizes, withState} from "../../../web/state/with-measure.ts";

const content = contentSchema.parse({garment: {garment: "7", saw: {}}});
const waist = withMeasure(sizesOf(content), "waist", "17", "in");

test("a length is put, changed in its place, and taken out by emptying it", () => {
  const both = withMeasure(waist, "hip", "21", "in");
  const changed = withMeasure(both, "waist", "43 1/2", "cm");
  expect(changed.measures).toEqual([{point: "waist", length: {typed: "43 1/2", unit: "cm"}}, {point: "hip", length: {typed: "21", unit: "in"}}]);
  expect(withMeasure(changed, "waist", " ", "in").measures.map(({point}) => point)).toEqual(["hip"]);
});

test("what is typed stays a content that can be kept, however long it is", () => {
  const long = withSizes(content, withMeasure(waist, "hip", "3".repeat(50), "in"));
  expect(contentSchema.safeParse(long).success).toBe(true);
});

test("emptied of everything it is as if nobody had measured", () => expect(withSizes(withSizes(content, waist), withMeasure(waist, "waist", "", "in"))).toEqual(content));

test("the first thing said of its state makes it looked at", () => {
  expect(content.state).toBeNull();
  expect(withState(content, {wear: "light"}).state).toMatchObject({wear: "light", flaws: [], clean: null});
});

test.each([["Oil stain", "oil-stain"], ["  Déchirure ", "dechirure"], ["3 holes", "holes"], ["!!", "kind"], ["hole", "hole-2"]])("a kind called %s gets the id %s", (name, kind) => expect(kindFor(name, ["hole"])).toBe(kind));

test("a list is changed at one place", () => {
  expect(withEntry(["a", "b"], 1, "c")).toEqual(["a", "c"]);
  expect(withEntry(["a", "b"], 0, null)).toEqual(["b"]);
});

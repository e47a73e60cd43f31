// A step of the history says what was measured and noted, in words.
import {expect, test} from "vitest";
import {sayStateChanges} from "../../../web/state/say-changes.ts";
import {sizes, state} from "../../state/sized.ts";

const nothing = {sizes: null, state: null};
const hole = {kind: "hole", severity: "plain", place: "left knee"};

test("what was laid, tagged and noted is said, and nothing when nothing changed", () => {
  const after = {sizes: sizes({waist: "17", "front-rise": "11 1/4"}, "W 34 L 32"), state: state({wear: "light", flaws: [hole], alterations: [{kind: "shortened-hem"}]})};
  expect(sayStateChanges(nothing, after)).toEqual(["waist: 17 in", "front rise: 11 1/4 in", "size on the tag: W 34 L 32", "hole at the left knee noted", "wear: light", "altered: shortened hem"]);
  expect(sayStateChanges(after, after)).toEqual([]);
});

test("what changed and what was taken away is told from what it was", () => {
  const before = {sizes: sizes({waist: "17"}), state: state({clean: "dirty", flaws: [hole], missing: ["button"]})};
  const after = {sizes: sizes({waist: "16 3/4"}), state: state({clean: "washed", flaws: [{...hole, mended: true}]})};
  expect(sayStateChanges(before, after)).toEqual(["waist: 17 in → 16 3/4 in", "hole at the left knee, mended noted", "hole at the left knee taken out", "cleanliness: dirty → washed", "missing taken away, was button"]);
  expect(sayStateChanges(before, nothing)).toContain("waist taken away, was 17 in");
});

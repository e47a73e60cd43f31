// Text in typefaces: what none of them has is told by a question mark, and lines are never wider than they may be.
import * as fc from "fast-check";
import {expect, test} from "vitest";
import {fitted, linesOf, runsOf, unprintable, widthOf} from "../../../paper/face/runs.ts";

test("letters of several scripts are put together from the files that have them", () => {
  expect(runsOf("sans", "Źdźbło").map(({text}) => text).join("")).toBe("Źdźbło");
  expect(runsOf("sans", "Zip: молния, φερμουάρ").map(({cut}) => cut.id.split("/")[0])).toContain("source-serif-4");
  expect(runsOf("serif", "ズボン").map(({text}) => text).join("")).toBe("???");
  expect(unprintable("Trousers ズボン")).toBe(3);
  expect(runsOf("sans", "31⅛ ≥ 30").map(({text}) => text).join("")).toBe("311/8 at least  30");
});

test("no line is wider than it may be, and no letter is lost", () => {
  const text = fc.string({maxLength: 300, unit: "grapheme-ascii"});
  fc.assert(fc.property(text, fc.integer({min: 20, max: 400}), (said, width) => {
    const lines = linesOf("sans", said, 9, width);
    for (const line of lines) expect(widthOf("sans", line, 9)).toBeLessThanOrEqual(width + 1e-6);
    expect(lines.join("").replace(/ /g, "")).toBe(said.replace(/[ \n]/g, ""));
  }));
});

test("a text is cut with an ellipsis only when it has no room", () => {
  expect(fitted("sans", "Trousers", 9, 400)).toBe("Trousers");
  const cut = fitted("sans", "Trousers with a very long name", 9, 60);
  expect(cut.endsWith("…")).toBe(true);
  expect(widthOf("sans", cut, 9)).toBeLessThanOrEqual(60);
});

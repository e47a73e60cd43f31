// Windows are read back from the words of a finding.
import {expect, test} from "vitest";
import {sayWindow} from "../../../engine/index.ts";
import {readWindow} from "../../../paper/draw/read-window.ts";
import {datedRules} from "../../../rulebooks/dated-rules.ts";
import {shippedBooks} from "../../../rulebooks/load.ts";

test("every window of the books that are shipped is read back as it was said", () => {
  const windows = shippedBooks().books!.flatMap(datedRules).map(({window}) => window);
  expect(windows.length).toBeGreaterThan(500);
  for (const window of windows) {
    const {begins, ends} = window;
    if (!begins && !ends) expect(readWindow(sayWindow(window))).toBeNull();
    else expect(readWindow(sayWindow(window)), sayWindow(window)).toEqual({...(begins ? {begins} : {}), ...(ends ? {ends} : {})});
  }
});

test("other words are no window", () => {
  for (const words of [null, "", "at any time", "from yesterday", "from 1968"]) expect(readWindow(words)).toBeNull();
});

// Who may import whom, as the design of the project says; the rules stand in scripts/check-arrows.ts.
import {describe, expect, test} from "vitest";
import {breaches, printBreach, sourceFiles} from "../../scripts/check-arrows.ts";

const said = (path: string, text: string) => breaches([{path, text}]).map(printBreach).join("\n");

test("every import of the project goes the right way", () => {
  expect(breaches(sourceFiles()).map(printBreach)).toEqual([]);
});

describe("the check sees", () => {
  test.each([
    ["a type import out of the engine", "engine/infer/x.ts", 'import type {Where} from "../../rulebooks/place.ts";', "stands below everything else"],
    ["a part of the engine that looks up", "engine/month/x.ts", 'import type {Window} from "../window/window.ts";', "window stands above month"],
    ["an import over several lines", "engine/num/x.ts", 'import {\n  month,\n} from "../month/month.ts";', "engine/num/x.ts:1"],
    ["a type that is handed on", "engine/num/x.ts", 'export type {Window} from "../window/window.ts";', "window stands above num"],
    ["neighbours that should not know each other", "engine/row/x.ts", 'import {serial} from "../mark/serial.ts";', "do not know each other"],
    ["a package in the engine", "engine/num/x.ts", 'import {parse} from "yaml";', "must run anywhere"],
    ["a built-in of node in the engine", "engine/num/x.ts", 'import {join} from "node:path";', "must run anywhere"],
    ["a late import", "commands/x.ts", 'const fs = await import("node:fs");', "neither files nor screens"],
    ["the disk in the rule books", "rulebooks/chart.ts", 'import {readFileSync} from "node:fs";', "may touch the disk"],
    ["the terminal in a command", "commands/x.ts", 'import {endWith} from "../cli/ending.ts";', "neither files nor screens"],
    ["a test in the terminal", "cli/x.ts", 'import {close} from "../test/helper/close.ts";', "not the other way round"],
    ["a clock in the engine", "engine/num/x.ts", "export const now = () => Date.now();", "no clock"],
    ["chance in the engine", "engine/num/x.ts", "export const roll = () => Math.random();", "no chance"],
    ["a message on the screen", "engine/num/x.ts", 'console.log("here");', "no screen"],
  ])("%s", (_, path, text, words) => {
    expect(said(path, text)).toContain(words);
  });

  test("a circle of files", () => {
    const circle = [
      {path: "engine/infer/a.ts", text: 'import {b} from "../next/b.ts";'},
      {path: "engine/next/b.ts", text: 'import type {A} from "../infer/a.ts";'},
    ];
    expect(breaches(circle).map(printBreach)).toEqual([expect.stringContaining("engine/infer/a.ts -> engine/next/b.ts -> engine/infer/a.ts")]);
  });
});

test("comments and quoted words are no breach", () => {
  expect(said("engine/num/x.ts", '// never `Date.now()`\nexport const word = "console.log(";')).toBe("");
});

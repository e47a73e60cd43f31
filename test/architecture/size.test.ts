// Small files with plain names, so that each can be read at one sitting.
import {readdirSync} from "node:fs";
import {fileURLToPath} from "node:url";
import {expect, test} from "vitest";
import {sourceFiles} from "../../scripts/check-arrows.ts";

const sizes = sourceFiles().map(({path, text}) => ({path, lines: text.trimEnd().split("\n").length}));

test("no source file is longer than 400 lines", () => {
  expect(sizes.filter(({lines}) => lines > 400)).toEqual([]);
});

test("half of the source files have at most 80 lines", () => {
  const lines = sizes.map((file) => file.lines).sort((a, b) => a - b);
  expect(lines[Math.floor(lines.length / 2)]).toBeLessThanOrEqual(80);
});

test("file names are lower-case words joined by dashes; READMEs apart", () => {
  const folders = ["bench", "bin", "cli", "commands", "docs", "engine", "rulebooks", "scripts", "server", "store", "test", "web"];
  const paths = folders.flatMap((folder) => readdirSync(fileURLToPath(new URL(`../../${folder}`, import.meta.url)), {recursive: true, encoding: "utf8"}).map((path) => `${folder}/${path}`));
  expect(paths.filter((path) => !/\/(?:[a-z0-9]+(?:[-.][a-z0-9]+)*|README\.md)$/.test(path))).toEqual([]);
});

// Commands in the docs end well, run where they would be typed, with what they write going elsewhere.
import {spawnSync} from "node:child_process";
import {mkdtempSync, symlinkSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {expect, test} from "vitest";
import {blocksOf, filesBelow, root} from "./pages.ts";

const lines = ["README.md", "CONTRIBUTING.md", ...filesBelow("docs/guide", [".md"])]
  .flatMap(blocksOf)
  .filter(({kind}) => kind === "sh")
  .flatMap(({at, code}) => code.split("\n").map((line) => [line, at] as const));

const folder = mkdtempSync(join(tmpdir(), "ticking-docs-"));
for (const name of ["rulebooks", "docs"]) symlinkSync(join(root, name), join(folder, name));

test.each(lines)("%s", (line) => {
  const [program, ...words] = line.match(/"[^"]*"|\S+/g)!.map((word) => word.replace(/^"|"$/g, ""));
  expect(program).toBe("ticking");
  const {status, stderr} = spawnSync(process.execPath, [join(root, "bin/ticking.mjs"), ...words], {cwd: folder, encoding: "utf8"});
  expect(status, stderr).toBe(0);
});

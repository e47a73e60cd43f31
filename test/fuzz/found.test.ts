// Inputs that once threw, never ended or ate all memory, each with what must come of it: in bounded time (a wide bound: machines differ), in 512 MB.
import {spawnSync} from "node:child_process";
import {readFileSync} from "node:fs";
import {extname} from "node:path";
import {fileURLToPath} from "node:url";
import {expect, test} from "vitest";

interface Expected {
  readonly outcome: string;
  readonly whole: boolean;
}

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const cases = Object.entries(JSON.parse(readFileSync(at("found/expected.json"), "utf8")) as Record<string, Expected>);

test.each(cases)("%s", (name, {outcome, whole}) => {
  const words = ["--max-old-space-size=512", "scripts/run.mjs", "test/fuzz/give-file.ts", extname(name).slice(1), at(`found/${name}`), ...(whole ? ["whole"] : [])];
  const {stdout, stderr} = spawnSync(process.execPath, words, {cwd: at("../.."), encoding: "utf8", timeout: 115_000});
  if (stdout === "") throw new Error(`no outcome: ${stderr.split("\n").find((line) => /Error|FATAL/.test(line)) ?? "it did not end within 115 s"}`);
  const got = JSON.parse(stdout) as {outcome: string; ms: number};
  expect(got.outcome).toBe(outcome);
  expect(got.ms).toBeLessThan(20_000);
});

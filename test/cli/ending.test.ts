// How runs end: exit codes and the words that go with them.
import {spawn} from "node:child_process";
import {afterEach, expect, test, vi} from "vitest";
import {endWith, NeedsMending} from "../../cli/ending.ts";
import {root, smallWorld} from "./run-ticking.ts";

afterEach(() => {
  process.exitCode = undefined;
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

function said(error: unknown): {words: string; code: typeof process.exitCode} {
  let words = "";
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    words += String(text);
    return true;
  });
  endWith(error);
  return {words, code: process.exitCode};
}

test("a fault of ours is 1, with a short message and no stack unless asked for", () => {
  const {words, code} = said(new Error("a broken invariant"));
  expect(code).toBe(1);
  expect(words).toMatch(/^ticking: something went wrong inside \(a broken invariant\)\.\n.*report it/);
  expect(words).not.toMatch(/^\s+at /m);
  vi.stubEnv("TICKING_DEBUG", "1");
  expect(said(new Error("a broken invariant")).words).toMatch(/^\s+at /m);
});

test("input that needs mending is 2, each problem on a line", () => {
  const problem = {code: "x/y", at: "file:1", what: "one", why: "two", fix: "three"};
  expect(said(new NeedsMending([problem, problem]))).toEqual({words: "file:1: one; two. To fix: three.\n".repeat(2), code: 2});
});

test("a reader that leaves early ends the command quietly", async () => {
  const lines = Array.from({length: 3000}, (_, i) => JSON.stringify({garment: `g${i}`, maker: "wickerlow", saw: {label: "grey-tape"}})).join("\n");
  const child = spawn(process.execPath, ["bin/ticking.mjs", "batch", "-", ...smallWorld], {cwd: root});
  let err = "";
  child.stderr.on("data", (piece: Buffer) => (err += piece.toString()));
  child.stdin.on("error", () => {});
  child.stdin.end(lines);
  child.stdout.once("data", () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.on("close", resolve));
  expect(code).toBe(0);
  expect(err).toBe("");
});

// Runs the real command in a process of its own, as a person would.
import {spawn} from "node:child_process";
import {mkdtempSync, rmSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {fileURLToPath} from "node:url";
import {onTestFinished} from "vitest";

export const root = fileURLToPath(new URL("../../", import.meta.url));

/** Flags for a small world that loads and examines quickly: one invented maker's book, a fixed month. */
export const smallWorld = ["--no-shipped", "--books", "test/fixtures/wickerlow.yaml", "--today", "2026-11"] as const;

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** @param input  what is piped into stdin; nothing when left out */
export function ticking(args: readonly string[], input: string | Uint8Array = "", environment: Readonly<Record<string, string>> = {}): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ["bin/ticking.mjs", ...args], {cwd: root, env: {...process.env, NO_COLOR: "1", ...environment}});
    const [out, err]: [Buffer[], Buffer[]] = [[], []];
    child.stdout.on("data", (piece: Buffer) => out.push(piece));
    child.stderr.on("data", (piece: Buffer) => err.push(piece));
    child.on("error", reject);
    child.on("close", (code) => resolve({code, out: Buffer.concat(out).toString("utf8"), err: Buffer.concat(err).toString("utf8")}));
    child.stdin.on("error", () => {});
    child.stdin.end(input);
  });
}

/** A folder for one test, gone afterwards. */
export function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "ticking-"));
  onTestFinished(() => rmSync(made, {recursive: true, force: true}));
  return made;
}

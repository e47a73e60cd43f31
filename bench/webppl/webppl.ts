// WebPPL as an outside opinion: installed when first asked for, outside the packages of the project, and run in a process of its own.
// Source: N. D. Goodman and A. Stuhlmüller, The Design and Implementation of Probabilistic Programming Languages, dippl.org; npm package webppl.
import {spawnSync} from "node:child_process";
import {existsSync, mkdirSync} from "node:fs";
import {fileURLToPath} from "node:url";
import {plainCase, type SmallCase} from "./plain-case.ts";

export const webpplVersion = "0.9.15";

export interface WebpplAnswer {
  /** By month of the axis. */
  readonly posterior: readonly number[];
  readonly makers: Readonly<Record<string, number>>;
  /** Milliseconds of each enumeration, reading and compiling the program left out. */
  readonly times: readonly number[];
}

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const folder = at("../../.cache/webppl");

/** Whether WebPPL is there, after trying to install it. */
export function haveWebppl(): boolean {
  const there = () => existsSync(`${folder}/node_modules/webppl/package.json`);
  if (there()) return true;
  mkdirSync(folder, {recursive: true});
  spawnSync("npm", ["i", "--prefix", folder, "--no-audit", "--no-fund", "--loglevel=error", `webppl@${webpplVersion}`], {stdio: "inherit"});
  return there();
}

/** Enumerates a case. */
export function askWebppl(small: SmallCase, rounds = 1): WebpplAnswer {
  const {stdout, stderr, status} = spawnSync(process.execPath, [at("run-webppl.mjs"), folder, String(rounds)], {input: JSON.stringify(plainCase(small)), encoding: "utf8", maxBuffer: 1 << 26});
  if (status !== 0) throw new Error(`WebPPL failed on ${small.id}: ${stderr.slice(0, 2000)}`);
  return JSON.parse(stdout) as WebpplAnswer;
}

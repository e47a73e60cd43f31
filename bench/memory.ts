// Memory of `ticking batch` while a million lines stream through it: it must not grow.
import {execFileSync, spawn} from "node:child_process";
import {once} from "node:events";
import {devNull} from "node:os";
import {seeded} from "../test/simulate/random.ts";
import {changedGarment, thirdBook} from "./garments.ts";
import type {Line} from "./line.ts";
import {command, type BenchWorld} from "./world.ts";

/** @param lines  in all; memory is looked at ten times on the way */
export async function measureMemory({garments}: BenchWorld, lines: number): Promise<Line[]> {
  const random = seeded(4);
  const pool = garments.filter(({maker}) => maker !== thirdBook.book);
  const child = spawn(process.execPath, [command, "batch", "-", "-o", devNull, "--today", "2026-06"], {stdio: ["pipe", "ignore", "ignore"]});
  const seen: number[] = [];
  for (let line = 1; line <= lines; line++) {
    const garment = changedGarment(pool[line % pool.length]!, line, random);
    if (!child.stdin.write(`${JSON.stringify(garment)}\n`)) await once(child.stdin, "drain");
    if (line % (lines / 10) === 0) {
      seen.push(Number(execFileSync("ps", ["-o", "rss=", "-p", String(child.pid)], {encoding: "utf8"})) / 1000);
      console.log(`  ${line.toLocaleString("en")} lines: ${Math.round(seen.at(-1)!)} MB`);
    }
  }
  child.stdin.end();
  await once(child, "exit");
  const note = `MB at each tenth of ${lines.toLocaleString("en")} lines: ${seen.map(Math.round).join(" ")}`;
  return [{name: "memory at the end against the first tenth", value: seen.at(-1)! / seen[0]!, unit: "times", most: 1.2, note}];
}

// How fast, how large: npm run bench [-- --rounds 5] [--only one,batch,outside,browser,loading,screens,rack,lines,photos] [--photos 20] [--long [--lines 1000000]]
// Prints a table and adds a line to history.jsonl. Nothing here is a test.
import {execFileSync} from "node:child_process";
import {appendFileSync} from "node:fs";
import {cpus} from "node:os";
import {fileURLToPath} from "node:url";
import {parseArgs} from "node:util";
import {measureBatch} from "./batch-speed.ts";
import {measureBrowserSize} from "./browser-size.ts";
import {isMet, printLine, type Line, type Skipped} from "./line.ts";
import {measureLoading} from "./loading.ts";
import {measureMemory} from "./memory.ts";
import {measureOne} from "./one-garment.ts";
import {measureOutside} from "./outside-speed.ts";
import {measurePaper} from "./paper-speed.ts";
import {measureRack} from "./rack-speed.ts";
import {measureReaderLines} from "./reader-lines.ts";
import {measureReaderPhotos} from "./reader-photos.ts";
import {benchWorld, type BenchWorld} from "./world.ts";
import {measureWorth} from "./worth-speed.ts";

const {values} = parseArgs({
  options: {rounds: {type: "string", default: "5"}, garments: {type: "string", default: "300"}, photos: {type: "string", default: "20"}, only: {type: "string"}, long: {type: "boolean", default: false}, lines: {type: "string", default: "1000000"}},
});
const rounds = Number(values.rounds);
const world = benchWorld(Number(values.garments));

const sections: Readonly<Record<string, () => readonly (Line | Skipped)[] | Promise<readonly (Line | Skipped)[]>>> = {
  one: () => measureOne(world, rounds),
  batch: () => measureBatch(world, rounds),
  outside: () => measureOutside(rounds),
  browser: () => measureBrowserSize(world.books),
  loading: () => measureLoading(world, rounds),
  // Loaded when wanted: it speaks of a page, which the rest does not know.
  screens: async () => ((await import("./screen-speed.ts" as string)) as {measureScreens(rounds: number): Promise<Line[]>}).measureScreens(rounds),
  "long rack": async () => ((await import("./long-rack-speed.ts" as string)) as {measureLongRack(world: BenchWorld, rounds: number): Promise<Line[]>}).measureLongRack(world, rounds),
  rack: () => measureRack(world, rounds),
  paper: () => measurePaper(rounds),
  lines: () => measureReaderLines(Number(values.photos)),
  photos: () => measureReaderPhotos(Number(values.photos)),
  worth: () => measureWorth(rounds),
  ...(values.long ? {memory: () => measureMemory(world, Number(values.lines))} : {}),
};

const taken: Line[] = [];
for (const [name, measure] of Object.entries(sections)) {
  if (values.only && !values.only.split(",").includes(name)) continue;
  for (const line of await measure()) {
    console.log(printLine(line));
    if (!("skipped" in line)) taken.push(line);
  }
}

const numbers = Object.fromEntries(taken.map((line) => [line.name, {value: Number(line.value.toPrecision(4)), unit: line.unit, met: isMet(line)}]));
const history = {bench: "speed", at: new Date().toISOString(), commit: commitOf(), node: process.version, cpus: cpus().length, numbers};
appendFileSync(fileURLToPath(new URL("history.jsonl", import.meta.url)), `${JSON.stringify(history)}\n`);

function commitOf(): string | null {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], {encoding: "utf8"}).trim();
  } catch {
    return null;
  }
}

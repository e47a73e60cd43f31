// How many garments a second: in this thread, beside a bare loop of multiplications, and through `ticking batch` with one worker and two.
import {spawnSync} from "node:child_process";
import {mkdtempSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import type {Garment} from "../engine/index.ts";
import {seeded} from "../test/simulate/random.ts";
import {changedGarment, thirdBook} from "./garments.ts";
import type {Line, Skipped} from "./line.ts";
import {inTurn, median, timeOf} from "./measure.ts";
import {command, type BenchWorld} from "./world.ts";

/** About so long one round takes. */
const roundMs = 3000;

export function measureBatch(world: BenchWorld, rounds: number): (Line | Skipped)[] {
  const {examiner, garments} = world;
  const random = seeded(2);
  // New garments in every round, so that nothing is kept from the round before.
  let number = 0;
  const fresh = (count: number) => Array.from({length: count}, () => changedGarment(garments[number++ % garments.length]!, number, random));
  const trial = fresh(100);
  const each = timeOf(() => trial.forEach((garment) => examiner.brief(garment))) / trial.length;
  const count = Math.max(20, Math.min(20_000, Math.round(roundMs / each)));
  const lists = Array.from({length: rounds}, () => fresh(count));
  const bare = bareLoop();
  bare(bareCount);
  const [ours, theirs] = inTurn(rounds, () => lists.pop()!.forEach((garment) => examiner.brief(garment)), () => bare(bareCount));
  const note = `${count} garments a round, ${rounds} rounds`;
  return [
    {name: "batch, one core, date alone", value: (count / ours!) * 1000, unit: "a second", least: 20_000, note},
    {name: "batch, times the bare loop of multiplications", value: ours! / count / (theirs! / bareCount), unit: "times", most: 4, note: `the bare loop: ${Math.round((bareCount / theirs!) * 1000).toLocaleString("en")} a second`},
    ...throughCommand(each, fresh, Math.min(rounds, 3)),
  ];
}

const [marks, rows, months] = [6, 3, 1518];
const bareCount = 10_000;

/** For each garment as many vectors as it has marks and rows, multiplied and divided by their sum. */
function bareLoop(): (count: number) => void {
  const random = seeded(3);
  const vectors = Array.from({length: 200}, () => Float64Array.from({length: months}, () => 0.5 + random.next()));
  let kept = 0;
  return (count) => {
    for (let garment = 0; garment < count; garment++) {
      const joint = new Float64Array(months).fill(1 / months);
      for (let k = 0; k < marks + rows; k++) {
        const vector = vectors[(garment * 7 + k * 13) % vectors.length]!;
        for (let t = 0; t < months; t++) joint[t]! *= vector[t]!;
      }
      let sum = 0;
      for (let t = 0; t < months; t++) sum += joint[t]!;
      for (let t = 0; t < months; t++) joint[t]! /= sum;
      kept += joint[garment % months]!;
    }
    if (!(kept > 0)) throw new Error("nothing was multiplied");
  };
}

/** The command hands out lines by the hundred: fewer than some shares for each worker would say nothing of sharing. */
const fewestLines = 800;
/** Slower than this the command is not waited for. */
const mostMs = 60_000;

/** The command itself, on a list of garments; its own word on how long it took counts, so that start-up is left out on both sides. */
function throughCommand(each: number, fresh: (count: number) => readonly Garment[], rounds: number): (Line | Skipped)[] {
  const names = ["ticking batch, one worker", "ticking batch, two workers against one"] as const;
  const lines = Math.max(fewestLines, Math.round((roundMs * 2) / each));
  if (lines * each > mostMs) return names.map((name) => ({name, skipped: `${lines} lines would take ${Math.round((lines * each) / 1000)} s`}));
  const list = fresh(lines).filter(({maker}) => maker !== thirdBook.book);
  const folder = mkdtempSync(join(tmpdir(), "ticking-bench-"));
  const [input, output] = [join(folder, "in.jsonl"), join(folder, "out.jsonl")];
  writeFileSync(input, list.map((garment) => `${JSON.stringify(garment)}\n`).join(""));
  const seconds = [1, 2].map((): number[] => []);
  for (let round = 0; round < rounds; round++) {
    seconds.forEach((taken, i) => {
      const {status, stderr} = spawnSync(process.execPath, [command, "batch", input, "-o", output, "--workers", String(i + 1), "--today", "2026-06"], {encoding: "utf8"});
      const said = /; ([\d.]+) s/.exec(stderr)?.[1];
      if (status !== 0 || said === undefined) throw new Error(stderr);
      taken.push(Number(said));
    });
  }
  rmSync(folder, {recursive: true});
  const [one, two] = seconds.map(median) as [number, number];
  const note = `${list.length} lines; ${one} s and ${two} s`;
  return [
    {name: names[0], value: list.length / one, unit: "a second", note},
    {name: names[1], value: one / two, unit: "times", least: 1.8, note},
  ];
}

// How long it takes until the first answer: books from disk, an examiner, the command.
import {spawnSync} from "node:child_process";
import {fileURLToPath} from "node:url";
import {makeExaminer} from "../engine/index.ts";
import {shippedBooks} from "../rulebooks/load.ts";
import type {Line} from "./line.ts";
import {inTurn} from "./measure.ts";
import {command, today, type BenchWorld} from "./world.ts";

export function measureLoading({books, garments}: BenchWorld, rounds: number): Line[] {
  const ticking = (...words: string[]) => () => {
    const {status, stderr} = spawnSync(process.execPath, [command, ...words], {encoding: "utf8"});
    if (status !== 0) throw new Error(stderr);
  };
  const garment = fileURLToPath(new URL("../rulebooks/demo/garments/0147.yaml", import.meta.url));
  const [load, ready, help, examine] = inTurn(rounds, () => shippedBooks(), () => makeExaminer(books, {today}).brief(garments[0]!), ticking("--help"), ticking("examine", garment));
  return [
    {name: "shipped books from disk", value: load!, unit: "ms"},
    {name: "an examiner and its first garment", value: ready!, unit: "ms"},
    {name: "ticking --help", value: help!, unit: "ms"},
    {name: "ticking examine, one garment", value: examine!, unit: "ms"},
  ];
}

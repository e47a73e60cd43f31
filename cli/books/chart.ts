// ticking books chart.
import {writeFileSync} from "node:fs";
import {chartOfBook} from "../../commands/chart-book.ts";
import {perform} from "../../commands/command.ts";
import {NeedsMending, orMend} from "../ending.ts";
import {notWritten} from "../problems.ts";
import type {WorldFlags} from "../shared.ts";
import {worldWith} from "./open.ts";

interface Flags extends WorldFlags {
  readonly out?: string;
  readonly from?: string;
  readonly until?: string;
  readonly width?: number;
  readonly only?: readonly string[];
}

export function drawChart(name: string, {out, from, until, width, only, ...flags}: Flags): void {
  const {world, id} = worldWith(name, flags);
  const svg = orMend(perform(chartOfBook, {book: id, from, until, width, only}, world));
  if (out === undefined) return void process.stdout.write(svg);
  try {
    writeFileSync(out, svg);
  } catch (error) {
    throw new NeedsMending([notWritten(out, (error as NodeJS.ErrnoException).code ?? "unknown reason")]);
  }
  process.stderr.write(`Wrote ${out}.\n`);
}

// Reports the lines that were set aside: the first ones on stderr, all of them in a file when asked for.
import {printProblem} from "../../engine/index.ts";
import type {Aside} from "./date-records.ts";
import {openSink, type Sink} from "./sink.ts";

/** So many lines are told on stderr; more would bury the first ones. */
const mostTold = 20;

export interface AsideReport {
  add(asides: readonly Aside[]): Promise<void>;
  end(): Promise<void>;
}

/** @param path  of the file for all lines set aside, if any */
export async function reportAsides(path: string | undefined): Promise<AsideReport> {
  const file: Sink | null = path === undefined ? null : await openSink(path);
  let count = 0;
  return {
    async add(asides) {
      for (const {problems} of asides) {
        if (count++ < mostTold) for (const problem of problems) process.stderr.write(`${printProblem(problem)}\n`);
      }
      if (file) await file.write(asides.map((aside) => `${JSON.stringify(aside)}\n`).join(""));
    },
    async end() {
      if (count > mostTold) process.stderr.write(`... and ${count - mostTold} more lines set aside${path === undefined ? "; --aside bad.jsonl gathers them all" : ""}.\n`);
      await file?.end();
    },
  };
}

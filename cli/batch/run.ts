// Runs a batch: records in, shares to the crew, results out in the order of the input, never more in memory than a few shares.
//
//   file ─► records with line numbers ─► shares of 100 ─► crew (this thread or workers) ─► in order ─► file or stdout
//                                                                     └─► lines set aside ─► stderr, --aside
import {realpathSync} from "node:fs";
import {readColumns} from "../../commands/batch/columns.ts";
import {resultHeader, type Plan} from "../../commands/batch/date-line.ts";
import {oneOrSeveral} from "../../commands/write-garment.ts";
import {exitCodes, NeedsMending} from "../ending.ts";
import {notWorkers, sameFile} from "../problems.ts";
import {openWorld} from "../shared.ts";
import {reportAsides} from "./asides.ts";
import {makeCrew} from "./crew.ts";
import type {DatedShare} from "./date-records.ts";
import type {BatchFlags} from "./flags.ts";
import {openSink} from "./sink.ts";
import {openSource, sharesOf, type Source} from "./source.ts";
import {sayTally, showProgress, type Tally} from "./tally.ts";

/** Records in one share: few enough for an even load, enough to make handing over cheap. */
const perShare = 100;

export async function runBatch(path: string, flags: BatchFlags): Promise<void> {
  try {
    await runFrom(path, flags);
  } finally {
    if (path === "-") process.stdin.destroy();
  }
}

async function runFrom(path: string, flags: BatchFlags): Promise<void> {
  const workers = workersOf(flags.workers);
  const name = path === "-" ? "stdin" : path;
  for (const out of [flags.out, flags.aside]) if (out !== undefined && isSame(path, out)) throw new NeedsMending([sameFile(out)]);
  const source = await openSource(path, name);
  const world = openWorld(flags);
  const plan = planOf(source, flags, world.books, name);
  const task = {plan, name, breakLine: plan.whole ? "\n" : (source.header?.breakLine ?? "\n")};
  const crew = makeCrew(workers, task, world);
  const [sink, asides] = [await openSink(flags.out), await reportAsides(flags.aside)];
  const tally: Tally = {dated: 0, aside: 0, mostMemory: 0};
  const start = performance.now();
  const endProgress = showProgress(tally, source.size, source.taken);
  const waiting: Promise<DatedShare>[] = [];
  const finish = async () => {
    const share = await waiting.shift()!;
    tally.dated += share.dated;
    tally.aside += share.asides.length;
    tally.mostMemory = Math.max(tally.mostMemory, process.memoryUsage.rss());
    await sink.write(share.text);
    await asides.add(share.asides);
  };
  try {
    if (plan.columns && !plan.whole) await sink.write(resultHeader(plan.columns) + task.breakLine);
    for await (const records of source.records) {
      for (const share of sharesOf(records, perShare)) {
        if (waiting.length >= crew.room) await finish();
        const dated = crew.date(share);
        dated.catch(() => {}); // it is waited for in its turn; until then its failure must not end the process
        waiting.push(dated);
      }
    }
    while (waiting.length > 0) await finish();
    await sink.end();
  } finally {
    endProgress();
    await crew.close();
  }
  await asides.end();
  process.stderr.write(`${sayTally(tally, (performance.now() - start) / 1000)}\n`);
  if (flags.strict && tally.aside > 0) process.exitCode = exitCodes.mend;
}

function planOf({header}: Source, {carry, whole, odd, maker, market, type}: BatchFlags, books: Parameters<typeof readColumns>[1], name: string): Plan {
  const read = header ? readColumns(header.text, books, carry ?? [], `${name}:${header.line}`) : null;
  if (read?.problems) throw new NeedsMending(read.problems);
  return {columns: read?.columns ?? null, whole: whole ?? false, odd: odd ?? false, usual: {maker: maker === undefined ? undefined : oneOrSeveral(maker), market, type}};
}

function workersOf(given: string): number {
  const count = Number(given);
  if (!Number.isInteger(count) || count < 1 || count > 64) throw new NeedsMending([notWorkers("--workers", given)]);
  return count;
}

function isSame(path: string, out: string): boolean {
  try {
    return realpathSync(path) === realpathSync(out);
  } catch {
    return false;
  }
}

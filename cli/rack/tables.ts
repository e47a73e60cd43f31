// ticking rack export and ticking rack import.
import {exportGarments} from "../../commands/rack/export-garments.ts";
import {importGarments} from "../../commands/rack/import-garments.ts";
import type {Problem} from "../../engine/index.ts";
import type {RackQuery} from "../../store/model.ts";
import {openSink} from "../batch/sink.ts";
import {exitCodes, printProblems} from "../ending.ts";
import {counted} from "./counted.ts";
import {queryOf, type QueryFlags} from "./query.ts";
import {columnTaken, formatOf, textOf, type Format} from "./table-file.ts";
import {done, withRack, withRackToChange, type RackFlags} from "./with-rack.ts";

export async function exportRack(words: readonly string[], flags: RackFlags & QueryFlags & {readonly out?: string; readonly format?: Format}): Promise<void> {
  const query: Partial<RackQuery> = {...queryOf(words, flags)};
  delete query.limit;
  delete query.offset;
  await withRack(flags, false, async (rack) => {
    const {pieces} = await done(exportGarments, {...query, format: flags.format ?? formatOf(flags.out ?? "")}, rack);
    const sink = await openSink(flags.out);
    for await (const piece of pieces) await sink.write(piece);
    await sink.end();
  });
}

export interface ImportFlags extends RackFlags {
  readonly format?: Format;
  readonly take?: readonly string[];
  readonly currency?: string;
  readonly try?: boolean;
}

/** All garments are taken over, or none. */
export async function importToRack(file: string, flags: ImportFlags): Promise<void> {
  const {format = formatOf(file), take = [], currency, try: tried = false} = flags;
  const mapping = Object.fromEntries(take.map(columnTaken));
  const input = {format, text: textOf(file), ...(take.length > 0 ? {mapping} : {}), ...(currency ? {currency} : {}), try: tried};
  const {columns, ready, problems, ids} = await withRackToChange(flags, true, (rack) => done(importGarments, input, rack));
  if (tried) {
    for (const {name, target, samples} of columns ?? []) process.stdout.write(`${name} → ${target === null ? "?" : target === "" ? "left out" : target}${samples.length > 0 ? `  (${samples.join(", ")})` : ""}\n`);
    printProblems(problems as readonly Problem[]);
    process.stdout.write(`${counted(ready, "garment")} could be taken over. Nothing was saved.\n`);
    if (problems.length > 0) process.exitCode = exitCodes.mend;
    return;
  }
  process.stdout.write(`${counted(ids.length, "garment hangs", "garments hang")} on the rack now, and ${ids.length === 1 ? "is" : "are"} dated.\n`);
}

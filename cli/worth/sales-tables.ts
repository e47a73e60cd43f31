// ticking sales export and ticking sales import.
import {exportSales} from "../../commands/worth/export-sales.ts";
import {importSales} from "../../commands/worth/import-sales.ts";
import type {Problem} from "../../engine/index.ts";
import type {SaleQuery} from "../../store/model.ts";
import {openSink} from "../batch/sink.ts";
import {exitCodes, printProblems} from "../ending.ts";
import {counted} from "../rack/counted.ts";
import {columnTaken, formatOf, textOf, type Format} from "../rack/table-file.ts";
import {done, withRack, withRackToChange, type RackFlags} from "../rack/with-rack.ts";
import {saleQueryOf, type SaleFlags} from "./sale-query.ts";

export async function exportSalesFile(words: readonly string[], flags: RackFlags & SaleFlags & {readonly out?: string; readonly format?: Format}): Promise<void> {
  const query: Partial<SaleQuery> = {...saleQueryOf(words, flags)};
  delete query.limit;
  delete query.offset;
  await withRack(flags, false, async (rack) => {
    const {pieces} = await done(exportSales, {...query, format: flags.format ?? formatOf(flags.out ?? "")}, rack);
    const sink = await openSink(flags.out);
    for await (const piece of pieces) await sink.write(piece);
    await sink.end();
  });
}

export interface ImportSalesFlags extends RackFlags {
  readonly format?: Format;
  readonly take?: readonly string[];
  readonly currency?: string;
  readonly days?: "day first" | "month first";
  readonly try?: boolean;
}

/** All sales are taken over, or none. */
export async function importSalesFile(file: string, flags: ImportSalesFlags): Promise<void> {
  const {format = formatOf(file), take = [], currency, days, try: tried = false} = flags;
  const mapping = Object.fromEntries(take.map(columnTaken));
  const input = {format, text: textOf(file), ...(take.length > 0 ? {mapping} : {}), ...(currency ? {currency} : {}), ...(days ? {days} : {}), try: tried};
  const {columns, ready, problems, ids} = await withRackToChange(flags, true, (rack) => done(importSales, input, rack));
  if (!tried) {
    process.stdout.write(`${counted(ids.length, "sale")} taken over.\n`);
    return;
  }
  for (const {name, target, samples} of columns ?? []) process.stdout.write(`${name} → ${target === null ? "?" : target === "" ? "left out" : target}${samples.length > 0 ? `  (${samples.join(", ")})` : ""}\n`);
  printProblems(problems as readonly Problem[]);
  process.stdout.write(`${counted(ready, "sale")} could be taken over. Nothing was saved.\n`);
  if (problems.length > 0) process.exitCode = exitCodes.mend;
}

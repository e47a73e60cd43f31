// ticking read refit: how far the reader is trusted, fitted anew to the rows that were settled.
import {writeFileSync} from "node:fs";
import type {z} from "zod";
import {refitReadingMap, type refitSchema} from "../../commands/reading/refit-reading-map.ts";
import {reliabilityPicture} from "../../commands/reading/refit/reliability-picture.ts";
import type {ReliabilityBin} from "../../reader/fit-map.ts";
import {done, withRack, withRackToChange, type RackFlags} from "../rack/with-rack.ts";
import {newPage, printJson, printPage} from "../words/print.ts";

export interface RefitFlags extends RackFlags {
  readonly try?: boolean;
  readonly out?: string;
  readonly json?: boolean;
}

export async function runRefit(flags: RefitFlags): Promise<void> {
  const tried = flags.try ?? false;
  const answer = (await (tried ? withRack : withRackToChange)(flags, false, (rack) => done(refitReadingMap, {try: tried}, rack))) as z.infer<typeof refitSchema>;
  if (flags.out !== undefined) writeFileSync(flags.out, reliabilityPicture("Whole rows, as the reader says and as they are", answer.before.rowBins, answer.after.rowBins));
  if (flags.json) return printJson(answer);
  const page = newPage();
  page.say(`${answer.confirmed} rows have been settled.`, "strong");
  page.head("Whole rows", "what the reader says of its likeliest reading, and how many are right");
  page.picture(table(answer.before.rowBins, answer.after.rowBins));
  page.head("Single characters");
  page.picture(table(answer.before.characterBins, answer.after.characterBins));
  page.say(`Says and right lie ${inHundred(answer.before.rowError)} in 100 apart before and ${inHundred(answer.after.rowError)} after for rows, ${inHundred(answer.before.characterError)} and ${inHundred(answer.after.characterError)} for characters.`);
  page.say(`temper ${answer.was.temper} → ${answer.map.temper}, mass ${answer.was.mass} → ${answer.map.mass}, places ${answer.was.places} → ${answer.map.places}, cap ${answer.was.cap} → ${answer.map.cap}`, "quiet");
  page.say(answer.saved ? "The new map is saved; photos read from now on are told by it." : "Nothing was saved.");
  printPage(page);
}

const inHundred = (p: number) => (p * 100).toFixed(1);

/** Bins of both, side by side. */
function table(before: readonly ReliabilityBin[], after: readonly ReliabilityBin[]): string[] {
  const cell = (bin: ReliabilityBin | undefined) => (bin ? `${inHundred(bin.said).padStart(6)} ${inHundred(bin.right).padStart(7)} ${String(bin.count).padStart(7)}` : " ".repeat(22));
  const rows = Array.from({length: Math.max(before.length, after.length)}, (_, i) => `${cell(before[i])}   ${cell(after[i])}`.trimEnd());
  return [`${"before".padEnd(22)}   after`, `${"  said   right   count"}   ${"  said   right   count"}`, ...rows];
}

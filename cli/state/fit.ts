// ticking fit: whether garments would fit a body.
import {Option, type Command} from "commander";
import {perform} from "../../commands/command.ts";
import {notPair} from "../../commands/problems.ts";
import {fitGarment} from "../../commands/state/fit-garment.ts";
import {dataHelp} from "../data-folder.ts";
import {NeedsMending, orMend} from "../ending.ts";
import {examples} from "../help.ts";
import type {RackFlags} from "../rack/with-rack.ts";
import {collected, verb} from "../shared.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {named, noBooks} from "./named.ts";

interface Flags extends RackFlags {
  readonly body?: readonly string[];
  readonly unit: "in" | "cm";
  readonly json?: boolean;
}

export function fitVerb(): Command {
  return verb("fit", fitGarment.summary)
    .argument("<garment...>", "numbers on the rack, or a file that ticking rack export wrote")
    .requiredOption("--body <measure=length>", "a measure of the body: waist=34, inside-leg=81cm; chest, waist, hip, thigh, inside-leg, outside-leg, neck, shoulder, arm (repeatable)", collected)
    .addOption(new Option("--unit <unit>", "of lengths that carry none").choices(["in", "cm"]).default("in"))
    .option("--json", "answer as JSON, one garment a line")
    .addOption(new Option("--data <folder>", dataHelp))
    .addHelpText("after", examples("ticking fit 0147 --body waist=34 --body inside-leg=81cm"))
    .action(run);
}

async function run(names: readonly string[], flags: Flags): Promise<void> {
  const body = Object.fromEntries(
    (flags.body ?? []).map((one) => {
      const at = one.indexOf("=");
      if (at < 1 || one.slice(at + 1).trim() === "") throw new NeedsMending([notPair("--body", one)]);
      return [one.slice(0, at).trim(), {typed: one.slice(at + 1).trim(), unit: flags.unit}];
    }),
  );
  const page = newPage();
  for (const {subject} of await named(names, flags)) {
    const fit = orMend(perform(fitGarment, {of: subject, body}, noBooks()));
    if (flags.json) {
      printJson({garment: subject.name, ...fit}, 0);
      continue;
    }
    page.head(subject.name);
    page.say(fit.sentence, "strong");
    for (const {sentence} of fit.points) page.item("- ", `${sentence}.`);
    if (fit.missing.length > 0) page.say(`Not compared: ${fit.missing.join(", ")}.`, "quiet");
  }
  page.blank();
  printPage(page);
}

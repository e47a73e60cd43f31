// ticking read: photos of labels to rows with doubt, and with --date to a date; and refitting how far the reader is trusted.
import {Option, type Command} from "commander";
import {refitReadingMap} from "../commands/reading/refit-reading-map.ts";
import {dataHelp} from "./data-folder.ts";
import {examples} from "./help.ts";
import type {ReadFlags} from "./reader/flags.ts";
import {verb, withWorld} from "./shared.ts";

const words = `
A photo is read on this machine; nothing leaves it. Each row is told with how likely it is, in 100, and with the readings next to it. The
rows of a maker's label are read together with what that maker's labels can print, when --maker (and --label, when known) say whose they are.

A folder is read photo by photo in the order of names. A photo that cannot be read is told with what to do, and the others go on. With
--json every photo gives one line.`;

export function readVerb(): Command {
  const command = verb("read", "read the rows of a label from photos, with their doubt")
    .usage("[options] <photo-or-folder...>")
    .argument("<photo-or-folder...>", "photos of labels as JPEG, PNG, WebP or AVIF, or folders of them")
    .option("--maker <id>", "id of a maker's rule book, several divided by |")
    .option("--label <kind>", "kind of the label, when known")
    .option("--date", "say when it was made, from the label alone")
    .addOption(new Option("--turn <degrees>", "how far to turn the photos clockwise; found out when left out").choices(["0", "90", "180", "270"]))
    .option("--json", "answer as JSON: one object for one photo, one object a line for several");
  withWorld(command)
    .addHelpText("after", words + examples("ticking read label.jpg", "ticking read label.jpg --maker marrowfield --label green-satin --date", "ticking read photos --maker marrowfield --json > read.jsonl", "ticking read refit --try"))
    .action(async (paths: readonly string[], flags: ReadFlags) => (await import("./reader/run.ts")).runRead(paths, flags));
  command.addCommand(
    verb("refit", refitReadingMap.summary)
      .addOption(new Option("--data <folder>", dataHelp))
      .option("--try", "save nothing")
      .option("--out <file.svg>", "draw the reliability before and after")
      .option("--json", "answer as JSON")
      .addHelpText("after", examples("ticking read refit --try", "ticking read refit --out reliability.svg"))
      .action(async (...given: Parameters<typeof import("./reader/refit.ts").runRefit>) => (await import("./reader/refit.ts")).runRefit(...given)),
  );
  return command;
}

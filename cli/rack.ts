// ticking rack: the garments that are kept, from a terminal; a server may have the same rack open.
import {Option, type Command} from "commander";
import {standings} from "../store/model.ts";
import {dataHelp} from "./data-folder.ts";
import {examples} from "./help.ts";
import {withQuery} from "./rack/query.ts";
import {collected, verb} from "./shared.ts";

const asJson = ["--json", "answer as JSON"] as const;
const garmentHelp = "its number, or its id";
const formats = () => new Option("--format <form>", "the form of the file; told by its name when left out").choices(["csv", "json", "jsonl"]);

const words = `
The rack lives in one folder: ticking.sqlite, photos and backups. Several programs can work on it at once, ticking serve among them.
Before a verb changes anything it makes the backup of the day; seven days, four weeks and twelve months of them stay.`;

export function rackVerb(): Command {
  const rack = verb("rack", "keep garments: list, add, show, undo, import, back up, archive");
  const part = (name: string, summary: string) => verb(name, summary).addOption(new Option("--data <folder>", dataHelp));
  const changing = (name: string, summary: string) => part(name, summary).option("--who <name>", "who makes the change, for the history; owner when left out");
  rack.addCommand(
    withQuery(part("list", "list garments, all or those that fit").argument("[words...]", "words, their beginnings, and codes"))
      .option("--limit <count>", "at most so many; 100 when left out")
      .option(...asJson)
      .addHelpText("after", examples("ticking rack list", "ticking rack list 412-03 --standing 'for sale'", "ticking rack list --from 1960 --until 1969 --at-least 0.8 --sort date"))
      .action(async (...given: Parameters<typeof import("./rack/list.ts").listRack>) => (await import("./rack/list.ts")).listRack(...given)),
  );
  rack.addCommand(
    changing("add", "hang garments on the rack, dated")
      .argument("<file...>", "garments as YAML or JSON; - reads one from stdin")
      .option("--place <words>", "where they are kept")
      .addOption(new Option("--standing <word>", "where they stand").choices(standings))
      .option("--paid <amount>", 'what was paid, like "12.50 EUR"')
      .option("--asked <amount>", "what is asked")
      .option("--tag <word>", "a tag (repeatable)", collected)
      .option("--photo <file>", "a photo of the garment (repeatable)", collected)
      .addHelpText("after", examples("ticking rack add rulebooks/demo/garments/0147.yaml --place 'rail 3' --tag worn", "ticking rack add 0471.yaml --photo front.jpg --photo label.jpg --asked '85.00 EUR'"))
      .action(async (...given: Parameters<typeof import("./rack/add.ts").addToRack>) => (await import("./rack/add.ts")).addToRack(...given)),
  );
  rack.addCommand(part("show", "show everything that is kept of a garment").argument("<garment>", garmentHelp).option(...asJson).addHelpText("after", examples("ticking rack show 0147")).action(async (...given: Parameters<typeof import("./rack/show.ts").showGarment>) => (await import("./rack/show.ts")).showGarment(...given)));
  rack.addCommand(part("history", "show who changed what about a garment, and when").argument("<garment>", garmentHelp).option(...asJson).addHelpText("after", examples("ticking rack history 0147")).action(async (...given: Parameters<typeof import("./rack/history.ts").printHistory>) => (await import("./rack/history.ts")).printHistory(...given)));
  rack.addCommand(
    changing("undo", "make a garment what it was at an earlier step; that becomes a new step").argument("<garment>", garmentHelp).argument("<step>", "the step to go back to").addHelpText("after", examples("ticking rack undo 0147 1")).action(async (...given: Parameters<typeof import("./rack/history.ts").undoTo>) => (await import("./rack/history.ts")).undoTo(...given)),
  );
  rack.addCommand(
    changing("remove", "take garments off the rack; their history stays")
      .argument("<garment...>", garmentHelp)
      .addHelpText("after", examples("ticking rack remove 0147"))
      .action(async (...given: Parameters<typeof import("./rack/remove.ts").removeFromRack>) => (await import("./rack/remove.ts")).removeFromRack(...given)),
  );
  rack.addCommand(
    changing("put-back", "hang removed garments on the rack again")
      .argument("<garment...>", garmentHelp)
      .addHelpText("after", examples("ticking rack put-back 0147"))
      .action(async (...given: Parameters<typeof import("./rack/remove.ts").putBack>) => (await import("./rack/remove.ts")).putBack(...given)),
  );
  rack.addCommand(
    withQuery(part("export", "write garments as a table or as JSON, all or those that fit").argument("[words...]", "words, their beginnings, and codes"))
      .option("-o, --out <file>", "write to a file; stdout when left out")
      .addOption(formats())
      .addHelpText("after", examples("ticking rack export > rack.csv", "ticking rack export --standing sold -o sold.jsonl"))
      .action(async (...given: Parameters<typeof import("./rack/tables.ts").exportRack>) => (await import("./rack/tables.ts")).exportRack(...given)),
  );
  rack.addCommand(
    changing("import", "take garments over from a table or from JSON: all, or none")
      .argument("<file>", "a table or garments as JSON; - reads stdin")
      .addOption(formats())
      .option("--take <column=entry>", "what a column is taken as; nothing behind the = leaves it out (repeatable)", collected)
      .option("--currency <code>", "of amounts that name none, like EUR")
      .option("--try", "save nothing; say what would be taken over, and what has to be mended")
      .addHelpText("after", examples("ticking rack import rack.csv --try", "ticking rack import stock.csv --take shelf=place --take weight= --currency EUR"))
      .action(async (...given: Parameters<typeof import("./rack/tables.ts").importToRack>) => (await import("./rack/tables.ts")).importToRack(...given)),
  );
  rack.addCommand(
    part("backup", "copy the database while others go on, and thin out old copies")
      .option("--list", "list the backups instead")
      .addHelpText("after", `\nA backup is a whole rack without its photos, which never change. ticking rack restore makes a rack of one again, in a new folder.${examples("ticking rack backup", "ticking rack backup --list")}`)
      .action(async (...given: Parameters<typeof import("./rack/safety.ts").backUp>) => (await import("./rack/safety.ts")).backUp(...given)),
  );
  rack.addCommand(part("archive", "write everything into one zip file: data, history, photos and books").argument("<file.zip>", "a new file").addHelpText("after", examples("ticking rack archive shop.zip")).action(async (...given: Parameters<typeof import("./rack/safety.ts").archiveTo>) => (await import("./rack/safety.ts")).archiveTo(...given)));
  rack.addCommand(part("restore", "restore an archive to a new or empty rack, bit for bit or not at all; or make a new rack of a backup").argument("<file>", "an archive (.zip), or a backup (.sqlite) where it was made").addHelpText("after", examples("ticking rack restore shop.zip --data shop-again", "ticking rack restore ticking-rack/backups/rack-2026-06-01T10-20-30Z.sqlite --data rack-of-june")).action(async (...given: Parameters<typeof import("./rack/safety.ts").restoreFrom>) => (await import("./rack/safety.ts")).restoreFrom(...given)));
  rack.addCommand(part("check", "look whether the database and every photo are sound").addHelpText("after", examples("ticking rack check")).action(async (...given: Parameters<typeof import("./rack/safety.ts").checkRack>) => (await import("./rack/safety.ts")).checkRack(...given)));
  return rack.addHelpText("after", words + "\n" + examples("ticking rack add rulebooks/demo/garments/0147.yaml", "ticking rack list", "ticking rack archive shop.zip"));
}

// ticking paper: dating sheets, hang tags, listing text, wall charts, and checking a printed sheet.
import {Option, type Command} from "commander";
import {chartSizes, forms, sheetSizes, tagCodes} from "../commands/paper/choices.ts";
import {tagFormats} from "../commands/paper/tag-format.ts";
import {dataHelp} from "./data-folder.ts";
import {examples} from "./help.ts";
import {withQuery} from "./rack/query.ts";
import {verb, withWorld} from "./shared.ts";

const words = `
Garments are chosen as in ticking rack list: by words, codes and flags; --number names them one by one. The shop's name, address and country,
the template of listings and the rule for grades are settings that the screens change.`;

export function paperVerb(): Command {
  const paper = verb("paper", "print what goes with garments: dating sheets, hang tags, listings, wall charts");
  const part = (name: string, summary: string) => verb(name, summary).addOption(new Option("--data <folder>", dataHelp));
  const chosen = (command: Command) => withQuery(command.argument("[words...]", "words, their beginnings, and codes").option("--number <number...>", "garments by their numbers, in this order"));
  const size = () => new Option("--size <page>", "size of the page").choices(sheetSizes).default("a4");
  paper.addCommand(
    chosen(part("sheet", "make dating sheets: verdict, months, evidence with its sources, measurements, state"))
      .addOption(size())
      .option("-o, --out <file>", "one file with all sheets: .pdf, or .html for one garment; dating-sheets.pdf when left out")
      .option("--each <folder>", "a file for each garment in this folder instead")
      .option("--photos <count>", "photos shown, the first ones, 0 to 12; 4 when left out")
      .option("--worth", "tell what a garment may be worth, too, as an estimate from comparable sales")
      .addHelpText("after", examples("ticking paper sheet --number 0147 -o 0147.pdf", "ticking paper sheet --number 0147 -o 0147.html", "ticking paper sheet --standing 'for sale' --each sheets --size letter"))
      .action(async (...given: Parameters<typeof import("./paper/sheet.ts").makeSheets>) => (await import("./paper/sheet.ts")).makeSheets(...given)),
  );
  paper.addCommand(
    chosen(part("tags", "make hang tags with marks to cut along"))
      .addOption(size())
      .addOption(new Option("--format <name>", `format of the tags: ${tagFormats.map(({name}) => name).join("; ")}`).choices(tagFormats.map(({id}) => id)).default(tagFormats[0]!.id))
      .addOption(new Option("--code <kind>", "what carries the number: a square code, or bars").choices(tagCodes).default("qr"))
      .option("--no-price", "leave out what is asked")
      .option("-o, --out <file.pdf>", "hang-tags.pdf when left out")
      .addHelpText("after", examples("ticking paper tags --standing 'for sale'", "ticking paper tags --format ticket --code bars --size letter -o tags.pdf"))
      .action(async (...given: Parameters<typeof import("./paper/tags.ts").makeTags>) => (await import("./paper/tags.ts")).makeTags(...given)),
  );
  paper.addCommand(
    chosen(part("listing", "write listing text from what was examined"))
      .addOption(new Option("--form <form>", "plain text, Markdown, or schema.org data as JSON").choices(forms).default("plain"))
      .option("-o, --out <file>", "write to a file; stdout when left out")
      .addHelpText("after", examples("ticking paper listing --number 0147", "ticking paper listing --number 0147 --form json -o 0147.json"))
      .action(async (...given: Parameters<typeof import("./paper/listing.ts").writeListings>) => (await import("./paper/listing.ts")).writeListings(...given)),
  );
  paper.addCommand(
    withWorld(verb("chart", "make the wall chart of a rule book: labels with their time, codes, where to look").argument("<book>", "id of a book, or the path of a book file or folder"))
      .addOption(new Option("--size <page>", "size of the page").choices(chartSizes).default("a3"))
      .option("-o, --out <file.pdf>", "wall-chart.pdf when left out")
      .addHelpText("after", examples("ticking paper chart marrowfield", "ticking paper chart marrowfield --size a2 -o wall.pdf"))
      .action(async (...given: Parameters<typeof import("./paper/chart.ts").makeChart>) => (await import("./paper/chart.ts")).makeChart(...given)),
  );
  paper.addCommand(
    part("check", "say whether a printed sheet still says what is kept")
      .argument("<code>", "what its square code says, or the letters below it")
      .option("--number <number>", "the garment's number, when only the letters are given")
      .option("--on <day>", "the day of the sheet, like 2026-11-25, when only the letters are given")
      .option("--record <file.json>", "compare with a garment taken out of a rack instead of the rack")
      .option("--json", "answer as JSON")
      .addHelpText("after", examples("ticking paper check 'ticking:sheet/1?i=…'", "ticking paper check SUQZ-XHMP-UCPZ --number 0147 --on 2026-11-25"))
      .action(async (...given: Parameters<typeof import("./paper/check.ts").checkPaper>) => (await import("./paper/check.ts")).checkPaper(...given)),
  );
  return paper.addHelpText("after", `${words}\n${examples("ticking paper sheet --number 0147 -o 0147.pdf", "ticking paper tags --standing 'for sale'", "ticking paper chart marrowfield")}`);
}

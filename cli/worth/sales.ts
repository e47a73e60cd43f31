// ticking sales: what such things were sold for, the shop's own and others' sales.
import {Option, type Command} from "commander";
import {grades} from "../../state/model.ts";
import {saleSorts} from "../../store/model.ts";
import {dataHelp} from "../data-folder.ts";
import {examples} from "../help.ts";
import {collected, verb} from "../shared.ts";

const asJson = ["--json", "answer as JSON"] as const;
const formats = () => new Option("--format <form>", "the form of the file; told by its name when left out").choices(["csv", "json", "jsonl"]);

const words = `
Prices are learned from these sales. A garment of the rack that is marked as sold (ticking sold) counts by itself and need not be written down
a second time.`;

export function salesVerb(): Command {
  const sales = verb("sales", "keep sales to learn prices from: list, add, import, export, remove");
  const part = (name: string, summary: string) => verb(name, summary).addOption(new Option("--data <folder>", dataHelp));
  const changing = (name: string, summary: string) => part(name, summary).option("--who <name>", "who makes the change, for the history; owner when left out");
  const chosen = (command: Command) =>
    command
      .argument("[words...]", "words, and parts of them")
      .option("--kind <word>", "of this kind: trousers, jacket ...")
      .option("--maker <id>", "of this maker")
      .addOption(new Option("--grade <word>", "in this state").choices(grades))
      .option("--channel <words>", "sold through this channel")
      .option("--from <day>", "sold on this day or later, like 2026-01-31")
      .option("--until <day>", "sold on this day or earlier")
      .option("--own", "of garments on the rack only")
      .option("--others", "of others only")
      .addOption(new Option("--sort <by>", "in this order; the latest first when left out").choices(saleSorts))
      .option("--turned", "in the order turned round");
  sales.addCommand(
    chosen(part("list", "list sales, all or those that fit"))
      .option("--removed", "the removed ones instead")
      .option("--limit <count>", "at most so many; 100 when left out")
      .option(...asJson)
      .addHelpText("after", examples("ticking sales list", "ticking sales list --kind jacket --from 2026-01-01 --sort price"))
      .action(async (...given: Parameters<typeof import("./list-sales.ts").listSales>) => (await import("./list-sales.ts")).listSales(...given)),
  );
  sales.addCommand(
    changing("add", "write down a sale")
      .requiredOption("--on <day>", "the day it was sold, like 2026-03-14")
      .requiredOption("--price <amount>", 'what the buyer paid, like "120.00 EUR"; in the currency of the terms when it names none')
      .requiredOption("--kind <word>", "trousers, jacket, shirt ...")
      .option("--maker <id>", "id of a rule book, or a name")
      .option("--lot <words>", "lot or model")
      .option("--made <time>", "when it was made: 1968, 1960s, 1968-03 or 1966-1969")
      .option("--size <words>", "as it would be said: W 34 L 32, M")
      .option("--grade <word>", `its state: ${grades.join(", ")}`)
      .option("--fees <amount>", "what the channel kept")
      .option("--channel <words>", "where it was sold")
      .option("--note <words>", "whatever tells it apart")
      .addHelpText("after", examples('ticking sales add --on 2026-03-14 --price "180.00 USD" --kind trousers --maker marrowfield --made 1966-1969 --grade good'))
      .action(async (...given: Parameters<typeof import("./add-sale.ts").addOneSale>) => (await import("./add-sale.ts")).addOneSale(...given)),
  );
  sales.addCommand(
    changing("import", "take sales over from a table or from JSON: all, or none")
      .argument("<file>", "a table or sales as JSON; - reads stdin")
      .addOption(formats())
      .option("--take <column=entry>", "what a column is taken as; nothing behind the = leaves it out (repeatable)", collected)
      .option("--currency <code>", "of amounts that name none, like EUR")
      .addOption(new Option("--days <order>", "of days like 3/4/2026").choices(["day first", "month first"]))
      .option("--try", "save nothing; say what would be taken over, and what has to be mended")
      .addHelpText("after", examples("ticking sales import sold.csv --try", 'ticking sales import sold.csv --take when=soldOn --take shelf= --currency EUR --days "day first"'))
      .action(async (...given: Parameters<typeof import("./sales-tables.ts").importSalesFile>) => (await import("./sales-tables.ts")).importSalesFile(...given)),
  );
  sales.addCommand(
    chosen(part("export", "write sales as a table or as JSON, all or those that fit"))
      .option("-o, --out <file>", "write to a file; stdout when left out")
      .addOption(formats())
      .addHelpText("after", examples("ticking sales export > sales.csv", "ticking sales export --own -o own.jsonl"))
      .action(async (...given: Parameters<typeof import("./sales-tables.ts").exportSalesFile>) => (await import("./sales-tables.ts")).exportSalesFile(...given)),
  );
  for (const [name, summary, removed] of [["remove", "take sales out of the list; their history stays", true], ["put-back", "put removed sales back into the list", false]] as const) {
    sales.addCommand(
      changing(name, summary)
        .argument("<id...>", "as ticking sales list names them")
        .addHelpText("after", examples(`ticking sales ${name} mhfw1abc0123456789`))
        .action(async (...given: Parameters<typeof import("./keep-sales.ts").removeSales>) => {
          const keep = await import("./keep-sales.ts");
          return removed ? keep.removeSales(...given) : keep.putBackSales(...given);
        }),
    );
  }
  return sales.addHelpText("after", words + "\n" + examples("ticking sales list", "ticking sales import sold.csv --try"));
}

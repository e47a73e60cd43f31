// ticking batch: a table or a list of garments in, the same with dates out, however long it is.
import {Option, type Command} from "commander";
import {briefGarment} from "../commands/brief.ts";
import {garmentSchema} from "../engine/rule/garment.ts";
import type {BatchFlags} from "./batch/flags.ts";
import {examples} from "./help.ts";
import {collected, helpOf, verb, withWorld} from "./shared.ts";

const words = `
A table is CSV (also with ; or tabs) in UTF-8 with a line of column names. The columns garment, title, maker, market, type, rows
and note say what a garment file says; every other column is the id of a mark. Several rows, makers or possible values in one cell
are divided by |. An empty cell or a single - was not looked at. A list has one garment as JSON on each line.

The result has all columns as they were, then best, probability, no_earlier, no_later, range90, makers, odd; these are written anew
when they are there already. A list gets a field "finding". Cells that begin with = + - @ or a tab get a ' before them, so that no
spreadsheet runs them as formulas; read again, the ' does not count.

A line that cannot be read is set aside and reported with its number; the others are dated all the same.`;

export function batchVerb(): Command {
  const command = verb("batch", `${briefGarment.summary.replace("a garment", "many garments")}: a table or a list in, the same with dates out`)
    .usage("[options] <in.csv | in.jsonl | ->")
    .argument("<file>", "a table or a list; - reads stdin")
    .option("-o, --out <file>", "write the result to a file; stdout when left out")
    .option("--aside <file.jsonl>", "write the lines set aside to a file, each with its problems")
    .option("--whole", "give the whole finding of each garment, as JSON on a line (slower)")
    .option("--odd", "fill the column odd, too (slower)")
    .option("--carry <column>", "hand a column through without reading it (repeatable)", collected)
    .option("--workers <number>", "share the work among so many workers", "1")
    .option("--strict", "end with 2 when a line was set aside")
    .addOption(new Option("--maker <id>", `for garments that do not say it: ${helpOf(garmentSchema, "maker")}`))
    .option("--market <id>", `for garments that do not say it: ${helpOf(garmentSchema, "market")}`)
    .option("--type <word>", "for garments that do not say it: the type");
  return withWorld(command)
    .addHelpText("after", words + examples(
      "printf 'garment,maker,rows,price\\n7,marrowfield,412-0318|3 8 21,40\\n' > rack.csv",
      "ticking batch rack.csv --carry price -o dated.csv",
      "ticking batch rack.csv --carry price --workers 2 --aside bad.jsonl > dated.csv",
      `echo '{"garment": "7", "maker": "marrowfield", "saw": {"rows": ["3 8 21"]}}' | ticking batch - --whole`,
    ))
    .action(async (file: string, flags: BatchFlags) => (await import("./batch/run.ts")).runBatch(file, flags));
}

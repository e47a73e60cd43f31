// ticking examine: garments from files or from flags, answered in words or JSON.
import {readFileSync} from "node:fs";
import type {Command} from "commander";
import {perform, type Answer} from "../commands/command.ts";
import {examineGarment, type ExamineAnswer} from "../commands/examine.ts";
import {writeGarment, type GarmentPieces} from "../commands/write-garment.ts";
import type {World} from "../commands/world.ts";
import type {Garment, Problem} from "../engine/index.ts";
import {garmentSchema} from "../engine/rule/garment.ts";
import {loadGarment} from "../rulebooks/load.ts";
import {validateGarment, type CheckedGarment} from "../rulebooks/validate.ts";
import {exitCodes, NeedsMending, printProblems} from "./ending.ts";
import {examples} from "./help.ts";
import {nothingToExamine} from "./problems.ts";
import {collected, helpOf, openWorld, verb, withWorld, type WorldFlags} from "./shared.ts";
import {writeFinding} from "./words/finding.ts";
import {newPage, printJson, printPage} from "./words/print.ts";

interface Flags extends WorldFlags, Omit<GarmentPieces, "rows"> {
  readonly row?: readonly string[];
  readonly json?: boolean;
  readonly months?: boolean;
  readonly trace?: boolean;
}

export function examineVerb(): Command {
  const command = verb("examine", examineGarment.summary)
    .usage("[options] [file...]")
    .argument("[file...]", "garments as YAML or JSON; - reads one from stdin")
    .option("--maker <id>", helpOf(garmentSchema, "maker"))
    .option("--market <id>", helpOf(garmentSchema, "market"))
    .option("--type <word>", helpOf(garmentSchema, "type"))
    .option("--saw <mark=value>", "what was seen at a mark, several possible values divided by |; an empty value takes it out (repeatable)", collected)
    .option("--row <text>", "a printed row; ? is an unreadable character, (3/8) is 3 or 8 (repeatable)", collected)
    .option("--months", "add a small picture of the months")
    .option("--trace", helpOf(examineGarment.input, "trace"))
    .option("--json", "answer as JSON: one object for one garment, one object a line for several (ticking books schema finding)");
  return withWorld(command)
    .addHelpText("after", examples(
      "ticking examine rulebooks/demo/garments/0147.yaml",
      "ticking examine rulebooks/demo/garments/0147.yaml --months --market us",
      'ticking examine --maker marrowfield --saw label=green-satin --row "412-0318" --row "3 (8/3) 21"',
      "ticking examine rulebooks/demo/garments/0147.yaml --json",
    ))
    .action(run);
}

function run(files: readonly string[], flags: Flags): void {
  const {row, saw, maker, market, type} = flags;
  const pieces: GarmentPieces = {maker, market, type, saw, rows: row};
  const typed = files.length === 0;
  if (typed && !row && !saw) throw new NeedsMending([nothingToExamine()]);
  const world = openWorld(flags);
  const given: {at: string; checked: CheckedGarment}[] = typed
    ? [{at: "", checked: {garment: {garment: "as typed", saw: {}}}}]
    : files.map((file) => ({at: file, checked: file === "-" ? validateGarment(readFileSync(0), "stdin") : loadGarment(file)}));
  const good: {garment: Garment; answer: ExamineAnswer}[] = [];
  for (const {at, checked} of given) {
    const {garment, answer, problems} = examineOne(checked, pieces, flags, world);
    if (answer) good.push({garment: garment!, answer});
    else {
      printProblems(problems!.map((problem) => ({...problem, at: checked.problems || at === "" || problem.at.startsWith("--") ? problem.at : `${at} ${problem.at}`})));
      process.exitCode = exitCodes.mend;
    }
  }
  print(good, flags, world, files.length > 1);
}

function examineOne(checked: CheckedGarment, pieces: GarmentPieces, {trace}: Flags, world: World): Answer<ExamineAnswer> & {garment?: Garment} {
  if (checked.problems) return {problems: checked.problems};
  const {garment, problems} = writeGarment(checked.garment, pieces);
  if (problems.length > 0) return {problems: problems as readonly Problem[]};
  return {...perform(examineGarment, {garment, trace: trace ?? false}, world), garment};
}

function print(good: readonly {garment: Garment; answer: ExamineAnswer}[], {json, months, trace}: Flags, world: World, several: boolean): void {
  if (json) {
    for (const {answer} of good) printJson(examineGarment.json(answer), several ? 0 : 2);
    return;
  }
  const page = newPage();
  for (const {garment, answer} of good) {
    writeFinding(page, garment, answer.finding, world, {months: months ?? false});
    if (!trace || !answer.trace) continue;
    page.head("Every stage");
    page.picture(answer.trace);
  }
  printPage(page);
}

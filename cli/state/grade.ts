// ticking grade: the grade of garments with the flaws that decided it, by the shop's rule or another; of the whole rack with --all.
import {readFileSync} from "node:fs";
import {Option, type Command} from "commander";
import {stringify} from "yaml";
import {perform} from "../../commands/command.ts";
import {readSetting} from "../../commands/rack/read-setting.ts";
import {gradeGarment} from "../../commands/state/grade-garment.ts";
import {gradeRack} from "../../commands/state/grade-rack.ts";
import {noteFlaw} from "../../commands/state/note-flaw.ts";
import {parseYaml} from "../../rulebooks/parse-yaml.ts";
import {checkShape} from "../../rulebooks/shape.ts";
import {defaultRule} from "../../state/default-rule.ts";
import {sayPoints, type Graded} from "../../state/grade.ts";
import {grades, stateSchema, type State} from "../../state/model.ts";
import {cleans, gradeRuleSchema, wears, type GradeRule} from "../../state/rule.ts";
import type {Content} from "../../store/model.ts";
import {dataHelp} from "../data-folder.ts";
import {orMend, NeedsMending} from "../ending.ts";
import {examples} from "../help.ts";
import {notFound} from "../problems.ts";
import {counted} from "../rack/counted.ts";
import {done, withRack, withStore, type RackFlags} from "../rack/with-rack.ts";
import {collected, verb} from "../shared.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {named, noBooks} from "./named.ts";
import {note} from "./note.ts";

interface Flags extends RackFlags {
  readonly rule?: string;
  readonly printRule?: boolean;
  readonly all?: boolean;
  readonly flaw?: readonly string[];
  readonly wear?: State["wear"];
  readonly clean?: State["clean"];
  readonly json?: boolean;
}

export function gradeVerb(): Command {
  return verb("grade", gradeGarment.summary)
    .argument("[garment...]", "numbers on the rack, or a file that ticking rack export wrote")
    .option("--all", "grade the whole rack instead; with --rule, say what that rule would change")
    .option("--rule <file>", "grade by another rule, as YAML or JSON")
    .option("--print-rule", "print the rule in use as YAML, to be changed")
    .option("--flaw <words>", "note a flaw, like: slight hole at the left knee, mended (repeatable)", collected)
    .addOption(new Option("--wear <word>", "note the wear").choices(wears))
    .addOption(new Option("--clean <word>", "note the cleanliness").choices(cleans))
    .option("--json", "answer as JSON, one garment a line")
    .option("--who <name>", "who makes the change, for the history; owner when left out")
    .addOption(new Option("--data <folder>", dataHelp))
    .addHelpText("after", examples("ticking grade --print-rule > rule.yaml", 'ticking grade 0147 --wear light --clean washed --flaw "hole at the left knee"', "ticking grade --all"))
    .action(run);
}

async function run(names: readonly string[], flags: Flags): Promise<void> {
  const rule = flags.rule === undefined ? null : ruleFrom(flags.rule);
  if (flags.printRule) return void process.stdout.write(stringify(rule ?? (await ruleInUse(flags)), {lineWidth: 0}));
  if (flags.all) return gradeAll(flags, rule);
  const inUse = rule ?? (await ruleInUse(flags));
  if (flags.flaw || flags.wear || flags.clean) await note(names, flags, (content) => ({state: noted(content, flags, inUse)}), "looked over");
  const page = newPage();
  for (const {subject} of await named(names, flags)) {
    const graded = orMend(perform(gradeGarment, {of: subject, rule: inUse}, noBooks()));
    if (flags.json) printJson({garment: subject.name, ...graded}, 0);
    else writeGrade(page, subject.name, graded);
  }
  printPage(page);
}

function noted({state}: Content, {flaw = [], wear, clean}: Flags, rule: GradeRule): State {
  const now = state ?? stateSchema.parse({});
  const flaws = flaw.map((words) => noteFlaw(words, rule));
  const problems = flaws.flatMap((one) => one.problems ?? []);
  if (problems.length > 0) throw new NeedsMending(problems);
  return {...now, flaws: [...now.flaws, ...flaws.map((one) => one.answer!)], wear: wear ?? now.wear, clean: clean ?? now.clean};
}

/** A folder without a rack has the rule that comes with the tool. */
async function ruleInUse(flags: RackFlags): Promise<GradeRule> {
  try {
    return await withStore(flags, false, async ({store}) => (await readSetting(store, "grade-rule")).value);
  } catch (error) {
    if (error instanceof NeedsMending) return defaultRule;
    throw error;
  }
}

function ruleFrom(path: string): GradeRule {
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch {
    throw new NeedsMending([notFound(path)]);
  }
  const read = parseYaml(text, path);
  if (read.problems.length > 0) throw new NeedsMending(read.problems);
  const {fits, problems} = checkShape(gradeRuleSchema, read.value, read.where!);
  if (problems) throw new NeedsMending(problems);
  return fits;
}

async function gradeAll(flags: Flags, rule: GradeRule | null): Promise<void> {
  const {graded, open, now, tried, moved, movedCount} = await withRack(flags, false, (rack) => done(gradeRack, {rule}, rack));
  if (flags.json) return printJson({graded, open, now, tried, moved, movedCount});
  const page = newPage();
  for (const grade of grades) page.item(grade.padEnd(11), `${now[grade]}${rule ? ` -> ${tried[grade]}` : ""}`);
  page.say(`${counted(graded, "garment")} with a state noted, ${open} without.`, "quiet");
  for (const {number, from, to, why} of moved) page.item(`${number}  `, `${from} -> ${to}. ${why}`);
  if (movedCount > moved.length) page.say(`and ${movedCount - moved.length} more.`);
  printPage(page);
}

function writeGrade(page: ReturnType<typeof newPage>, name: string, {sentence, points, parts, mended, untold}: Graded): void {
  page.head(name, sayPoints(points));
  page.say(sentence, "strong");
  for (const part of parts) if (part.points > 0) page.item(`${String(part.points).padStart(6)}  `, part.says);
  if (mended) page.say(`With every flaw mended: ${mended}.`);
  if (untold.length > 0) page.say(`As far as told; nobody said yet: ${untold.join(" and ")}.`, "quiet");
}

// ticking ask: a talk at the prompt; each answer is weighed at once, and the next question is the look that settles most for its effort.
import type {Command} from "commander";
import {askNext} from "../commands/ask.ts";
import {oneOrSeveral} from "../commands/write-garment.ts";
import type {World} from "../commands/world.ts";
import {nearest, unlisted, type Garment} from "../engine/index.ts";
import {garmentSchema} from "../engine/rule/garment.ts";
import {makePrompter, type Prompter} from "./ask/lines.ts";
import {offerToSave} from "./ask/save.ts";
import {talk} from "./ask/talk.ts";
import {examples} from "./help.ts";
import {helpOf, openWorld, verb, withWorld, type WorldFlags} from "./shared.ts";
import {writeFinding} from "./words/finding.ts";
import {newPage, printPage} from "./words/print.ts";

interface Flags extends WorldFlags {
  readonly maker?: string;
  readonly market?: string;
  readonly type?: string;
}

export function askVerb(): Command {
  const command = verb("ask", askNext.summary)
    .option("--maker <id>", helpOf(garmentSchema, "maker"))
    .option("--market <id>", helpOf(garmentSchema, "market"))
    .option("--type <word>", helpOf(garmentSchema, "type"));
  return withWorld(command)
    .addHelpText("after", examples("ticking ask", "ticking ask --maker marrowfield --type trousers", "printf 'marrowfield\\n\\n\\ndone\\n' | ticking ask"))
    .action(run);
}

async function run(flags: Flags): Promise<void> {
  const world = openWorld(flags);
  const prompter = makePrompter(process.stdin, process.stdout);
  const say = (text: string, how?: "quiet") => {
    const page = newPage();
    page.say(text, how);
    printPage(page);
  };
  say("At each question answer with what you see. Nothing is ever opened or unpicked without saying so.", "quiet");
  const start = await startOf(flags, world, prompter, say);
  const told = await talk(start, {world, prompter});
  const page = newPage();
  page.blank();
  writeFinding(page, told.garment, told.answer.finding, world, {months: false});
  printPage(page);
  await offerToSave(told.garment, told.cannotSee, prompter, say);
  prompter.close();
}

/** Maker, market and type: given as flags, or asked for; enter leaves them open. */
async function startOf(flags: Flags, world: World, prompter: Prompter, say: (text: string) => void): Promise<Garment> {
  const makers = world.books.filter(({kind}) => kind === "maker");
  const markets = [...new Set(world.books.flatMap((book) => Object.keys(book.markets)))];
  const ask = (given: string | undefined, what: string, names: readonly string[], open: boolean) => given ?? askName(prompter, say, what, names, open);
  const maker = await ask(flags.maker, `Maker [${[...makers.map(({book}) => book), unlisted].join(", ")} / several: divided by | / enter: not known]`, [...makers.map(({book}) => book), unlisted], false);
  const market = await ask(flags.market, `Sold in [${markets.join(", ")} / enter: not known]`, markets, false);
  const type = await ask(flags.type, "Type [trousers, jacket, shirt, overalls, sweatshirt ... / enter: not known]", [], true);
  return {garment: "as asked", ...(maker ? {maker: oneOrSeveral(maker)} : {}), ...(market ? {market} : {}), ...(type ? {type} : {}), saw: {}};
}

async function askName(prompter: Prompter, say: (text: string) => void, what: string, names: readonly string[], open: boolean): Promise<string> {
  for (;;) {
    const typed = (await prompter.ask(`  ${what}: `))?.trim() ?? "";
    const unknown = [typed === "" ? [] : oneOrSeveral(typed)].flat().filter((name) => !open && !names.includes(name));
    if (unknown.length === 0) return typed;
    const near = nearest(unknown[0]!, names);
    say(`${unknown[0]} is not one of them.${near ? ` Did you mean ${near}?` : ""}`);
  }
}

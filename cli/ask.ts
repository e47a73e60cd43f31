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
  const ids = [...makers.map(({book}) => book), unlisted];
  const ask = async (given: string | undefined, question: string, names: readonly string[] | null) => given ?? askName(prompter, say, question, names);
  const maker = await ask(flags.maker, `Which maker? ${ids.join(", ")}; several that it may be, divided by |; enter when not known`, ids);
  const market = await ask(flags.market, `Where was it sold? ${markets.join(", ")}; enter when not known`, markets);
  const type = await ask(flags.type, "What is it? trousers, jacket, shirt, overalls, sweatshirt ...; enter when not said", null);
  return {garment: "as asked", ...(maker ? {maker: oneOrSeveral(maker)} : {}), ...(market ? {market} : {}), ...(type ? {type} : {}), saw: {}};
}

/** @param names  what can be answered; null for any word */
async function askName(prompter: Prompter, say: (text: string) => void, question: string, names: readonly string[] | null): Promise<string> {
  say(question);
  for (;;) {
    const typed = (await prompter.ask("  > "))?.trim() ?? "";
    const unknown = names === null || typed === "" ? undefined : [oneOrSeveral(typed)].flat().find((name) => !names.includes(name));
    if (unknown === undefined) return typed;
    const near = nearest(unknown, names!);
    say(`${unknown} is not one of them.${near ? ` Did you mean ${near}?` : ""}`);
  }
}

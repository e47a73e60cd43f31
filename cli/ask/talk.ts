// The talk: a question, an answer, the date so far, the next question, until nothing is left or the asker has enough.
import {askNext, type AskAnswer, type Possible, type Question} from "../../commands/ask.ts";
import {perform, type Answer} from "../../commands/command.ts";
import type {World} from "../../commands/world.ts";
import {printProblem, rowsId, type Garment} from "../../engine/index.ts";
import {orMend} from "../ending.ts";
import type {Page} from "../words/page.ts";
import {sayLook} from "../words/look.ts";
import {readAnswer, sayHow, type Answered} from "./answer.ts";
import {newPage, printPage} from "../words/print.ts";
import type {Prompter} from "./lines.ts";

export interface Talk {
  readonly world: World;
  readonly prompter: Prompter;
}

/** What is known at some moment of the talk. */
interface Known {
  readonly garment: Garment;
  /** Marks that were passed over. */
  readonly skipped: readonly string[];
  readonly cannotSee: readonly string[];
}

export interface Told extends Known {
  readonly answer: AskAnswer;
}

/**
 * Asks until done.
 * @param start  what was given beforehand
 * @returns      the garment as answered
 */
export async function talk(start: Garment, {world, prompter}: Talk): Promise<Told> {
  const before: Known[] = [];
  let known: Known = {garment: start, skipped: [], cannotSee: []};
  let answer = orMend(weigh(known, world));
  for (;;) {
    const {question} = answer;
    const page = newPage();
    page.blank();
    page.say(answer.soFar, "strong");
    if (!question) {
      page.say("Nothing is left to look at that would change much.");
      printPage(page);
      return {...known, answer};
    }
    writeQuestion(page, question);
    printPage(page);
    const answered = await askUntilClear(question, prompter);
    if (answered.kind === "done") return {...known, answer};
    if (answered.kind === "back") {
      known = before.pop() ?? known;
      answer = orMend(weigh(known, world));
      continue;
    }
    const next = after(known, question, answered);
    const weighed = weigh(next, world);
    if (weighed.problems) {
      const wrong = newPage();
      for (const problem of weighed.problems) wrong.say(printProblem(problem), "odd");
      printPage(wrong);
      continue;
    }
    before.push(known);
    known = next;
    answer = weighed.answer;
  }
}

function weigh({garment, skipped, cannotSee}: Known, world: World): Answer<AskAnswer> {
  return perform(askNext, {garment, skip: [...skipped, ...cannotSee]}, world);
}

function after(known: Known, {id}: Question, answered: Answered): Known {
  if (answered.kind === "value") {
    const value = id === rowsId ? [answered.value].flat() : answered.value;
    return {...known, garment: {...known.garment, saw: {...known.garment.saw, [id]: value} as Garment["saw"]}};
  }
  return answered.kind === "cannot see" ? {...known, cannotSee: [...known.cannotSee, id]} : {...known, skipped: [...known.skipped, id]};
}

function writeQuestion(page: Page, question: Question): void {
  const {title, effort} = sayLook(question);
  page.head(title);
  if (question.look) page.say(question.look);
  page.say(effort, "quiet");
  const inline = question.values.map(({name}, i) => `${i + 1} ${name}`).join(" · ");
  if (question.values.length > 0 && inline.length <= 2 * page.room) page.say(inline);
  page.say(sayHow(question), "quiet");
}

async function askUntilClear(question: Question, prompter: Prompter): Promise<Answered> {
  for (;;) {
    const typed = await prompter.ask("  > ");
    const answered = readAnswer(typed, question);
    if (answered.kind === "value" && question.id === rowsId) return {kind: "value", value: await moreRows([answered.value].flat(), prompter)};
    if (answered.kind !== "list") return answered;
    const page = newPage();
    writeValues(page, question.values);
    printPage(page);
  }
}

async function moreRows(rows: readonly string[], prompter: Prompter): Promise<string[]> {
  const typed = (await prompter.ask("  next row [enter: that was all / back] > "))?.trim() ?? "";
  if (typed === "" || typed === "done") return [...rows];
  return moreRows(typed === "back" ? rows.slice(0, -1) : [...rows, typed], prompter);
}

function writeValues(page: Page, values: readonly Possible[]): void {
  const room = String(values.length).length;
  values.forEach(({id, name, says}, i) => {
    page.item(`${String(i + 1).padStart(room)}  `, `${name} (${id})`);
    if (says) page.item(" ".repeat(room + 2), says, "quiet");
  });
  page.say("Several that it may be: divide them by |. Also: other, none, ? for an unreadable character, (3/8) for 3 or 8.", "quiet");
}

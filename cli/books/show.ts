// ticking books show.
import {perform} from "../../commands/command.ts";
import {showBook, type MarkPage, type ShowAnswer} from "../../commands/show-book.ts";
import {orMend} from "../ending.ts";
import type {WorldFlags} from "../shared.ts";
import {sayAuthority, sayWindowIn} from "../words/authority.ts";
import type {Page} from "../words/page.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {printList} from "./list.ts";
import {worldWith} from "./open.ts";
import {sayBook} from "./say-book.ts";

export function printShow(name: string | undefined, mark: string | undefined, flags: WorldFlags & {readonly json?: boolean}): void {
  if (name === undefined) return printList(flags);
  const {world, id} = worldWith(name, flags);
  const answer = orMend(perform(showBook, {book: id, mark}, world));
  if (flags.json) return printJson(showBook.json(answer));
  const page = newPage();
  if (answer.page) writeMark(page, answer.page);
  else writeBook(page, answer);
  printPage(page);
}

const answers: Readonly<Record<string, string>> = {choice: "one of", presence: "yes or no", serial: "a number", coded: "as printed", repeat: "as stamped"};

function writeBook(page: Page, {summary, note, marks}: ShowAnswer): void {
  page.say(`${summary.title}, edition ${summary.edition}`, "strong");
  page.say(sayBook(summary), "quiet");
  if (note) page.say(note);
  page.head("Marks", "id, what it is, how it is given");
  const room = Math.min(page.room >> 1, Math.max(0, ...marks.map(({mark}) => mark.length)) + 2);
  for (const {mark, name, place, kind} of marks) page.item(mark.padEnd(room), `${name}${place === name ? "" : `, ${place}`} (${answers[kind] ?? kind})`);
}

function writeMark(page: Page, {mark, name, place, look, says, caution, kind, statements}: MarkPage): void {
  page.say(`${mark}: ${name}`, "strong");
  page.say(`${place}. ${look}`, "quiet");
  if (says) page.say(says);
  if (caution) page.say(caution, "odd");
  page.head(kind === "choice" ? "What it can be" : kind === "serial" ? "Numbers and their months" : "What the book says of it");
  for (const {id, name: what, says: words, window, source, cite} of statements) {
    page.item("", what === id || kind === "serial" ? what : `${id}: ${what}`);
    page.item("   ", `${kind === "serial" ? "" : "in use "}${sayWindowIn(window)}`);
    if (words) page.item("   ", words, "quiet");
    page.item("   ", sayAuthority(source, cite), "quiet");
  }
}

// ticking books list.
import {perform} from "../../commands/command.ts";
import {listBooks} from "../../commands/list-books.ts";
import {orMend} from "../ending.ts";
import {openWorld, type WorldFlags} from "../shared.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {sayBook} from "./say-book.ts";

export function printList(flags: WorldFlags & {readonly json?: boolean}): void {
  const books = orMend(perform(listBooks, {}, openWorld(flags)));
  if (flags.json) return printJson(listBooks.json(books));
  const page = newPage();
  const room = Math.max(0, ...books.map(({book}) => book.length)) + 2;
  for (const book of books) {
    page.item(book.book.padEnd(room), `${book.title}, edition ${book.edition}`);
    page.item(" ".repeat(room), sayBook(book), "quiet");
  }
  if (books.length === 0) page.say("No rule book is loaded.");
  printPage(page);
}

// ticking books compare.
import {perform} from "../../commands/command.ts";
import {compareEditions} from "../../commands/compare-books.ts";
import {makeWorld} from "../../commands/world.ts";
import {printChanges} from "../../rulebooks/compare.ts";
import {thisMonth} from "../clock.ts";
import {orMend} from "../ending.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {openBook} from "./open.ts";

export function compareTwo(old: string, newer: string, {json}: {readonly json?: boolean}): void {
  const [before, after] = [openBook(old), openBook(newer)];
  const changes = orMend(perform(compareEditions, {before, after}, makeWorld([before], thisMonth())));
  if (json) return printJson(compareEditions.json(changes));
  const page = newPage();
  page.say(`${before.title}, edition ${before.edition}, and ${after.title}, edition ${after.edition}`, "strong");
  for (const line of printChanges(changes)) page.item(line.slice(0, 2), line.slice(2));
  printPage(page);
}

// ticking books check.
import {checkBook} from "../../commands/check-book.ts";
import {loadBook} from "../../rulebooks/load.ts";
import {exitCodes, printProblems} from "../ending.ts";
import {bookPaths} from "../shared.ts";
import {newPage, printPage} from "../words/print.ts";
import {sayBook} from "./say-book.ts";

export function checkBooks(paths: readonly string[]): void {
  const page = newPage();
  let mend = 0;
  for (const path of paths.flatMap(bookPaths)) {
    const {answer, problems} = checkBook(loadBook(path));
    if (answer) page.say(`${path}: fine. ${answer.title}, edition ${answer.edition}: ${sayBook(answer)}.`);
    else {
      printProblems(problems);
      mend += problems.length;
    }
  }
  printPage(page);
  if (mend === 0) return;
  process.stderr.write(`${mend} ${mend === 1 ? "problem" : "problems"} to mend.\n`);
  process.exitCode = exitCodes.mend;
}

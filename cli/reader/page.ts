// What is told of one photo in words: its rows with their doubt, what they suggest, and the date.
import {sayOdds, type Problem} from "../../engine/index.ts";
import {verdictOf} from "../../commands/verdict.ts";
import type {ReadRow} from "../../reader/model.ts";
import {printProblem} from "../../engine/problem.ts";
import type {Page} from "../words/page.ts";
import type {OnePhoto} from "./one-photo.ts";

/** Other readings that are told beside the likeliest, and how likely they have to be. */
const mostOthers = 3;
const worthTelling = 0.03;

export function writePhoto(page: Page, {path, reading, says, problems, finding}: OnePhoto): void {
  page.head(path, reading ? `read by ${reading.reader}${reading.turn ? `, turned by ${reading.turn}°` : ""}` : "not read");
  reading?.rows.forEach(({read}, i) => page.item(`${String(i + 1).padStart(3)}  `, sayRow(read)));
  if (says && says.marks.length > 0) {
    page.say("The words on it suggest, for you to confirm:", "quiet");
    for (const {mark, value, why} of says.marks) page.item("     ", `${mark}=${[value].flat().join("|")}: ${why}`);
  }
  if (says && says.kinds.length > 0) page.say(`The label is most likely ${says.kinds.slice(0, 3).filter(({odds}) => odds > worthTelling).map(({name, odds}) => `${name}, ${sayOdds(odds)}`).join("; or ")}.`, "quiet");
  if (finding) page.say(`${verdictOf(finding).sentence}.`, "strong");
  for (const problem of problems as readonly Problem[]) page.say(printProblem(problem), "odd");
}

/** "412-0318: 91 in 100; or 412-0316 (4), 4120318 (3); none of these 2" */
export function sayRow({best, strings, none}: ReadRow): string {
  const [first, ...others] = strings;
  if (!first) return best;
  const near = others.filter(({p}) => p >= worthTelling).slice(0, mostOthers).map(({text, p}) => `${text} (${Math.round(p * 100)})`);
  return [`${first.text}: ${sayOdds(first.p)}`, ...(near.length > 0 ? [`or ${near.join(", ")}`] : []), ...(none >= worthTelling ? [`none of these ${Math.round(none * 100)}`] : [])].join("; ");
}

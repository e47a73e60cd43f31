// A finding as a page of words: verdict, bounds, rows, what counted, what does not fit, where to look next.
import {headline, sayMonth, sayOdds, sayRuns, type Book, type Finding, type Garment, type MonthIndex, type Reading, type RowReadings} from "../../engine/index.ts";
import {notice} from "../../commands/finding-json.ts";
import {rowParts, sayReading} from "../../commands/show-rows.ts";
import {possibleReproduction, verdictOf} from "../../commands/verdict.ts";
import {bookOf, makerTitle, type World} from "../../commands/world.ts";
import {writeLedger} from "./ledger.ts";
import {monthPicture, shadeWords} from "./month-picture.ts";
import {sayLook} from "./look.ts";
import type {Page} from "./page.ts";
import {rowPicture, sayDoubts} from "./row-picture.ts";
import {padded, plainText} from "./wrap.ts";

/** Readings less likely than this are not told. */
const worthTelling = 0.005;

/** Writes the whole page. */
export function writeFinding(page: Page, garment: Garment, finding: Finding, world: World, {months}: {readonly months: boolean}): void {
  writeTitle(page, garment, finding, world);
  writeVerdict(page, finding);
  if (months) writeMonths(page, finding);
  if (finding.makers.length > 1) writeMakers(page, finding, world);
  writeRows(page, finding, world);
  writeUnread(page, finding);
  writeLedger(page, finding, world);
  writeNext(page, finding);
  writeFoot(page, finding, world);
}

function writeTitle(page: Page, garment: Garment, finding: Finding, world: World): void {
  page.blank();
  page.say(garment.title ? `${garment.garment} · ${garment.title}` : garment.garment, "strong");
  const maker = finding.makers.length === 1 ? makerTitle(world, finding.makers[0]!.maker) : `${finding.makers.length} possible makers`;
  page.say([maker, ...(garment.market ? [`sold in: ${garment.market}`] : []), ...(garment.type ? [garment.type] : [])].join(" · "), "quiet");
  page.blank();
}

function writeVerdict(page: Page, finding: Finding): void {
  const {kind, sentence} = verdictOf(finding);
  page.say(sentence, "strong");
  const fact = (name: string, value: string) => page.item(padded(name, 19), value);
  if (kind === "two dates") {
    fact("if of one date", `${headline(finding).words}; no earlier than ${sayMonth(finding.noEarlier)}, no later than ${sayMonth(finding.noLater)}`);
    return;
  }
  fact("no earlier than", sayMonth(finding.noEarlier));
  fact("no later than", sayMonth(finding.noLater));
  fact("90 in 100 within", sayRuns(finding.sets[1]!.runs));
  const other = possibleReproduction(finding);
  if (other) page.say(`It may be a later reproduction, ${sayOdds(other.probability)}: ${other.words}.`, "odd");
}

function writeMonths(page: Page, finding: Finding): void {
  page.head("The months", "each column a year");
  page.picture(monthPicture(finding, page.room), "moved");
  page.say(shadeWords, "quiet");
}

function writeMakers(page: Page, {makers}: Finding, world: World): void {
  page.head("The maker");
  page.odds([...makers].sort((a, b) => b.probability - a.probability).map(({maker, probability}) => [probability, makerTitle(world, maker)]));
}

function writeRows(page: Page, finding: Finding, world: World): void {
  const book = bookOf(world, finding.makers.reduce((a, b) => (b.probability > a.probability ? b : a)).maker);
  if (finding.rows.length > 0) page.head("The rows of numbers, as they most likely read");
  for (const row of finding.rows) {
    page.blank();
    writeRow(page, row, finding, book);
  }
}

function writeRow(page: Page, row: RowReadings, finding: Finding, book: Book | undefined): void {
  const best = row.readings[0];
  if (!best) return;
  const parts = rowParts(best);
  page.picture(rowPicture(parts, page.room));
  for (const doubt of sayDoubts(parts)) page.say(doubt, "quiet");
  const told = row.readings.filter(({probability}) => probability >= worthTelling).slice(0, 5);
  const dated = told.some(({date}) => date !== null);
  if (told.length < 2 && !dated) return;
  page.odds(told.map((reading) => {
    const months = monthsLeft(reading, finding).map(sayMonth).join(", ");
    return [reading.probability, `${sayReading(reading, book)}${months ? `: ${months}` : ""}`];
  }));
}

/** The months of a reading's date that everything seen leaves, three at most; the likeliest one in any case. */
function monthsLeft({months}: Reading, {posterior, first}: Finding): MonthIndex[] {
  return months.filter((month, i) => i === 0 || posterior[month - first]! >= worthTelling).slice(0, 3);
}

function writeUnread(page: Page, {unread}: Finding): void {
  if (unread.length === 0) return;
  page.head("Not read as a date");
  for (const {text, why} of unread) page.item("", `“${text}”: ${why}`);
}

function writeNext(page: Page, {next}: Finding): void {
  page.head("Where to look next");
  const looks = next.filter(({bits}) => bits >= 0.02).slice(0, 3);
  if (looks.length === 0) page.say("No mark that was not looked at yet would change much.");
  looks.forEach((look, i) => {
    const {title, effort} = sayLook(look);
    page.item(`${i + 1}  `, title);
    if (look.look) page.item("   ", look.look, "quiet");
    page.item("   ", effort, "quiet");
  });
}

function writeFoot(page: Page, {rules, makers}: Finding, world: World): void {
  const cautions = [...new Set(rules.flatMap(({caution}) => caution ?? []))];
  if (cautions.length > 0) page.head("Take care");
  for (const caution of cautions) page.say(caution);
  page.blank();
  const used = new Set([...rules.map(({book}) => book), ...makers.flatMap(({maker}) => maker ?? [])]);
  const books = world.books.filter(({book}) => used.has(book)).map(({title, edition}) => `${plainText(title)}, edition ${edition}`);
  if (books.length > 0) page.say(`Rule books: ${books.join("; ")}.`, "quiet");
  page.say(notice, "quiet");
}

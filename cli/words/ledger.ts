// The ledger in words: what each mark weighed, what was seen, when that was in use, and how it is known.
import {rowsId, sayOdds, type Finding, type Reading, type RuleUsed} from "../../engine/index.ts";
import {sayReading} from "../../commands/show-rows.ts";
import {verdictOf} from "../../commands/verdict.ts";
import {bookOf, type World} from "../../commands/world.ts";
import {sayAuthority, sayWindowIn} from "./authority.ts";
import type {Page} from "./page.ts";
import {padded} from "./wrap.ts";

/** Bits from which on a mark gets one more dash. Source: own choice; each step weighs about twice the one before. */
const steps = [0.02, 0.2, 0.7, 1.5, 3];

/** Weight as none to five dashes. */
export const weightBar = (bits: number) => "━".repeat(steps.filter((step) => bits >= step).length);

const indent = padded("", 7);

/** Writes the ledger: what does not fit first, then by weight. */
export function writeLedger(page: Page, finding: Finding, world: World): void {
  if (finding.ledger.length === 0 && finding.odd.length === 0) return;
  page.head("What counted", verdictOf(finding).kind === "two dates" ? "odd: were it of one date; the more dashes, the more it moved that date" : "the more dashes, the more it moved the answer");
  const odd = new Set<string>();
  for (const {id, says, probability, piece} of finding.odd) {
    const marks = piece ? (finding.pieces.find((one) => one.id === id)?.marks ?? []) : [id];
    page.item(padded("odd", 7), `${says}, ${sayOdds(probability)}`, "odd");
    for (const mark of marks) if (!odd.has(mark)) writeMark(page, mark, indent, finding, world);
    for (const mark of marks) odd.add(mark);
  }
  const lines = finding.ledger.filter(({id}) => !odd.has(id));
  const told = lines.filter(({bits}) => weightBar(bits) !== "");
  for (const {id, bits} of told) writeMark(page, id, padded(weightBar(bits), 7), finding, world);
  const silent = lines.filter((line) => !told.includes(line)).map(({id}) => seenAt(id, finding, world));
  if (silent.length === 0) return;
  if (told.length + odd.size > 0) page.blank();
  page.say(`Moved next to nothing: ${silent.join("; ")}.`);
}

function writeMark(page: Page, id: string, sign: string, finding: Finding, world: World): void {
  page.item(sign, seenAt(id, finding, world), "moved");
  const small = id === rowsId ? [rowsAuthority(finding, world)] : finding.rules.filter(({mark}) => mark === id).flatMap(authority);
  for (const line of small) page.item(indent, line, "quiet");
}

const seenAt = (id: string, finding: Finding, world: World) => (id === rowsId ? rowsSeen(finding, world) : markSeen(finding, id));

function markSeen({rules}: Finding, id: string): string {
  const own = rules.filter(({mark}) => mark === id);
  return own.length === 0 ? id : `${own[0]!.name}: ${own.map(({seen}) => seen).join(" or ")}`;
}

/** The small print of a rule: when and what, then on whose authority. */
function authority({window, source, cite, says}: RuleUsed): string[] {
  const used = window ? `In use ${sayWindowIn(window)}.` : "";
  return [[used, says ?? ""].filter((part) => part !== "").join(" "), sayAuthority(source, cite)].filter((line) => line !== "");
}

function likeliest({rows}: Finding): Reading | undefined {
  const best = rows.flatMap(({readings}) => readings.slice(0, 1));
  return best.find(({date}) => date !== null) ?? best[0];
}

function makerBook({makers}: Finding, world: World) {
  return bookOf(world, makers.reduce((a, b) => (b.probability > a.probability ? b : a)).maker);
}

function rowsSeen(finding: Finding, world: World): string {
  const reading = likeliest(finding);
  return `rows of numbers: ${reading ? sayReading(reading, makerBook(finding, world)) : "no date in them"}`;
}

function rowsAuthority(finding: Finding, world: World): string {
  const book = makerBook(finding, world);
  const scheme = likeliest(finding)?.scheme;
  const rule = scheme ? book?.schemes[scheme] : undefined;
  if (!book) return "no rule book says how this maker wrote numbers";
  if (!rule) return `no date is read from them; codes as in: ${book.title}`;
  return `${rule.name}: ${sayAuthority(book.sources[rule.source.ref], rule.source)}`;
}

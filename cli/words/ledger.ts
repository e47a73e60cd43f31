// The ledger in words: what each mark weighed, what was seen, when that was in use, and how it is known.
import {rowsId, sayOdds, type Finding, type Reading, type RuleUsed} from "../../engine/index.ts";
import {sayReading} from "../../commands/show-rows.ts";
import {bookOf, type World} from "../../commands/world.ts";
import {sayAuthority, sayMonthsIn} from "./authority.ts";
import type {Page} from "./page.ts";
import {padded} from "./wrap.ts";

/** Bits from which on a mark gets one more dash. Source: own choice; each step weighs about twice the one before. */
const steps = [0.02, 0.2, 0.7, 1.5, 3];

/** Weight as none to five dashes. */
export const weightBar = (bits: number) => "━".repeat(steps.filter((step) => bits >= step).length);

/** Writes the ledger: odd marks first, then by weight. */
export function writeLedger(page: Page, finding: Finding, world: World): void {
  if (finding.ledger.length === 0) return;
  page.head("What counted", "the more dashes, the more it moved the answer");
  const odd = oddMarks(finding);
  const lines = [...finding.ledger].sort((a, b) => Number(odd.has(b.id)) - Number(odd.has(a.id)));
  const silent = lines.filter(({id, bits}) => weightBar(bits) === "" && !odd.has(id));
  for (const {id, bits} of lines.filter((line) => !silent.includes(line))) {
    const reason = odd.get(id);
    page.item(padded(weightBar(bits), 7), id === rowsId ? rowsSeen(finding, world) : markSeen(finding, id), "moved");
    if (reason) page.item(padded("", 7), reason, "odd");
    const small = id === rowsId ? [rowsAuthority(finding, world)] : finding.rules.filter(({mark}) => mark === id).flatMap(authority);
    for (const line of small) page.item(padded("", 7), line, "quiet");
  }
  if (silent.length === 0) return;
  if (silent.length < lines.length) page.blank();
  page.say(`Moved next to nothing: ${silent.map(({id}) => (id === rowsId ? "rows of numbers" : markSeen(finding, id))).join("; ")}.`);
}

/** Each odd mark with what is odd about it; an odd piece speaks for all marks on it. */
function oddMarks({odd, pieces}: Finding): Map<string, string> {
  return new Map(odd.flatMap(({id, says, probability, piece}) => {
    const marks = piece ? (pieces.find((one) => one.id === id)?.marks ?? []) : [id];
    return marks.map((mark) => [mark, `does not fit: ${says} (${sayOdds(probability)})`] as const);
  }));
}

function markSeen({rules}: Finding, id: string): string {
  const own = rules.filter(({mark}) => mark === id);
  return own.length === 0 ? id : `${own[0]!.name}: ${own.map(({seen}) => seen).join(" or ")}`;
}

/** The small print of a rule: when and what, then on whose authority. */
function authority({window, source, cite, says}: RuleUsed): string[] {
  const used = window ? `In use ${sayMonthsIn(window)}.` : "";
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
  if (!book || !rule) return "read without a rule book for the maker's numbers";
  return `${rule.name}: ${sayAuthority(book.sources[rule.source.ref], rule.source)}`;
}

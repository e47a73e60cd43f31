// The verdict of a sheet in words: what is named, how likely it is, its bounds, and what does not fit.
import {parseMonth, sayOdds, sayRuns, type Book, type Span} from "../../engine/index.ts";
import {worthAWord} from "../../commands/verdict.ts";
import type {FindingJson} from "../../commands/finding-shape.ts";
import type {Dating} from "../../store/model.ts";
import {nameOf} from "./evidence.ts";
import {capital, listed, makerName, sentence, shortMonth} from "./say.ts";
import type {Sheet} from "./sheet.ts";

export function verdictWords(finding: FindingJson, dating: Dating, books: readonly Book[]): Sheet["verdict"] {
  const {kind, words, probability, noEarlier, noLater} = dating;
  const where = dating.maker === null ? "" : dating.plant === null ? `, by ${makerName(books, dating.maker)}` : `, at plant ${dating.plant} of ${makerName(books, dating.maker)}`;
  const limits = noEarlier === noLater ? [] : [`No earlier than ${shortMonth(noEarlier)}, no later than ${shortMonth(noLater)}.`];
  if (finding.ledger.length === 0) return {lead: "Nothing was seen that tells a date", words: "Not dated", odds: "", bounds: []};
  if (kind === "two dates") {
    return {lead: `Two dates: most likely a later reproduction, ${sayOdds(probability)}`, words: capital(words), odds: capital(where.replace(/^, /, "")), bounds: limits.map((line) => line.replace("No earlier", "Made no earlier"))};
  }
  const ninety = finding.ranges.find(({share}) => share === 0.9);
  const within = ninety ? [`9 in 10: ${ninety.months === 1 ? "that one month" : sayRuns(spans(ninety.runs))}.`] : [];
  if (kind === "cannot tell") return {lead: "Cannot tell: the marks leave open", words: capital(words), odds: `More marks are needed${where}`, bounds: limits};
  return {lead: "Most likely made in", words: capital(words), odds: `${sayOdds(probability)}${where}`, bounds: [...within, ...limits]};
}

/** A sentence for each thing that does not fit, and for a reproduction that is possible though not the likeliest answer. */
export function oddWords(finding: FindingJson): string[] {
  const {verdict, odd, twoDates} = finding;
  const named = (side: "look" | "substance") => listed((twoDates?.speaking ?? []).filter((one) => one.side === side).slice(0, 3).map(({mark}) => nameOf(finding, mark).name.toLowerCase()));
  if (verdict.kind === "two dates") return [`What was copied looks older than what was put in. The look speaks through ${named("look") || "no single mark"}; the making through ${named("substance") || "no single mark"}.`];
  const stray = odd.map(({says, probability, piece}) => `${sentence(piece ? `probably ${says}` : says).replace(/\.$/, "")} (${sayOdds(probability)}).`);
  if (!twoDates || twoDates.probability < worthAWord) return stray;
  return [...stray, `A later reproduction is possible (${sayOdds(twoDates.probability)}): made ${sayRuns(spans(twoDates.made), 1)}, in the look of ${sayRuns(spans(twoDates.look), 1)}.`];
}

export const spans = (runs: readonly {readonly from: string; readonly until: string}[]): Span[] => runs.map(({from, until}) => ({from: parseMonth(from)!, until: parseMonth(until)!}));

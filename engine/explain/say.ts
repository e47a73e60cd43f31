// The finding in words that a dealer could say aloud.
import type {Brief, Finding} from "../infer/finding.ts";
import {rowsId} from "../infer/evidence.ts";
import {monthOfYear, sayMonth, yearOf} from "../month/month.ts";
import {bounds, credibleSet} from "../range/credible.ts";
import {byDecade, byYear} from "../range/groups.ts";
import {monthIndex, probability, type MonthIndex} from "../units.ts";
import type {Span} from "../window/window.ts";

/**
 * A probability as odds out of a hundred.
 * @example
 * sayOdds(0.904) // -> "90 in 100"
 * sayOdds(0.9999) // -> "more than 99 in 100"
 */
export function sayOdds(p: number): string {
  if (p > 0.995) return "more than 99 in 100";
  if (p < 0.005) return "less than 1 in 100";
  return `${Math.round(p * 100)} in 100`;
}

const short = (m: MonthIndex) => sayMonth(m).replace(/^(\w{3})\w*/, "$1");

/** A run of months in words: one month, months of one year, whole years, or from-to. */
export function saySpan({from, until}: Span): string {
  if (from === until) return sayMonth(from);
  const whole = monthOfYear(from) === 1 && monthOfYear(until) === 12;
  if (whole) return yearOf(from) === yearOf(until) ? `${yearOf(from)}` : `${yearOf(from)} to ${yearOf(until)}`;
  return yearOf(from) === yearOf(until) ? `${short(from).split(" ")[0]} to ${short(until)}` : `${short(from)} to ${short(until)}`;
}

/** Several runs in words; many runs are told as their outer ends. */
export function sayRuns(runs: readonly Span[], most = 4): string {
  if (runs.length <= most) return runs.map(saySpan).join("; ");
  return `${runs.length} stretches between ${short(runs[0]!.from)} and ${short(runs.at(-1)!.until)}`;
}

/** What the finding comes to: the months to name, how likely they are, and the bounds. */
export interface Verdict {
  readonly kind: "one date" | "two dates" | "cannot tell";
  readonly words: string;
  readonly probability: number;
  readonly noEarlier: MonthIndex;
  readonly noLater: MonthIndex;
  /** For two dates: the time that the look comes from. */
  readonly look: string | null;
}

/** A probability by month with what is known of it. */
type Months = Pick<Brief, "posterior" | "first" | "sets" | "years" | "decades" | "best" | "noEarlier" | "noLater">;

/** A finding, or its date alone, which knows of no second date. */
export type Dated = Brief & Partial<Pick<Finding, "twoDates">>;

/** The verdict: on the garment as one of one date, or, when that is likelier, as a later one made in an older look. */
export function verdictOf(finding: Dated): Verdict {
  if (finding.twoDates && finding.twoDates.probability >= 0.5) {
    const made = monthsOf(finding.twoDates.made, finding.first);
    const look = monthsOf(finding.twoDates.look, finding.first);
    return {kind: "two dates", ...narrowest(made), noEarlier: made.noEarlier, noLater: made.noLater, look: sayRuns(look.sets[1]!.runs, 1)};
  }
  const {noEarlier, noLater} = finding;
  return {kind: cannotTell(finding) ? "cannot tell" : "one date", ...narrowest(finding), noEarlier, noLater, look: null};
}

function monthsOf(posterior: Float64Array, first: MonthIndex): Months {
  const best = posterior.reduce((most, p, t) => (p > posterior[most]! ? t : most), 0);
  return {
    posterior,
    first,
    best: {month: monthIndex(first + best), probability: probability(posterior[best]!)},
    sets: [0.5, 0.9, 0.95].map((share) => credibleSet(posterior, share, first)),
    years: byYear(posterior, first),
    decades: byDecade(posterior, first),
    ...bounds(posterior, 0.025, first),
  };
}

/** The narrowest thing worth naming: the month, a few months, else the year, the decade, or the likelier half. */
function narrowest({best, sets, years, decades}: Months): {words: string; probability: number} {
  if (best.probability >= 0.5) return {words: sayMonth(best.month), probability: best.probability};
  const most = sets[1]!;
  if (most.runs.length === 1 && most.months <= 6) return {words: sayRuns(most.runs), probability: most.mass};
  const year = years.reduce((a, b) => (b.probability > a.probability ? b : a));
  if (year.probability >= 0.5) return {words: `${year.from}`, probability: year.probability};
  const decade = decades.reduce((a, b) => (b.probability > a.probability ? b : a));
  if (decade.probability >= 0.5) return {words: `the ${decade.from}s`, probability: decade.probability};
  return {words: sayRuns(sets[0]!.runs), probability: sets[0]!.mass};
}

/** The months most worth naming for the garment as one of one date. */
export function headline(finding: Brief): {readonly words: string; readonly probability: number} {
  return narrowest(finding);
}

/** Bits over the flat prior below which the honest answer is "cannot tell". */
const toldTooLittle = 1;

/** Whether the marks say too little for any date to be named. */
export function cannotTell(finding: Brief): boolean {
  const months = finding.posterior.length;
  return Math.log2(months) - finding.entropy < toldTooLittle;
}

/** How sure the answer is, in a word. */
export function sureness(finding: Brief): "sure" | "likely" | "open" | "cannot tell" {
  if (cannotTell(finding)) return "cannot tell";
  const width = finding.sets[1]!.months;
  if (finding.best.probability >= 0.8) return "sure";
  return width <= 36 ? "likely" : "open";
}

/** The finding as a few sentences: verdict, bounds, reasons, the thing that does not fit, the next look. */
export function sayFinding(finding: Finding): string[] {
  const lines: string[] = [];
  const {kind, words, probability, noEarlier, noLater, look} = verdictOf(finding);
  const limits = `no earlier than ${sayMonth(noEarlier)}, no later than ${sayMonth(noLater)}`;
  if (kind === "cannot tell") lines.push(`Cannot tell: the marks seen leave ${saySpan({from: noEarlier, until: noLater})} open.`);
  else if (kind === "two dates") {
    lines.push(`Two dates (${sayOdds(finding.twoDates!.probability)}): it looks like ${look}, but was most likely made in ${words}, ${sayOdds(probability)}; ${limits}.`);
    lines.push(`A later one in an older look; the marks that say so: ${finding.twoDates!.speaking.slice(0, 4).map(({id}) => nameOf(finding, id)).join(", ")}.`);
  } else lines.push(`Most likely ${words}, ${sayOdds(probability)}; ${limits}.`);
  if (kind === "two dates") return [...lines, ...closing(finding)];
  const reasons = reasonsOf(finding);
  if (reasons.length > 0) lines.push(`Because of ${reasons.join("; ")}.`);
  const odd = finding.odd[0];
  if (odd) lines.push(`The one thing that does not fit: ${odd.says} (${sayOdds(odd.probability)}).`);
  if (finding.twoDates && finding.twoDates.probability > 0.2) {
    lines.push(`It may be a later reproduction of an older style (${sayOdds(finding.twoDates.probability)}): what was copied looks older than what the label says.`);
  }
  return [...lines, ...closing(finding)];
}

/** What is not read, and the next look. */
function closing(finding: Finding): string[] {
  const lines = finding.unread.slice(0, 2).map(({text, why}) => `“${text}” is no date as it stands: ${why}.`);
  const next = finding.next[0];
  if (next) lines.push(`Look next: ${next.place} (${next.name}).`);
  return lines;
}

/** A mark's name as its book has it. */
export function nameOf(finding: Finding, id: string): string {
  if (id === rowsId) return "the rows of numbers";
  return finding.rules.find(({mark}) => mark === id)?.name ?? id;
}

function reasonsOf(finding: Finding): string[] {
  const shown = finding.ledger.filter(({bits}) => bits >= 0.05).slice(0, 3);
  return shown.map(({id}) => {
    if (id === rowsId) return rowReason(finding);
    const rule = finding.rules.find(({mark}) => mark === id);
    if (!rule) return id;
    const authority = rule.source ? `, ${rule.source.title}` : "";
    return `${rule.name}: ${rule.seen}${rule.window ? ` (${rule.window}${authority})` : authority ? ` (${authority.slice(2)})` : ""}`;
  });
}

/** The rows' best date in words. */
function rowReason(finding: Finding): string {
  const best = finding.rows.flatMap(({readings}) => readings).filter(({date}) => date !== null).sort((a, b) => b.probability - a.probability)[0];
  if (!best) return "the rows of numbers, which carry no date";
  const plant = best.plant === null ? "" : `, plant ${best.plant}`;
  return `the date code read as ${best.date}${plant} (${sayOdds(best.probability)})`;
}

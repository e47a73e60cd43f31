// A finding as plain JSON in the documented shape: see finding-shape.ts.
import {credibleSet, printMonth, sayFinding, type Brief, type CredibleSet, type Finding, type RowReadings, type RuleUsed} from "../engine/index.ts";
import type {FindingJson} from "./finding-shape.ts";
import {verdictOf} from "./verdict.ts";

/** Said wherever a finding is shown. */
export const notice = "An estimate from the marks named here and the rule books' editions shown; no guarantee of authenticity and no certified appraisal.";

/** Readings less likely than this are left out of JSON. */
const worthListing = 0.001;

/** Nine figures: more would only be noise of rounding. */
export const nine = (value: number) => Number(value.toPrecision(9));

/** Runs of months as pairs of text. */
export const runsJson = (set: CredibleSet) => set.runs.map(({from, until}) => ({from: printMonth(from), until: printMonth(until)}));

/** The parts that every answer has, whole or brief. */
export function briefJson({best, noEarlier, noLater, makers}: Brief) {
  return {
    best: {month: printMonth(best.month), probability: nine(best.probability)},
    noEarlier: printMonth(noEarlier),
    noLater: printMonth(noLater),
    makers: makers.map(({maker, probability}) => ({maker, probability: nine(probability)})),
  };
}

/** The whole finding. */
export function findingJson(finding: Finding): FindingJson {
  const {kind, words, probability, sureness} = verdictOf(finding);
  return {
    format: "ticking finding 1",
    garment: finding.garment,
    verdict: {kind, words, probability: nine(probability), sureness, sentences: sayFinding(finding)},
    ...briefJson(finding),
    ranges: finding.sets.map((set) => ({share: set.share, probability: nine(Math.min(1, set.mass)), months: set.months, runs: runsJson(set)})),
    entropy: nine(finding.entropy),
    months: {first: printMonth(finding.first), probabilities: Array.from(finding.posterior, nine)},
    years: finding.years.map(({from, probability: p}) => ({from, probability: nine(Math.min(1, p))})),
    decades: finding.decades.map(({from, probability: p}) => ({from, probability: nine(Math.min(1, p))})),
    rows: finding.rows.map(rowJson),
    ledger: finding.ledger.map(({id, bits, moved, stray}) => ({mark: id, bits: nine(bits), movedMonths: nine(moved), stray: stray === null ? null : nine(stray)})),
    pieces: finding.pieces.map(({id, says, marks, stray}) => ({piece: id, says, marks: [...marks], stray: nine(stray)})),
    odd: finding.odd.map((odd) => ({...odd, probability: nine(odd.probability)})),
    twoDates: twoDatesJson(finding),
    next: finding.next.map(({id, bits, ...look}) => ({mark: id, ...look, bits: nine(bits)})),
    unread: finding.unread.map((unread) => ({...unread})),
    rules: finding.rules.map(ruleJson),
    notice,
  };
}

function rowJson({row, readings}: RowReadings): FindingJson["rows"][number] {
  return {
    row: row.text,
    characters: row.cells.map(({shown}) => shown),
    readings: readings
      .filter(({probability}) => probability > worthListing)
      .map(({row: printed, brackets, months, probability, ...reading}) => ({
        probability: nine(Math.min(1, probability)),
        printed: printed.text,
        ...reading,
        months: months.map(printMonth),
        fields: brackets.map(({field, text, from, until}) => ({field, text, from, until})),
      })),
  };
}

function twoDatesJson({twoDates, first}: Finding): FindingJson["twoDates"] {
  if (!twoDates) return null;
  const {probability, look, made, speaking} = twoDates;
  const runs = (months: Float64Array) => runsJson(credibleSet(months, 0.9, first));
  return {probability: nine(probability), look: runs(look), made: runs(made), speaking: speaking.map(({id, bits, side}) => ({mark: id, bits: nine(bits), side}))};
}

function ruleJson({cite, source, ...rule}: RuleUsed): FindingJson["rules"][number] {
  const {mark, name, seen, says, window, book, edition, caution} = rule;
  return {mark, name, seen, says, window, book, edition, source: source?.title ?? null, sourceKind: source?.kind ?? null, at: cite.at ?? null, how: cite.how, caution};
}

// Dates one garment in brief: month, bounds, range and makers, a few times faster than the whole finding. Batches use it.
import {z} from "zod";
import {printMonth, type Brief, type Finding} from "../engine/index.ts";
import {garmentSchema} from "../engine/rule/garment.ts";
import {command} from "./command.ts";
import {worthAWord} from "./verdict.ts";
import {briefJson, nine, runsJson} from "./finding-json.ts";

/** A brief finding; odd marks and two dates only when it comes from a whole one. */
export type BriefAnswer = Brief & Partial<Pick<Finding, "odd" | "twoDates">>;

export const briefGarment = command({
  name: "garment.brief",
  summary: "date a garment in brief, for many at once",
  input: z.strictObject({garment: garmentSchema}),
  run({garment}, world) {
    const {finding, problems} = world.examiner().brief(garment);
    return problems ? {problems} : {answer: finding as BriefAnswer};
  },
  json: briefFindingJson,
});

/** The brief finding as JSON. */
export function briefFindingJson(finding: BriefAnswer) {
  const {best, ...rest} = briefJson(finding);
  return {
    best: best.month,
    probability: best.probability,
    ...rest,
    range90: runsJson(finding.sets[1]!),
    ...(finding.odd ? {odd: oddOf(finding).map(({says, probability}) => ({says, probability: nine(probability)}))} : {}),
  };
}

/** The columns that a batch adds to a table, in their order. */
export const resultColumns = ["best", "probability", "no_earlier", "no_later", "range90", "makers", "odd"] as const;

/** The cells of the result columns: months as 1968-03, ranges as 1968-03..1968-07, several of anything divided by "|". */
export function resultCells(finding: BriefAnswer): string[] {
  const {best, noEarlier, noLater, sets, makers} = finding;
  return [
    printMonth(best.month),
    best.probability.toFixed(4),
    printMonth(noEarlier),
    printMonth(noLater),
    sets[1]!.runs.map(({from, until}) => (from === until ? printMonth(from) : `${printMonth(from)}..${printMonth(until)}`)).join("|"),
    makers.map(({maker, probability}) => `${maker ?? "unlisted"} ${probability.toFixed(4)}`).join("|"),
    oddOf(finding).map(({says, probability}) => `${says} ${probability.toFixed(2)}`).join("|"),
  ];
}

/** Everything that does not fit one date: odd marks, and a later reproduction that is worth a word. */
function oddOf({odd, twoDates}: BriefAnswer): {says: string; probability: number}[] {
  const later = twoDates && twoDates.probability >= worthAWord ? [{says: "later reproduction of an older style", probability: twoDates.probability}] : [];
  return [...later, ...(odd ?? [])];
}

// Dates one line of a table or of a list of garments: its text in, its text with the finding out, or why it is set aside.
import type {Examiner, Garment, Problem} from "../../engine/index.ts";
import {garmentSchema} from "../../engine/rule/garment.ts";
import {printPath} from "../../rulebooks/place.ts";
import {checkShape} from "../../rulebooks/shape.ts";
import {briefFindingJson, resultCells, resultColumns, type BriefAnswer} from "../brief.ts";
import {findingJson} from "../finding-json.ts";
import {oneOrSeveral} from "../write-garment.ts";
import {guarded, isFormula, printCells, readCells, unguarded} from "./cells.ts";
import type {Columns, OwnColumn} from "./columns.ts";
import * as say from "./problems.ts";

/** How lines are dated, as plain data that can be handed to a worker. */
export interface Plan {
  /** Null for one garment as JSON a line. */
  readonly columns: Columns | null;
  /** Whole findings, as JSON; else the main results, in the form of the input. */
  readonly whole: boolean;
  /** Odd marks too: takes as long as whole findings. */
  readonly odd: boolean;
  /** For garments that do not say it themselves. */
  readonly usual: Pick<Garment, "maker" | "market" | "type">;
}

export type DatedLine = {readonly text: string; readonly problems?: undefined} | {readonly text?: undefined; readonly problems: readonly Problem[]};

/** The line of column names of the result. */
export function resultHeader({names, kept, delimiter}: Columns): string {
  return printCells([...kept.map((i) => guarded(names[i]!)), ...resultColumns], delimiter);
}

/**
 * Dates one line.
 * @param text  without its line break
 * @param at    head of problems: file and line
 * @returns     no text for a line with nothing in it
 */
export function dateLine(text: string, at: string, plan: Plan, examiner: Examiner): DatedLine {
  if (text.trim() === "") return {text: ""};
  return plan.columns ? dateRecord(text, at, plan, plan.columns, examiner) : dateJson(text, at, plan, examiner);
}

function dateRecord(text: string, at: string, plan: Plan, columns: Columns, examiner: Examiner): DatedLine {
  const cells = readCells(text, columns.delimiter);
  if (!cells) return {problems: [say.openQuote(at)]};
  if (cells.every((cell) => cell.trim() === "")) return {text: ""};
  if (cells.length !== columns.names.length) return {problems: [say.cellCount(at, cells.length, columns.names.length)]};
  const garment = garmentOf(cells, columns, at);
  const {finding, problems} = find(garment, plan, examiner);
  if (problems) return {problems: placed(problems, at)};
  if (plan.whole) return {text: JSON.stringify({...garment, finding: wholeOrBrief(finding, plan)})};
  const results = printCells(resultCells(finding).map(guarded), columns.delimiter);
  const unchanged = columns.kept.length === cells.length && !cells.some(isFormula);
  const before = unchanged ? text : printCells(columns.kept.map((i) => guarded(cells[i]!)), columns.delimiter);
  return {text: `${before}${columns.delimiter}${results}`};
}

/** A garment from its cells; empty cells and a single dash were not seen. */
function garmentOf(cells: readonly string[], {own, marks}: Columns, at: string): Garment {
  const cell = (name: OwnColumn) => (own[name] === undefined ? "" : unguarded(cells[own[name]]!).trim());
  const saw: Garment["saw"] = {};
  const rows = cell("rows");
  if (isSeen(rows)) saw.rows = rows.split("|");
  for (const [place, id] of marks) {
    const value = unguarded(cells[place]!).trim();
    if (isSeen(value)) saw[id] = oneOrSeveral(value);
  }
  const [title, maker, market, type, note] = [cell("title"), cell("maker"), cell("market"), cell("type"), cell("note")];
  return {
    garment: cell("garment") || at,
    ...(title ? {title} : {}),
    ...(isSeen(maker) ? {maker: oneOrSeveral(maker)} : {}),
    ...(isSeen(market) ? {market} : {}),
    ...(isSeen(type) ? {type} : {}),
    saw,
    ...(note ? {note} : {}),
  };
}

const isSeen = (cell: string) => cell !== "" && cell !== "-";

function dateJson(text: string, at: string, plan: Plan, examiner: Examiner): DatedLine {
  let given: unknown;
  try {
    given = JSON.parse(text);
  } catch (error) {
    return {problems: [say.notJson(at, (error as Error).message)]};
  }
  const again = typeof given === "object" && given !== null && Object.hasOwn(given, "finding");
  if (again) delete (given as {finding?: unknown}).finding;
  const {fits, problems: slips} = checkShape(garmentSchema, given, (path) => `${at} ${printPath(path)}`.trimEnd());
  if (slips) return {problems: slips};
  const {finding, problems} = find(fits, plan, examiner);
  if (problems) return {problems: placed(problems, at)};
  const before = again ? JSON.stringify(given) : text.trimEnd();
  return {text: `${before.slice(0, -1)},"finding":${JSON.stringify(wholeOrBrief(finding, plan))}}`};
}

function find(garment: Garment, {whole, odd, usual}: Plan, examiner: Examiner): {finding: BriefAnswer; problems?: undefined} | {finding?: undefined; problems: readonly Problem[]} {
  const said = {...garment, maker: garment.maker ?? usual.maker, market: garment.market ?? usual.market, type: garment.type ?? usual.type};
  return whole || odd ? examiner.examine(said) : examiner.brief(said);
}

function wholeOrBrief(finding: BriefAnswer, {whole}: Plan) {
  return whole ? findingJson(finding as Parameters<typeof findingJson>[0]) : briefFindingJson(finding);
}

const placed = (problems: readonly Problem[], at: string) => problems.map((problem) => ({...problem, at: `${at} ${problem.at}`}));

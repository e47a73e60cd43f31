// One way to understand a row: which cells are the date, the plant, the lot, the fabric, and the chance of seeing them so.
import type {PrintedRow} from "../cell/printed-row.ts";
import type {DateSpan} from "./date-span.ts";

export type CodeName = "plant" | "lot" | "fabric";
export const codeNames: readonly CodeName[] = ["plant", "lot", "fabric"];

/** Cells of a row: `from` included, `until` not. */
export interface CellSpan {
  readonly from: number;
  readonly until: number;
}

export interface Bracket extends CellSpan {
  readonly field: string;
}

export interface RowParse {
  /** Chance of the row given the layout and which cells are date and codes: what those cells weigh is not counted here. */
  readonly chance: number;
  readonly date: DateSpan | null;
  readonly plant: CellSpan | null;
  readonly lot: CellSpan | null;
  readonly fabric: CellSpan | null;
  /** The likeliest segmentation behind this way, for showing. */
  readonly brackets: readonly Bracket[];
}

/** Ways that read the same cells as codes, and so are weighed by the same code chances. */
export interface ParseGroup {
  readonly spans: Readonly<Record<CodeName, CellSpan | null>>;
  /** Summed chance of the ways without a date. */
  readonly dateless: number;
  readonly dated: readonly {readonly chance: number; readonly span: DateSpan}[];
}

export interface ParseResult {
  readonly row: PrintedRow;
  readonly parses: readonly RowParse[];
  readonly groups: readonly ParseGroup[];
}

/** Sorts the ways to read a row by the cells of their codes. */
export function parseResult(row: PrintedRow, parses: readonly RowParse[]): ParseResult {
  const groups = new Map<string, {spans: ParseGroup["spans"]; dateless: number; dated: ParseGroup["dated"][number][]}>();
  for (const parse of parses) {
    const key = codesKey(parse);
    let group = groups.get(key);
    if (!group) groups.set(key, (group = {spans: {plant: parse.plant, lot: parse.lot, fabric: parse.fabric}, dateless: 0, dated: []}));
    if (!parse.date) group.dateless += parse.chance;
    else group.dated.push({chance: parse.chance, span: parse.date});
  }
  return {row, parses, groups: [...groups.values()]};
}

/** A text that tells apart which cells are codes. */
export function codesKey(parse: Pick<RowParse, CodeName>): string {
  return codeNames.map((name) => (parse[name] ? `${parse[name].from}-${parse[name].until}` : "")).join(";");
}

/** A text that tells two ways apart where it matters for the month: date and codes. */
export function parseKey(parse: Omit<RowParse, "chance" | "brackets">): string {
  const {date} = parse;
  return `${date ? `${date.from}-${date.until}` : ""};${codesKey(parse)}`;
}

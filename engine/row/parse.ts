// One way to understand a row: which cells are the date, the plant, the lot, the fabric, and the chance of seeing them so.
import {statedKey, type ReadyScheme} from "../scheme/scheme.ts";
import type {SparseMonths, Stated} from "../scheme/stated.ts";
import type {PrintedRow} from "../cell/printed-row.ts";

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

/** A date read from cells by a scheme; scheme null is a date written in a way that no scheme explains. */
export interface DateField {
  readonly scheme: ReadyScheme | null;
  readonly stated: Stated;
  readonly months: SparseMonths | null;
  readonly span: CellSpan;
}

export interface RowParse {
  /** Chance of the row given the layout, the stated date and the codes' cells: cells of codes themselves are not counted here. */
  readonly chance: number;
  readonly date: DateField | null;
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
  /** Summed chance of the ways whose date no scheme explains. */
  readonly unknown: number;
  readonly dated: readonly {readonly chance: number; readonly scheme: ReadyScheme; readonly months: SparseMonths}[];
}

export interface ParseResult {
  readonly row: PrintedRow;
  readonly parses: readonly RowParse[];
  readonly groups: readonly ParseGroup[];
}

/** Sorts the ways to read a row by the cells of their codes. */
export function parseResult(row: PrintedRow, parses: readonly RowParse[]): ParseResult {
  const groups = new Map<string, {spans: ParseGroup["spans"]; dateless: number; unknown: number; dated: ParseGroup["dated"][number][]}>();
  for (const parse of parses) {
    const key = codesKey(parse);
    let group = groups.get(key);
    if (!group) groups.set(key, (group = {spans: {plant: parse.plant, lot: parse.lot, fabric: parse.fabric}, dateless: 0, unknown: 0, dated: []}));
    if (!parse.date) group.dateless += parse.chance;
    else if (!parse.date.scheme) group.unknown += parse.chance;
    else group.dated.push({chance: parse.chance, scheme: parse.date.scheme, months: parse.date.months!});
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
  const when = date ? `${date.scheme?.id ?? "?"}:${statedKey(date.stated)}@${date.span.from}-${date.span.until}` : "";
  return `${when};${codesKey(parse)}`;
}

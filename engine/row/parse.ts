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

export interface ParseResult {
  readonly row: PrintedRow;
  readonly parses: readonly RowParse[];
}

/** A text that tells two ways apart where it matters for the month: date and codes. */
export function parseKey(parse: Omit<RowParse, "chance" | "brackets">): string {
  const {date} = parse;
  const at = (span: CellSpan | null) => (span ? `${span.from}-${span.until}` : "");
  const when = date ? `${date.scheme?.id ?? "?"}:${statedKey(date.stated)}@${at(date.span)}` : "";
  return `${when};${at(parse.plant)};${at(parse.lot)};${at(parse.fabric)}`;
}

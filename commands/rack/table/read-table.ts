// Cuts a table into its line of names and its records, each with the line on which it begins.
import {readCells, unguarded, type Delimiter} from "../../batch/cells.ts";
import {delimiterOf} from "../../batch/columns.ts";
import * as sayTable from "../../batch/problems.ts";
import {RecordSplitter} from "../../batch/split.ts";
import type {Problem} from "../../../engine/index.ts";

export interface TableRecord {
  readonly line: number;
  /** As many as there are names, without the guard against formulas. */
  readonly cells: readonly string[];
}

export interface Table {
  readonly names: readonly string[];
  readonly records: readonly TableRecord[];
  /** Records that cannot be read. */
  readonly problems: readonly Problem[];
}

/** Lines of a text with their numbers, empty ones left out; in a table, line breaks inside quotes do not count. */
export function numberedLines(text: string, delimiter: Delimiter | null): {line: number; text: string}[] {
  const splitter = new RecordSplitter(delimiter === null ? null : delimiter.charCodeAt(0));
  const decoder = new TextDecoder();
  return [splitter.push(new TextEncoder().encode(text.replace(/^\uFEFF/, ""))), splitter.end()].flatMap(({bytes, ends, lines}) =>
    ends.map((end, i) => ({line: lines[i]!, text: decoder.decode(bytes.subarray(i === 0 ? 0 : ends[i - 1], end)).replace(/\r?\n$/, "")})).filter((one) => one.text.trim() !== ""),
  );
}

/** A table with its line of names; only problems when there is none, or it cannot be read. */
export function readTable(text: string): Table | {readonly names?: undefined; readonly problems: readonly Problem[]} {
  const header = text.replace(/^\uFEFF/, "").split(/\r?\n/).find((line) => line.trim() !== "");
  if (header === undefined) return {problems: [sayTable.empty("line 1")]};
  const delimiter = delimiterOf(header);
  const [first, ...rest] = numberedLines(text, delimiter);
  const names = readCells(first!.text, delimiter)?.map((name) => unguarded(name).trim());
  if (!names) return {problems: [sayTable.headerQuotes(`line ${first!.line}`)]};
  const ids = names.map((name) => name.toLowerCase());
  const double = [...new Set(ids.filter((id, i) => id !== "" && ids.indexOf(id) !== i))];
  if (double.length > 0) return {problems: [sayTable.twice(`line ${first!.line}`, double)]};
  const records: TableRecord[] = [];
  const problems: Problem[] = [];
  for (const {line, text: record} of rest) {
    const cells = readCells(record, delimiter);
    if (!cells) problems.push(sayTable.openQuote(`line ${line}`));
    else if (cells.length !== names.length) problems.push(sayTable.cellCount(`line ${line}`, cells.length, names.length));
    else if (cells.some((cell) => cell.trim() !== "")) records.push({line, cells: cells.map(unguarded)});
  }
  return {names, records, problems};
}

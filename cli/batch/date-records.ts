// Dates a share of records: what a worker does, and the main thread when there are no workers.
import {isUtf8} from "node:buffer";
import {dateLine, type Plan} from "../../commands/batch/date-line.ts";
import * as say from "../../commands/batch/problems.ts";
import {longestRecord, type Records} from "../../commands/batch/split.ts";
import type {Examiner, Problem} from "../../engine/index.ts";

/** A line that was set aside. */
export interface Aside {
  readonly line: number;
  readonly text: string;
  readonly problems: readonly Problem[];
}

export interface DatedShare {
  /** Lines of the result, each with its line break. */
  readonly text: string;
  readonly dated: number;
  readonly asides: readonly Aside[];
}

/** How to date records; plain data, so that it can be handed to a worker. */
export interface Task {
  readonly plan: Plan;
  /** Name of the input, for the heads of problems. */
  readonly name: string;
  readonly breakLine: string;
}

export function dateRecords({bytes, ends, lines}: Records, {plan, name, breakLine}: Task, examiner: Examiner): DatedShare {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  const allText = isUtf8(buffer);
  const asides: Aside[] = [];
  let text = "";
  let dated = 0;
  for (let i = 0, start = 0; i < ends.length; start = ends[i++]!) {
    const line = lines[i]!;
    const record = buffer.toString("utf8", start, endOfText(buffer, start, ends[i]!));
    const at = `${name}:${line}`;
    const slip = slipOf(record, ends[i]! - start, allText || isUtf8(buffer.subarray(start, ends[i])), at);
    const result = slip ? {problems: [slip]} : dateLine(record, at, plan, examiner);
    if (result.problems) asides.push({line, text: record, problems: result.problems});
    else if (result.text !== "") {
      text += result.text + breakLine;
      dated++;
    }
  }
  return {text, dated, asides};
}

function endOfText(buffer: Buffer, start: number, end: number): number {
  let last = end;
  if (last > start && buffer[last - 1] === 10) last--;
  if (last > start && buffer[last - 1] === 13) last--;
  return last;
}

function slipOf(record: string, bytes: number, isText: boolean, at: string): Problem | null {
  if (bytes > longestRecord) return say.tooLong(at, longestRecord);
  if (!isText) return say.notText(at, "the line is not UTF-8 text");
  return record.includes("\0") ? say.notText(at, "the line holds signs that are no text") : null;
}

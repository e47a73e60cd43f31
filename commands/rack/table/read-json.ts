// Things given as JSON, one list or one a line, each read by itself, with the place where it stands.
import type {Problem} from "../../../engine/index.ts";
import * as say from "../problems.ts";
import {numberedLines} from "./read-table.ts";

/** What was read of one thing, or what has to be mended in it. */
export type Slip = {readonly line: number; readonly problems: readonly Problem[]};
/** @param at  for problems: "line 7", or "no. 7" of a list */
export type ReadOne<T> = (given: unknown, line: number, at: string) => T | Slip;

/** A list; the "line" of a thing is its place in the list. */
export function readJsonList<T>(text: string, read: ReadOne<T>): {readonly read: readonly (T | Slip)[]; readonly problems: readonly Problem[]} {
  const {value, problem} = parsed(text, "text");
  if (problem) return {read: [], problems: [problem]};
  return {read: (Array.isArray(value) ? value : [value]).map((one, i) => read(one, i + 1, `no. ${i + 1}`)), problems: []};
}

export function readJsonLines<T>(text: string, read: ReadOne<T>): {readonly read: readonly (T | Slip)[]; readonly problems: readonly Problem[]} {
  const all = numberedLines(text, null).map(({line, text: record}) => {
    const {value, problem} = parsed(record, `line ${line}`);
    return problem ? {line, problems: [problem]} : read(value, line, `line ${line}`);
  });
  return {read: all, problems: []};
}

function parsed(text: string, at: string): {value?: unknown; problem?: Problem} {
  try {
    return {value: JSON.parse(text.replace(/^\uFEFF/, ""))};
  } catch (error) {
    return {problem: say.notJson(at, (error as Error).message.slice(0, 120))};
  }
}

// Garments given as JSON, one list or one a line: contents as an export writes them, or bare garments.
import type {Problem} from "../../../engine/index.ts";
import {printPath} from "../../../rulebooks/place.ts";
import {checkShape} from "../../../rulebooks/shape.ts";
import {contentSchema} from "../../../store/model.ts";
import * as say from "../problems.ts";
import {numberedLines} from "./read-table.ts";
import type {ReadContent} from "./read-record.ts";

/** A list; the "line" of a garment is its place in the list. */
export function readJsonList(text: string): {readonly read: readonly ReadContent[]; readonly problems: readonly Problem[]} {
  const {value, problem} = parsed(text, "text");
  if (problem) return {read: [], problems: [problem]};
  return {read: (Array.isArray(value) ? value : [value]).map((one, i) => contentOf(one, i + 1, `no. ${i + 1}`)), problems: []};
}

export function readJsonLines(text: string): {readonly read: readonly ReadContent[]; readonly problems: readonly Problem[]} {
  const read = numberedLines(text, null).map(({line, text: record}): ReadContent => {
    const {value, problem} = parsed(record, `line ${line}`);
    return problem ? {line, problems: [problem]} : contentOf(value, line, `line ${line}`);
  });
  return {read, problems: []};
}

function parsed(text: string, at: string): {value?: unknown; problem?: Problem} {
  try {
    return {value: JSON.parse(text.replace(/^\uFEFF/, ""))};
  } catch (error) {
    return {problem: say.notJson(at, (error as Error).message.slice(0, 120))};
  }
}

/** A bare garment names its number at once; a content holds the garment. What a garment was dated to is worked out anew. */
function contentOf(given: unknown, line: number, at: string): ReadContent {
  const isBare = typeof given === "object" && given !== null && typeof (given as {garment?: unknown}).garment === "string";
  const whole = isBare ? {garment: given} : given;
  const {fits, problems} = checkShape(contentSchema, whole, (path) => `${at} ${printPath(path)}`.trimEnd());
  return fits ? {line, content: {...fits, dating: null}} : {line, problems};
}

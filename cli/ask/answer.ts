// What an answer typed at the prompt means.
import type {Possible, Question} from "../../commands/ask.ts";
import {oneOrSeveral} from "../../commands/write-garment.ts";

export type Answered =
  | {readonly kind: "value"; readonly value: string | string[]}
  | {readonly kind: "list" | "cannot see" | "skip" | "back" | "done"};

/** Reads an answer; null stands for the end of the input. A wrong value is found out by the examination, with its reason. */
export function readAnswer(typed: string | null, {kind, values}: Pick<Question, "kind" | "values">): Answered {
  const text = typed?.trim() ?? "done";
  if (text === "") return {kind: "skip"};
  if (text === "?" && kind !== "rows") return {kind: "list"};
  if (text === "-") return {kind: "cannot see"};
  if (text === "back" || text === "done") return {kind: text};
  if (kind === "presence" && /^(y|yes)$/i.test(text)) return {kind: "value", value: "present"};
  if (kind === "presence" && /^(n|no)$/i.test(text)) return {kind: "value", value: "absent"};
  const said = oneOrSeveral(text);
  return {kind: "value", value: typeof said === "string" ? byNumber(said, values) : said.map((one) => byNumber(one, values))};
}

/** A number stands for the value at that place of the list. */
function byNumber(text: string, values: readonly Possible[]): string {
  return /^\d+$/.test(text) ? (values[Number(text) - 1]?.id ?? text) : text;
}

const hints: Readonly<Record<Question["kind"], string>> = {
  choice: "value or its number",
  presence: "yes or no",
  serial: "number as printed, or none",
  coded: "as printed, or none",
  repeat: "as stamped, or none",
  rows: "one row after the other as printed",
};

/** The words in brackets that say how to answer. */
export function sayHow({kind, values}: Pick<Question, "kind" | "values">): string {
  const list = kind === "choice" ? ` / ? list of ${values.length}` : kind === "rows" ? "" : " / ? more";
  return `[${hints[kind]}${list} / - cannot see / enter to skip / back / done]`;
}

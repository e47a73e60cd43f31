// How a code scheme is told on a wall: what its characters stand for, in the order in which they are printed, with specimens.
import {parseMonth, saySpan, type Scheme} from "../../engine/index.ts";
import type {Part} from "../../engine/rule/schema.ts";
import {listed} from "../sheet/say.ts";

/** @example sayParts([{month: "plain"}, {text: " "}, {year: "last figure"}]) // -> "month from 1 to 12, a gap, then last figure of the year" */
export const sayParts = (parts: readonly Part[]): string => listed(parts.map(sayPart), parts.length > 2 ? "then" : "and").replace(/ then /, ", then ");

function sayPart(part: Part): string {
  const figures = (name: string, way: unknown) => (typeof way === "object" ? `a sign for the ${name}: ${Object.entries(way as Record<string, number>).map(([sign, value]) => `${sign} ${value}`).join(", ")}` : "");
  if ("month" in part) return figures("month", part.month) || (part.month === "padded" ? "month from 01 to 12" : "month from 1 to 12");
  if ("quarter" in part) return part.quarter === "letters" ? "quarter as A to D" : "quarter from 1 to 4";
  if ("week" in part) return part.week === "padded" ? "week from 01 to 53" : "week from 1 to 53";
  if ("day" in part) return part.day === "padded" ? "day from 01 to 31" : "day from 1 to 31";
  if ("day of year" in part) return "day of the year from 1 to 366";
  if ("year" in part) return figures("year", part.year) || `${part.year === "last figure" ? "last figure" : part.year} of the year`;
  if ("fiscal year" in part) return `${part["fiscal year"]} of the fiscal year, which begins in October`;
  if ("text" in part) return part.text.trim() === "" ? "a gap" : `“${part.text}”`;
  const [count, word] = "digits" in part ? [part.digits, "figure"] : [part.letters, "letter"];
  return `${Array.isArray(count) ? `${count[0]} to ${count[1]}` : count} ${word}${count === 1 ? "" : "s"} that say nothing of the date`;
}

/** Specimens with what they read as: "3 8" is March 1968. */
export function specimens({reads}: Pick<Scheme, "reads">): readonly {readonly code: string; readonly means: string}[] {
  return Object.entries(reads).map(([code, means]) => {
    const [from, until] = means.split("..") as [string, string | undefined];
    return {code, means: saySpan({from: parseMonth(from)!, until: parseMonth(until ?? from)!})};
  });
}

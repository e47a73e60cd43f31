// Checks the months of a book: no window contradicts itself, and what was only remembered has soft ends.
import type {Problem} from "../engine/problem.ts";
import {parseMonth} from "../engine/month/month.ts";
import type {Book} from "../engine/rule/schema.ts";
import {datedRules, type DatedRule} from "./dated-rules.ts";
import type {Where} from "./place.ts";
import * as say from "./problems.ts";

/** Fewest months between the two months of an end that is known from memory. Source: own choice; a year is what memory is good to. */
export const softMonths = 12;

/** Checks what the book covers and every window in it. Months are those that the schema let through. */
export function checkWindows(book: Book, where: Where): Problem[] {
  const {from, until} = book.covers;
  const covers = until && until < from ? [say.coversReversed(where(["covers"]), from, until)] : [];
  return [...covers, ...datedRules(book).flatMap((rule) => [...checkOrder(rule, where), ...checkMemory(rule, where)])];
}

// Months written like 1968-03 sort as text.
function checkOrder({path, window: {begins, ends}}: DatedRule, where: Where): Problem[] {
  const problems: Problem[] = [];
  if (begins && begins[1] < begins[0]) problems.push(say.windowReversed(where([...path, "begins"]), "begins", ...begins));
  if (ends && ends[1] < ends[0]) problems.push(say.windowReversed(where([...path, "ends"]), "ends", ...ends));
  if (problems.length === 0 && begins && ends && ends[0] < begins[1]) problems.push(say.windowShut(where(path), begins[1], ends[0]));
  return problems;
}

function checkMemory({path, window, cite, outside}: DatedRule, where: Where): Problem[] {
  if (cite.how !== "memory") return [];
  const ends = (["begins", "ends"] as const).flatMap((end) => {
    const months = window[end]?.map((text) => parseMonth(text) ?? 0);
    const apart = months ? Math.abs(months[1]! - months[0]!) : softMonths;
    return apart < softMonths ? [say.memoryHardEnd(where([...path, end]), end, apart, softMonths)] : [];
  });
  return outside?.height === 0 && (window.begins || window.ends) ? [...ends, say.memoryShut(where(outside.path))] : ends;
}

// What a code states, in words: "month 3, year figure 8".
import {monthNames} from "../month/month.ts";
import type {Stated} from "./stated.ts";

/** Says what a code states. */
export function sayStated(stated: Stated): string {
  const parts: string[] = [];
  if (stated.day !== undefined) parts.push(`day ${stated.day}`);
  if (stated.dayOfYear !== undefined) parts.push(`day ${stated.dayOfYear} of the year`);
  if (stated.week !== undefined) parts.push(`week ${stated.week}`);
  if (stated.quarter !== undefined) parts.push(`quarter ${stated.quarter}`);
  if (stated.month !== undefined) parts.push(`month ${stated.month} (${monthNames[stated.month - 1] ?? "no such month"})`);
  if (stated.year) {
    const {value, modulus, fiscal} = stated.year;
    const word = fiscal ? "fiscal year" : "year";
    parts.push(modulus === 0 ? `${word} ${value}` : modulus === 10 ? `${word} figure ${value}` : `${word} …${String(value).padStart(2, "0")}`);
  }
  return parts.length > 0 ? parts.join(", ") : "nothing of the date";
}

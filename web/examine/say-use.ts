// The time in which a mark was in use, with its months as a dealer says them.
import {parseMonth, sayMonth} from "../../engine/index.ts";

/**
 * @param window  as the engine says it
 * @example
 * sayUse("from 1968-03…1968-09 to 1977-01") // -> "In use from Mar 1968…Sep 1968 to Jan 1977."
 */
export function sayUse(window: string | null): string {
  if (window === null) return "";
  const months = window.replace(", still in use", " on").replace(/\d{4}-(0[1-9]|1[0-2])/g, (text) => sayMonth(parseMonth(text)!).replace(/^(\w{3})\w*/, "$1"));
  return `In use ${months}.`;
}

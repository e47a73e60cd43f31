// Reads the months of a window back from the words in which a finding says them.
import type {WindowText} from "../../engine/rule/schema.ts";

const pair = "(\\d{4}-\\d{2})(?:…(\\d{4}-\\d{2}))?";
const whole = new RegExp(`^(?:from ${pair})?(?:, still in use)? ?(?:to ${pair})?$`);

/**
 * @returns null for none, or for one that is open at both ends
 * @example
 * readWindow("from 1968-03…1968-09 to 1977-01") // -> {begins: ["1968-03", "1968-09"], ends: ["1977-01", "1977-01"]}
 */
export function readWindow(words: string | null): WindowText | null {
  const found = words === null ? null : whole.exec(words);
  if (!found) return null;
  const [, a, b, c, d] = found;
  if (a === undefined && c === undefined) return null;
  return {...(a === undefined ? {} : {begins: [a, b ?? a]}), ...(c === undefined ? {} : {ends: [c, d ?? c]})};
}

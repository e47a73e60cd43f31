// How surely a row is read, whatever its length: what tells print from cloth that only looks a little like it.
import type {ReadRow} from "../model.ts";

/** Mean chance a character of the likeliest reading, blanks not counted; 0 where nothing is read. */
export function sureness({strings}: ReadRow): number {
  const best = strings[0];
  const length = best ? best.text.replace(/ /g, "").length : 0;
  return best && length > 0 ? best.p ** (1 / length) : 0;
}

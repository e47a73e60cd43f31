// A garment given as JSON: a content as an export writes it, or a bare garment.
import {printPath} from "../../../rulebooks/place.ts";
import {checkShape} from "../../../rulebooks/shape.ts";
import {contentSchema} from "../../../store/model.ts";
import type {ReadContent} from "./read-record.ts";

/** A bare garment names its number at once; a content holds the garment. What a garment was dated to is worked out anew. */
export function readContent(given: unknown, line: number, at: string): ReadContent {
  const isBare = typeof given === "object" && given !== null && typeof (given as {garment?: unknown}).garment === "string";
  const whole = isBare ? {garment: given} : given;
  const {fits, problems} = checkShape(contentSchema, whole, (path) => `${at} ${printPath(path)}`.trimEnd());
  return fits ? {line, content: {...fits, dating: null}} : {line, problems};
}

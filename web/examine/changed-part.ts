// Which part of a garment a change touches, so that a word typed letter by letter is undone as one word.
import type {Content} from "../../store/model.ts";
import {same} from "../offline/merge.ts";

type Group = Readonly<Record<string, unknown>>;

/**
 * The one part that differs, by its path; null when several do, or none.
 * @example
 * changedPart(content, {...content, place: "attic"}) // -> "place"
 */
export function changedPart(before: Content, after: Content): string | null {
  const parts = differing(before as unknown as Group, after as unknown as Group, "");
  // A row read from a photo stands in both.
  const others = parts.filter((part) => part !== "labels");
  return others.length === 1 && (parts.length === 1 || others[0] === "garment.saw.rows") ? others[0]! : null;
}

function differing(before: Group, after: Group, path: string): string[] {
  return [...new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((key) => {
    const [a, b] = [before[key], after[key]];
    if (same(a, b)) return [];
    const deeper = path + key === "garment" || path + key === "garment.saw";
    return deeper ? differing((a ?? {}) as Group, (b ?? {}) as Group, `${path}${key}.`) : [`${path}${key}`];
  });
}

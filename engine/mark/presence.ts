// A mark that is there or not; its absence counts too, less the chance that it was lost.
import type {PresenceMark} from "../rule/schema.ts";
import {caseKey, holds, type Case} from "../rule/when.ts";
import {heights, windowOf, type Span} from "../window/window.ts";
import {constant, outcome, type MarkKind} from "./ready-mark.ts";

/** Makes a presence ready. */
export function presenceKind(mark: PresenceMark, axis: Span): MarkKind {
  const n = axis.until - axis.from + 1;
  const remembered = new Map<string, Float64Array>();
  const present = (in_: Case): Float64Array => {
    if (!holds(mark.when, in_)) return constant(n, mark.elsewhere);
    const key = caseKey(in_);
    let found = remembered.get(key);
    if (!found) {
      const window = mark.variants.findLast((v) => holds(v.when, in_))?.window ?? mark.window;
      found = heights(windowOf(window), axis).map((h) => (1 - mark.lost) * (mark.outside + (mark.inside - mark.outside) * h));
      remembered.set(key, found);
    }
    return found;
  };
  const absent = (in_: Case) => present(in_).map((p) => 1 - p);
  return {
    chance(seen, in_) {
      if (seen.kind !== "presence") return constant(n, 1);
      return seen.present ? present(in_) : absent(in_);
    },
    outcomes: (in_) => [outcome("present", present(in_)), outcome("absent", absent(in_))],
    distinguish(into) {
      into.note(mark.when);
      for (const variant of mark.variants) into.note(variant.when);
    },
  };
}

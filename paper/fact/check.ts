// Whether a printed sheet still says what is kept of its garment, or what was kept when it was printed.
import type {Content, Dating} from "../../store/model.ts";
import {factsOf, partNames, partsThatDiffer, type Facts, type SheetTerms} from "./facts.ts";
import {fingerprintOf} from "./fingerprint.ts";
import type {ReadCode} from "./sheet-code.ts";

/** Something that may be what the sheet was made from. */
export interface Candidate {
  readonly content: Content;
  /** A date beside the one that is kept: worked out anew. */
  readonly dating?: Dating;
  /** The step of the history; null for a record from elsewhere. */
  readonly rev: number | null;
  /** UTC; null when not known. */
  readonly at: string | null;
}

export interface Checked {
  /** same: as it is kept now. once: as it was kept at an earlier step. differs: never, as far as is kept. */
  readonly result: "same" | "once" | "differs";
  /** The step that the sheet was made from. */
  readonly rev: number | null;
  readonly at: string | null;
  /** Once: the parts that have changed since. */
  readonly changed: readonly string[];
  readonly words: string;
}

/**
 * Checks a code against candidates, the newest first.
 * @param terms  of the sheet when only its short fingerprint is known: every way it may have been printed
 */
export function checkSheet(read: ReadCode, candidates: readonly Candidate[], terms: readonly SheetTerms[]): Checked {
  const wanted = read.code?.fingerprint ?? read.short!;
  const ways = read.code ? [read.code.terms] : terms;
  for (const [i, candidate] of candidates.entries()) {
    const hit = matching(candidate, ways, wanted);
    if (!hit) continue;
    const {rev, at} = candidate;
    if (i === 0) return {result: "same", rev, at, changed: [], words: "The sheet says what is kept."};
    const changed = partsThatDiffer(hit.facts, factsOf(candidates[0]!.content, candidates[0]!.content.dating, hit.way)).map((part) => partNames[part]);
    const since = changed.length === 0 ? "" : ` Since then these have changed: ${changed.join(", ")}.`;
    return {result: "once", rev, at, changed, words: `The sheet says what was kept at step ${rev}${at ? `, on ${at.slice(0, 10)}` : ""}.${since}`};
  }
  return {result: "differs", rev: null, at: null, changed: [], words: "The sheet does not say what is kept, neither now nor at any earlier step: something on it, or on the rack, is another." };
}

function matching({content, dating}: Candidate, ways: readonly SheetTerms[], wanted: string): {facts: Facts; way: SheetTerms} | null {
  for (const date of dating ? [content.dating, dating] : [content.dating]) {
    for (const way of ways) {
      const facts = factsOf(content, date, way);
      if (fingerprintOf(facts).startsWith(wanted)) return {facts, way};
    }
  }
  return null;
}

// The answer in one sentence: one date, two dates, or that nothing can be said.
import {sayOdds, saySpan, sureness, verdictOf as verdictOfMonths, type Dated, type Finding} from "../engine/index.ts";

export interface Verdict {
  readonly kind: "one date" | "two dates" | "cannot tell";
  /** What was named: "March 1968", or the two times. */
  readonly words: string;
  readonly probability: number;
  readonly sureness: ReturnType<typeof sureness>;
  /** The whole sentence, without full stop. */
  readonly sentence: string;
}

/** From this chance on a later reproduction is worth a word even where it is not the likeliest answer. Source: own choice. */
export const worthAWord = 0.2;

/** Names the likeliest answer; a later reproduction that is likelier than not comes before any single date. */
export function verdictOf(finding: Dated): Verdict {
  const sure = sureness(finding);
  const {kind, words, probability, look, noEarlier, noLater} = verdictOfMonths(finding);
  if (kind === "two dates") {
    const both = `made ${words}, in the look of ${look}`;
    const chance = finding.twoDates!.probability;
    return {kind, words: both, probability: chance, sureness: sure, sentence: `Most likely a later reproduction, ${sayOdds(chance)}: ${both}`};
  }
  if (kind === "cannot tell") {
    const open = saySpan({from: noEarlier, until: noLater});
    return {kind, words: open, probability, sureness: sure, sentence: `Cannot tell: what was seen leaves ${open} open`};
  }
  return {kind, words, probability, sureness: sure, sentence: `Most likely ${words}, ${sayOdds(probability)}`};
}

/** A reproduction that is possible, though not the likeliest answer; null when it is not worth a word. */
export function possibleReproduction(finding: Finding): {readonly probability: number; readonly words: string} | null {
  const two = finding.twoDates;
  if (!two || two.probability < worthAWord || verdictOfMonths(finding).kind === "two dates") return null;
  const {words, look} = verdictOfMonths({...finding, twoDates: {...two, probability: 1 as typeof two.probability}});
  return {probability: two.probability, words: `made ${words}, in the look of ${look}`};
}

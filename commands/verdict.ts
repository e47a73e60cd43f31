// The answer in one sentence: one date, two dates, or that nothing can be said.
import {credibleSet, headline, saySpan, sayOdds, sureness, type Finding, type Span} from "../engine/index.ts";

export interface Verdict {
  readonly kind: "one date" | "two dates" | "cannot tell";
  /** What was named: "March 1968", or the two times. */
  readonly words: string;
  readonly probability: number;
  readonly sureness: ReturnType<typeof sureness>;
  /** The whole sentence, without full stop. */
  readonly sentence: string;
}

/** From this chance on a later reproduction is the answer, and below it worth a word from `worthAWord` on. Source: own choice. */
const likelierThanNot = 0.5;
export const worthAWord = 0.2;

/** Names the likeliest answer; a later reproduction that is likelier than not comes before any single date. */
export function verdictOf(finding: Finding): Verdict {
  const sure = sureness(finding);
  const two = finding.twoDates;
  if (two && two.probability >= likelierThanNot) {
    const words = sayTwoDates(finding);
    return {kind: "two dates", words, probability: two.probability, sureness: sure, sentence: `Most likely a later reproduction, ${sayOdds(two.probability)}: ${words}`};
  }
  const {words, probability} = headline(finding);
  if (sure === "cannot tell") {
    const open = saySpan({from: finding.noEarlier, until: finding.noLater});
    return {kind: "cannot tell", words: open, probability, sureness: sure, sentence: `Cannot tell: what was seen leaves ${open} open`};
  }
  return {kind: "one date", words, probability, sureness: sure, sentence: `Most likely ${words}, ${sayOdds(probability)}`};
}

/** A reproduction that is possible, though not the likeliest answer; null when it is not worth a word. */
export function possibleReproduction(finding: Finding): {readonly probability: number; readonly words: string} | null {
  const probability = finding.twoDates?.probability ?? 0;
  return probability >= worthAWord && probability < likelierThanNot ? {probability, words: sayTwoDates(finding)} : null;
}

/** "made October 2004, in the look of Jan 1951 to Aug 1956": the 90 in 100 sets, as their outer ends. */
function sayTwoDates({twoDates, first}: Finding): string {
  const outer = (months: Float64Array): Span => {
    const {runs} = credibleSet(months, 0.9, first);
    return {from: runs[0]!.from, until: runs.at(-1)!.until};
  };
  return `made ${saySpan(outer(twoDates!.made))}, in the look of ${saySpan(outer(twoDates!.look))}`;
}

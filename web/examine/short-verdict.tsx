// The verdict in one line, which stays in sight on a phone while marks are filled in below it.
import {sayOdds, verdictOf, type Brief, type Finding} from "../../engine/index.ts";

export function ShortVerdict({finding, brief}: {readonly finding: Finding | null; readonly brief: Brief | null}) {
  if (!finding || !brief || finding.ledger.length === 0) return null;
  const settled = verdictOf(finding);
  const {kind, words, probability} = settled.kind === "two dates" ? settled : verdictOf(brief);
  const first = words.charAt(0).toUpperCase() + words.slice(1);
  // The band above says all of it aloud.
  return (
    <p className="short-verdict" aria-hidden="true">
      <b>{kind === "cannot tell" ? "Open" : first}</b> <span className="quiet">{kind === "cannot tell" ? first : kind === "two dates" ? "a later reproduction" : sayOdds(probability)}</span>
    </p>
  );
}

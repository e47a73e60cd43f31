// The verdict: when, how sure, between which months, and what does not fit.
import {headline, rowsId, verdictOf as datesOf, sayMonth, saySpan, sayRuns, sayOdds, type Brief, type Finding} from "../../engine/index.ts";
import {possibleReproduction, verdictOf} from "../../commands/verdict.ts";
import {sayShare} from "./say-share.ts";
import {namesOn} from "./two-dates.ts";

export interface VerdictProps {
  readonly finding: Finding | null;
  /** The newest date, which may be ahead of the finding. */
  readonly brief: Brief;
  readonly makerName: (maker: string) => string;
  /** The date without a mark that is pointed at. */
  readonly without: {readonly name: string; readonly brief: Brief} | null;
}

export function VerdictBand({finding, brief, makerName, without}: VerdictProps) {
  if (!finding) return <section className="verdict" aria-label="Verdict"><p className="quiet">Working it out …</p><h1>…</h1></section>;
  if (finding.ledger.length === 0) {
    return (
      <section className="verdict" aria-label="Verdict">
        <p className="quiet">Nothing seen yet</p>
        <h1>When was it made?</h1>
        <p className="odds">Any month from {sayMonth(brief.first)} on</p>
        <p>Press a place on the drawing, type a row of the label, or tick who may have made it.</p>
      </section>
    );
  }
  const settled = verdictOf(finding);
  // The date is there before the reasons; whether it is of two dates is known only with them.
  const verdict = finding.posterior === brief.posterior ? settled : verdictOf(brief);
  if (settled.kind === "two dates") return <TwoDates finding={finding} where={whereOf(finding, makerName)} without={without} />;
  const ninety = brief.sets[1]!;
  const others = runnersUp(brief);
  const repro = possibleReproduction(finding);
  return (
    <section className="verdict" aria-label="Verdict">
      <p className="quiet">{verdict.kind === "cannot tell" ? "The marks leave open" : "Most likely made in"}</p>
      <h1 aria-live="polite">{capital(verdict.words)}</h1>
      <p className="odds">{verdict.kind === "cannot tell" ? "More marks are needed" : sayOdds(verdict.probability)}{whereOf(finding, makerName)}</p>
      <ul className="bounds">
        <li>9 in 10: <b>{ninety.months === 1 ? "that one month" : sayRuns(ninety.runs)}</b></li>
        {others.length > 0 && <li>then {others.join(", ")}</li>}
        {brief.noEarlier !== brief.noLater && <li>no earlier than <b>{short(brief.noEarlier)}</b>, no later than <b>{short(brief.noLater)}</b></li>}
      </ul>
      {without && <Without {...without} />}
      {finding.odd.length > 0 && (
        <div className="odd-box">
          <b>{finding.odd.length === 1 ? "One odd mark." : `${finding.odd.length} odd marks.`}</b>{" "}
          {finding.odd.map(({says, probability, piece}) => `${capital(piece ? `probably ${says}` : says)} (${sayOdds(probability)}).`).join(" ")}
        </div>
      )}
      {repro && <div className="odd-box"><b>One date or two?</b> A later reproduction is possible ({sayOdds(repro.probability)}): {repro.words}.</div>}
      {finding.unread.filter(({mark}) => mark !== rowsId).map(({text, why}) => <p key={text} className="quiet">“{text}” gives no date: {why}.</p>)}
    </section>
  );
}

/** A later one made in an older look: when it was made comes first, then what it was made to look like. */
function TwoDates({finding, where, without}: {finding: Finding; where: string; without: VerdictProps["without"]}) {
  const {words, look, noEarlier, noLater, probability} = datesOf(finding);
  const [later, older] = [namesOn(finding, "substance"), namesOn(finding, "look")];
  return (
    <section className="verdict" aria-label="Verdict">
      <p className="quiet">Most likely a later reproduction ({sayOdds(finding.twoDates!.probability)}), made in</p>
      <h1 aria-live="polite">{capital(words)}</h1>
      <p className="odds">in the look of {look}{where}</p>
      <ul className="bounds">
        <li>if so, that date is good for {sayOdds(probability)}</li>
        {noEarlier !== noLater && <li>made no earlier than <b>{short(noEarlier)}</b>, no later than <b>{short(noLater)}</b></li>}
        <li>were it all of one date: {headline(finding).words}</li>
      </ul>
      {without && <Without {...without} ifOne />}
      <div className="odd-box">
        <b>Two dates.</b> {later.length > 0 && `What was copied looks older than what was put in: ${later.join(", ")}.`}{older.length > 0 && ` The look speaks through ${older.join(", ")}.`}
      </div>
    </section>
  );
}

function Without({name, brief: {best, sets}, ifOne = false}: NonNullable<VerdictProps["without"]> & {readonly ifOne?: boolean}) {
  const {runs} = sets[1]!;
  return (
    <p className="without" role="status">
      Without {name}{ifOne && ", were it all of one date"}: <b>{sayMonth(best.month)}</b> at best ({sayShare(best.probability)}), 9 in 10 within {saySpan({from: runs[0]!.from, until: runs.at(-1)!.until})}
    </p>
  );
}

const short = (month: Brief["first"]) => sayMonth(month).replace(/^(\w{3})\w*/, "$1");

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** The likeliest months after the best one. */
function runnersUp({first, posterior, best}: Brief): string[] {
  return Array.from(posterior, (p, t) => ({p, month: (first + t) as Brief["first"]}))
    .filter(({p, month}) => p >= 0.015 && month !== best.month)
    .sort((a, b) => b.p - a.p)
    .slice(0, 3)
    .map(({p, month}) => `${short(month)} (${Math.round(p * 100)} in 100)`);
}

/** The likeliest maker and plant, as far as they are told. */
function whereOf({makers, rows}: Finding, makerName: (maker: string) => string): string {
  const likeliest = [...makers].sort((a, b) => b.probability - a.probability)[0];
  const plant = rows.flatMap(({readings}) => readings.filter(({probability}) => probability > 0.5)).find((reading) => reading.plant !== null)?.plant;
  if (!likeliest?.maker) return "";
  const name = makerName(likeliest.maker);
  return plant ? `, at plant ${plant} of ${name}` : `, by ${name}`;
}

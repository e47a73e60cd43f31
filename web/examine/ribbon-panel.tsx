// The year ribbon with a stitch line for each mark below it; pointing at a line shows the date without that mark, pinning it shows both.
import {useRef, useState} from "react";
import {nameOf, sayMonth, type Book, type Brief, type Finding} from "../../engine/index.ts";
import {StitchLine} from "../plot/stitch-line.tsx";
import {legendOf, YearRibbon, yearX} from "../plot/year-ribbon.tsx";
import {yearsShown, type YearSpan} from "../plot/year-scale.ts";
import {oddChance, windowOf, wordsOf} from "./mark-line.ts";
import {RibbonReader} from "./ribbon-reader.tsx";
import {sayShare} from "./say-share.ts";
import {useWide} from "./use-wide.ts";

export interface RibbonPanelProps {
  readonly finding: Finding | null;
  readonly brief: Brief;
  readonly books: readonly Book[];
  /** The date without the mark that is pointed at or pinned. */
  readonly shown: Brief | null;
  readonly pointed: string | null;
  readonly pinned: string | null;
  onPoint(mark: string | null): void;
  onPin(mark: string | null): void;
}

export function RibbonPanel({finding, brief, books, shown, pointed, pinned, onPoint, onPin}: RibbonPanelProps) {
  const [whole, setWhole] = useState(false);
  const frame = useRef<HTMLDivElement>(null);
  const room = useWide(frame, 900);
  const width = Math.max(260, Math.floor(room > 620 ? room - 208 : room));
  const both = shown !== null && pinned !== null && (pointed === null || pointed === pinned);
  const years = both ? joined(yearsShown(brief, whole), yearsShown(shown, whole)) : yearsShown(brief, whole);
  const drawn = shown && !both ? shown : brief;
  const bestYear = 1900 + Math.floor(drawn.best.month / 12);
  const step = yearX(bestYear + 1, years, width) - yearX(bestYear, years, width);
  const left = pointed ?? pinned;
  const name = left !== null && finding ? nameOf(finding, left) : null;
  return (
    <section className="ribbon-panel" aria-label="Year ribbon" ref={frame}>
      <div className="ribbon-frame">
        <span className="best-year" aria-hidden="true" style={{left: yearX(bestYear, years, width), width: Math.max(2, step)}} />
        {both && <p className="ribbon-caption">With {name}</p>}
        <Ribbon brief={drawn} years={years} width={width} cell={both ? 6 : 9} />
        {both && <p className="ribbon-caption">Without it</p>}
        {both && <Ribbon brief={shown} years={years} width={width} cell={6} />}
        {finding && finding.ledger.length > 0 && (
          <ul className="stitches" onMouseLeave={() => onPoint(null)}>
            {finding.ledger.map(({id}) => {
              const odd = oddChance(finding, id) !== undefined;
              const {name: mark, seen} = wordsOf(finding, id);
              return (
                <li key={id} className={[pinned === id ? "pinned" : pointed === id ? "pointed" : "", odd ? "odd" : ""].join(" ").trim() || undefined}>
                  <button type="button" aria-pressed={pinned === id} title={seen ? `${mark}: ${seen}` : mark} onMouseEnter={() => onPoint(id)} onFocus={() => onPoint(id)} onBlur={() => onPoint(null)} onClick={() => onPin(pinned === id ? null : id)}>
                    <StitchLine window={windowOf(books, finding, id)} years={years} width={width} />
                    <span className="stitch-name">{mark}{seen && <span className="quiet">: {seen}</span>}{odd && <b> (odd)</b>}<span className="unseen">: show the date without it</span></span>
                  </button>
                </li>
              );
            })}
          </ul>
        )}
      </div>
      <div className="quiet ribbon-note">
        <Legend most={drawn.best.probability} />
        <span>
          {both ? "Pinned: press its line again to let go. " : shown ? `Shown without ${name}. ` : finding && finding.ledger.length > 0 ? "Point at a line to see the date without that mark; press to compare both. " : ""}
          <button type="button" className="quiet" onClick={() => setWhole(!whole)}>{whole ? "The years that matter" : "All years"}</button>
        </span>
      </div>
    </section>
  );
}

function Ribbon({brief, years, width, cell}: {brief: Brief; years: YearSpan; width: number; cell: number}) {
  const label = `Months by likelihood, ${years.from} to ${years.until}; likeliest ${sayMonth(brief.best.month)}, ${sayShare(brief.best.probability)}`;
  return (
    <RibbonReader brief={brief} years={years} width={width} cell={cell} label={label}>
      {(at) => <YearRibbon brief={brief} years={years} width={width} cell={cell} at={at} label={label} />}
    </RibbonReader>
  );
}

function Legend({most}: {most: number}) {
  return (
    <span className="ribbon-legend">
      {legendOf(most).map(({dark, p}) => (
        <span key={dark}>
          <svg width={14} height={9} aria-hidden="true"><rect width={14} height={9} className="ribbon-ground" /><rect width={14} height={9} className="cell" fillOpacity={dark} /></svg>
          {sayShare(p)}
        </span>
      ))}
    </span>
  );
}

/** The years of both. */
const joined = (a: YearSpan, b: YearSpan): YearSpan => ({from: Math.min(a.from, b.from), until: Math.max(a.until, b.until)});

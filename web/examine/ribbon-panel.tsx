// The year ribbon with a stitch line for each mark below it; pointing at a line shows the date without that mark, pinning it shows both.
import {useRef, useState} from "react";
import {nameOf, sayMonth, type Book, type Brief, type Finding} from "../../engine/index.ts";
import {StitchLine} from "../plot/stitch-line.tsx";
import {isMarked, legendOf, YearRibbon, yearX} from "../plot/year-ribbon.tsx";
import {yearsShown, type YearSpan} from "../plot/year-scale.ts";
import {oddChance, windowOf, wordsOf} from "./mark-line.ts";
import {RibbonReader} from "./ribbon-reader.tsx";
import {sayShare} from "./say-share.ts";
import {isOfTwoDates, twoRibbons, type Months} from "./two-dates.ts";
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
  const left = pointed ?? pinned;
  const name = left !== null && finding ? nameOf(finding, left) : null;
  const ofOne = finding && isOfTwoDates(finding) ? ", were it all of one date" : "";
  const two = finding && !shown ? twoRibbons(finding) : null;
  const ribbons: readonly Captioned[] = two
    ? [{caption: "Made", months: two.made}, {caption: "In the look of", months: two.look}]
    : both
      ? [{caption: `With ${name}${ofOne}`, months: brief}, {caption: "Without it", months: shown}]
      : [{caption: null, months: shown ?? brief}];
  // A line that is only pointed at moves no years: the eye stays where it is.
  const years = ribbons.length > 1 ? ribbons.map(({months}) => yearsShown(months, whole)).reduce(joined) : yearsShown(brief, whole);
  const marked = [...new Set(ribbons.filter(({months}) => isMarked(months)).map(({months}) => 1900 + Math.floor(months.best.month / 12)))];
  const most = Math.max(...ribbons.map(({months}) => months.best.probability));
  const step = yearX(years.from + 1, years, width) - yearX(years.from, years, width);
  return (
    <section className="ribbon-panel" aria-label="Year ribbon" ref={frame}>
      <div className="ribbon-frame">
        {marked.map((year) => <span key={year} className="best-year" aria-hidden="true" style={{left: yearX(year, years, width), width: Math.max(2, step)}} />)}
        {ribbons.map(({caption, months}) => (
          <div key={caption}>
            {caption && <p className="ribbon-caption">{caption}</p>}
            <Ribbon brief={months} most={most} years={years} width={width} cell={ribbons.length > 1 ? 6 : 9} />
          </div>
        ))}
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
        <Legend most={most} />
        <span>
          {both ? "Pinned: press its line again to let go. " : shown ? `Shown without ${name}${ofOne}. ` : finding && finding.ledger.length > 0 ? "Point at a line to see the date without that mark; press to compare both. " : ""}
          <button type="button" className="quiet" onClick={() => setWhole(!whole)}>{whole ? "The years that matter" : "All years"}</button>
        </span>
      </div>
    </section>
  );
}

interface Captioned {
  readonly caption: string | null;
  readonly months: Months;
}

function Ribbon({brief, most, years, width, cell}: {brief: Months; most: number; years: YearSpan; width: number; cell: number}) {
  const label = `Months by likelihood, ${years.from} to ${years.until}; likeliest ${sayMonth(brief.best.month)}, ${sayShare(brief.best.probability)}`;
  return (
    <RibbonReader brief={brief} years={years} width={width} cell={cell} label={label}>
      {(at) => <YearRibbon brief={brief} most={most} years={years} width={width} cell={cell} at={at} label={label} />}
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

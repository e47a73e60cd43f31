// The year ribbon with a stitch line for each mark below it; pointing at a line, or pinning it, shows the date without that mark.
import {useRef, useState} from "react";
import {nameOf, sayMonth, type Book, type Brief, type Finding} from "../../engine/index.ts";
import type {WindowText} from "../../engine/rule/schema.ts";
import {StitchLine} from "../plot/stitch-line.tsx";
import {YearRibbon, yearX} from "../plot/year-ribbon.tsx";
import {yearsShown} from "../plot/year-scale.ts";
import {useWide} from "./use-wide.ts";

export interface RibbonPanelProps {
  readonly finding: Finding | null;
  readonly brief: Brief;
  readonly books: readonly Book[];
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
  const beside = room > 620;
  const width = Math.max(260, Math.floor(beside ? room - 200 : room));
  const years = yearsShown(brief, whole);
  const drawn = shown ?? brief;
  const bestYear = 1900 + Math.floor(drawn.best.month / 12);
  const step = yearX(bestYear + 1, years, width) - yearX(bestYear, years, width);
  return (
    <section className="ribbon-panel" aria-label="Year ribbon" ref={frame}>
      <div className="ribbon-frame">
        <span className="best-year" aria-hidden="true" style={{left: yearX(bestYear, years, width), width: Math.max(2, step)}} />
        <YearRibbon brief={drawn} years={years} width={width} label={`Months by likelihood, ${years.from} to ${years.until}; likeliest ${sayMonth(drawn.best.month)}, ${Math.round(drawn.best.probability * 100)} in 100`} />
        {finding && finding.ledger.length > 0 && (
          <ul className="stitches" onMouseLeave={() => onPoint(null)}>
            {finding.ledger.map(({id}) => (
              <li key={id} className={pinned === id ? "pinned" : pointed === id ? "pointed" : undefined}>
                <button type="button" aria-pressed={pinned === id} onMouseEnter={() => onPoint(id)} onFocus={() => onPoint(id)} onBlur={() => onPoint(null)} onClick={() => onPin(pinned === id ? null : id)}>
                  <StitchLine window={windowIn(books, finding, id)} years={years} width={width} />
                  <span>{nameOf(finding, id)}<span className="unseen">: show the date without it</span></span>
                </button>
              </li>
            ))}
          </ul>
        )}
      </div>
      <p className="quiet ribbon-note">
        {shown ? "Shown without the mark that is pointed at. " : "The stronger its colour, the likelier a month. Point at a line to see the date without that mark; press to pin it. "}
        <button type="button" className="quiet" onClick={() => setWhole(!whole)}>{whole ? "The years that matter" : "All years"}</button>
      </p>
    </section>
  );
}

/** The window of what was seen of a mark; null for numbers and texts. */
function windowIn(books: readonly Book[], {rules}: Finding, id: string): WindowText | null {
  const rule = rules.find(({mark}) => mark === id);
  const book = books.find((one) => one.book === rule?.book);
  if (!rule || !book) return null;
  if (id === "label") return Object.values(book.labels?.kinds ?? {}).find(({name}) => name === rule.seen)?.window ?? null;
  const mark = book.marks[id];
  if (mark?.kind === "choice") return Object.values(mark.values).find(({name}) => name === rule.seen)?.window ?? null;
  return mark && "window" in mark && rule.seen !== "absent" ? mark.window : null;
}

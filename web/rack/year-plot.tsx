// How many garments of each year are expected among those shown; two pins on its axis, or a sweep across it, set the range of years.
import {useRef, useState, type KeyboardEvent, type PointerEvent} from "react";
import {useWidth} from "./use-width.ts";
import {inOrder, moveByKey, yearScale, type YearScale} from "./year-scale.ts";

interface Range {
  readonly from: number | null;
  readonly until: number | null;
}

export interface YearPlotProps extends Range {
  readonly years: {readonly first: number; readonly garments: readonly number[]};
  readonly onRange: (range: Range) => void;
}

const height = 96;
const axis = 74;
const [firstPin, lastPin] = ["First year", "Last year"];

export function YearPlot({years, from, until, onRange}: YearPlotProps) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 640);
  const [sweep, setSweep] = useState<{readonly start: number; readonly end: number} | null>(null);
  const scale = yearScale(years, [from, until], width);
  const shown: Range = sweep ? inOrder(sweep.start, sweep.end) : {from, until};
  const yearOf = ({clientX, currentTarget}: PointerEvent<SVGSVGElement>) => scale.yearAt(clientX - currentTarget.getBoundingClientRect().left);

  const begin = (event: PointerEvent<SVGSVGElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    const pin = (event.target as Element).closest("[role=slider]")?.getAttribute("aria-label");
    const [low, high] = [from ?? scale.first, until ?? scale.last];
    // A pin is pulled away from the other one; anywhere else a new range begins.
    setSweep(pin === firstPin ? {start: high, end: low} : pin === lastPin ? {start: low, end: high} : {start: yearOf(event), end: yearOf(event)});
  };
  const end = () => {
    if (sweep) onRange(inOrder(sweep.start, sweep.end));
    setSweep(null);
  };

  return (
    <div className="year-plot" ref={frame}>
      <svg
        width={width}
        height={height}
        role="group"
        aria-label="Years of the garments shown"
        onPointerDown={begin}
        onPointerMove={(event) => sweep && setSweep({...sweep, end: yearOf(event)})}
        onPointerUp={end}
        onPointerCancel={() => setSweep(null)}
      >
        <Band scale={scale} {...shown} />
        <Bars years={years} scale={scale} {...shown} />
        <path className="year-axis" d={`M0 ${axis + 0.5}H${width}`} />
        {scale.figures.map((year) => (
          <text key={year} className={year % 10 === 0 ? "year-figure ten" : "year-figure"} x={scale.x(year) + scale.step / 2} y={axis + 17} textAnchor="middle">
            {year % 10 === 0 ? year : String(year % 100).padStart(2, "0")}
          </text>
        ))}
        <Pin name={firstPin} year={shown.from} rest={scale.first} at={Math.max(5, scale.x(shown.from ?? scale.first))} scale={scale} onMove={(year) => onRange({from: year, until: until === null ? null : Math.max(year, until)})} />
        <Pin name={lastPin} year={shown.until} rest={scale.last} at={Math.min(width - 5, scale.x((shown.until ?? scale.last) + 1))} scale={scale} onMove={(year) => onRange({from: from === null ? null : Math.min(year, from), until: year})} />
      </svg>
    </div>
  );
}

/** The years of the range lie on a strip of cloth. */
function Band({scale, from, until}: Range & {scale: YearScale}) {
  if (from === null && until === null) return null;
  const [left, right] = [scale.x(from ?? scale.first), scale.x((until ?? scale.last) + 1)];
  return <rect className="year-band" x={left} y={0} width={Math.max(0, right - left)} height={axis} />;
}

function Bars({years, scale, from, until}: Range & {years: YearPlotProps["years"]; scale: YearScale}) {
  const most = Math.max(1e-9, ...years.garments);
  return years.garments.map((count, i) => {
    const year = years.first + i;
    if (count < 0.005 || (count / most) * (axis - 14) < 0.3 || year < scale.first || year > scale.last) return null;
    const tall = Math.max(1.5, (count / most) * (axis - 14));
    const outside = (from !== null && year < from) || (until !== null && year > until);
    return (
      <rect key={year} className={outside ? "year-bar outside" : "year-bar"} x={scale.x(year) + scale.step * 0.12} y={axis - tall} width={scale.step * 0.76} height={tall}>
        <title>{`${year}: about ${count < 10 ? count.toFixed(1) : Math.round(count)}`}</title>
      </rect>
    );
  });
}

/** One end of the range: a pin stuck through the axis. It moves with the arrow keys, and a sweep sets both at once. */
function Pin({name, year, rest, at, scale, onMove}: {name: string; year: number | null; rest: number; at: number; scale: YearScale; onMove: (year: number) => void}) {
  const press = (event: KeyboardEvent) => {
    const to = moveByKey(event.key, year ?? rest, scale);
    if (to === null) return;
    event.preventDefault();
    onMove(to);
  };
  return (
    <g
      className={year === null ? "year-pin open" : "year-pin"}
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-valuemin={scale.first}
      aria-valuemax={scale.last}
      aria-valuenow={year ?? rest}
      aria-valuetext={year === null ? "any" : String(year)}
      onKeyDown={press}
    >
      <rect x={at - 12} y={0} width={24} height={axis + 20} fill="transparent" />
      <path d={`M${at} 9V${axis + 7}`} />
      <circle cx={at} cy={6} r={4} />
    </g>
  );
}

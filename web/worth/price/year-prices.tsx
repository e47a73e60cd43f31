// What it would bring by the year it was made in: a thread through the years, its knots as dark as the years are likely.
import {useRef} from "react";
import type {WorthAnswer} from "../../../worth/answer.ts";
import {sayShare} from "../../examine/say-share.ts";
import {useWidth} from "../../rack/use-width.ts";
import {darkness} from "../../plot/year-ribbon.tsx";
import {sayAbout} from "../say.ts";
import {tapeScale} from "./tape-scale.ts";

const height = 118;
const [gutter, foot] = [52, 18];
/** A year less likely than that moves no price. */
const least = 0.002;

export function YearPrices({answer: {years, currency}}: {readonly answer: Pick<WorthAnswer, "years" | "currency">}) {
  const frame = useRef<HTMLElement>(null);
  const width = useWidth(frame, 560);
  const shown = years.flatMap(({year, share, typical}) => (typical === null || share < least ? [] : [{year, share, typical}]));
  if (shown.length < 3) return null;
  const [first, last] = [shown[0]!.year, shown.at(-1)!.year];
  const step = (width - gutter) / (last - first + 1);
  // Where a century is open, the knots make room for each other.
  const radius = Math.max(1.2, Math.min(5, step * 0.42));
  const x = (year: number) => gutter + (year - first + 0.5) * step;
  // The tape, hung up.
  const scale = tapeScale(shown.map(({typical}) => typical), height * 1.6);
  const y = (cents: number) => 6 + (1 - (cents - scale.low) / (scale.high - scale.low)) * (height - 12);
  const most = Math.max(...shown.map(({share}) => share));
  const every = [1, 2, 5, 10, 20].find((n) => n * step >= 30) ?? 50;
  const ends = [...shown].sort((a, b) => b.share - a.share).slice(0, 2).map(({year, share, typical}) => `${year}: ${sayAbout({cents: typical, currency})}, ${sayShare(share)}`);
  return (
    <section className="year-prices" aria-label="By the year it was made" ref={frame}>
      <h2>By the year it was made</h2>
      <svg width={width} height={height + foot} viewBox={`0 0 ${width} ${height + foot}`} role="img" aria-label={`What it would bring by its year, ${first} to ${last}. Likeliest ${ends.join("; ")}`}>
        {scale.marks.filter(({long}) => long).map(({cents}) => (
          <g key={cents}>
            <path className="month-grid" d={`M${gutter} ${y(cents)}H${width}`} />
            <text className="tape-figure" x={gutter - 6} y={y(cents) + 4} textAnchor="end">{sayAbout({cents, currency})}</text>
          </g>
        ))}
        <path className="year-thread" d={shown.map(({year, typical}, i) => `${i === 0 ? "M" : "L"}${x(year).toFixed(1)} ${y(typical).toFixed(1)}`).join("")} />
        {shown.map(({year, share, typical}) => (
          <g key={year}>
            <circle className="year-ground" cx={x(year)} cy={y(typical)} r={radius} />
            <circle className="year-knot" cx={x(year)} cy={y(typical)} r={radius} fillOpacity={darkness(share, most)}>
              <title>{`${year}: about ${sayAbout({cents: typical, currency})}, ${sayShare(share)}`}</title>
            </circle>
            {year % every === 0 && <text className="tape-figure" x={x(year)} y={height + 13} textAnchor="middle">{year}</text>}
          </g>
        ))}
      </svg>
      <p className="quiet tape-note">The darker a knot, the likelier its year.</p>
    </section>
  );
}

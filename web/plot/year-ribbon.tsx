// The year ribbon: years along, months down, each cell as dark as it is likely.
import {sayMonth, type Brief, type MonthIndex} from "../../engine/index.ts";
import {january, type YearSpan} from "./year-scale.ts";

export interface RibbonProps {
  readonly brief: Pick<Brief, "first" | "posterior" | "best">;
  readonly years: YearSpan;
  readonly width: number;
  readonly cell?: number;
  /** The likelihood that is as dark as can be; that of the likeliest month when left out. Ribbons to be compared share it. */
  readonly most?: number;
  /** A month that is pointed at. */
  readonly at?: MonthIndex | null;
  /** Said to those who do not see it. */
  readonly label: string;
}

export const gutter = 26;
const names = ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"];

/** Left edge of a year. */
export const yearX = (year: number, {from, until}: YearSpan, width: number): number => gutter + ((year - from) / (until - from + 1)) * (width - gutter);

/** One year open, evenly: from there on the likeliest month is as dark as can be. */
const full = 1 / 12;

/** The likelihoods that stand for full, half and a fifth of the darkness, as far as the answer has them: for a legend. */
export function legendOf(most: number): readonly {readonly dark: number; readonly p: number}[] {
  const top = Math.max(most, full);
  return [Math.sqrt(most / top), 0.5, 0.2].filter((dark, i, all) => i === 0 || dark < all[0]! * 0.8).map((dark) => ({dark, p: top * dark ** 2}));
}

/** Whether the likeliest month stands out: where all are alike, none is pointed out. */
export const isMarked = ({posterior, best}: Pick<RibbonProps["brief"], "posterior" | "best">): boolean => best.probability * posterior.length > 3;

/** How dark a cell is: by the square root, so that one in a hundred can still be seen; an answer that is open stays pale as a whole. */
export const darkness = (p: number, most: number): number => Math.sqrt(p / Math.max(most, full));

export function YearRibbon({brief: {first, posterior, best}, years, width, cell = 9, most = best.probability, at = null, label}: RibbonProps) {
  const step = (width - gutter) / (years.until - years.from + 1);
  const height = 12 * cell;
  const marked = isMarked({posterior, best});
  const cells = [];
  for (let year = years.from; year <= years.until; year++) {
    for (let m = 0; m < 12; m++) {
      const month = (january(year) + m) as MonthIndex;
      const p = posterior[month - first] ?? 0;
      const dark = darkness(p, most);
      if (dark < 0.03) continue;
      cells.push(
        <rect key={month} x={yearX(year, years, width) + 0.5} y={m * cell + 0.5} width={Math.max(1, step - 1)} height={cell - 1} fillOpacity={dark} className={marked && month === best.month ? "cell best" : "cell"}>
          <title>{`${sayMonth(month)}: ${Math.round(p * 1000) / 10} in 100`}</title>
        </rect>,
      );
    }
  }
  return (
    <svg className="ribbon" role="img" aria-label={label} width={width} height={height + 18} viewBox={`0 0 ${width} ${height + 18}`}>
      <rect x={gutter} y={0} width={width - gutter} height={height} className="ribbon-ground" />
      <path d={gridOf(years, width, cell, step)} className="ribbon-grid" />
      {names.map((name, m) => (cell >= 8 || m % 3 === 0) && <text key={m} x={gutter - 6} y={m * cell + cell - 1.5} textAnchor="end" className="tick">{name}</text>)}
      {cells}
      {at !== null && <rect x={yearX(1900 + Math.floor(at / 12), years, width) - 1} y={(at % 12) * cell - 1} width={step + 2} height={cell + 2} className="ribbon-at" />}
      <Years years={years} width={width} y={height + 13} />
    </svg>
  );
}

/** Lines between the years, while there is room for them, and between the months. */
function gridOf(years: YearSpan, width: number, cell: number, step: number): string {
  const across = Array.from({length: 11}, (_, m) => `M${gutter} ${(m + 1) * cell}H${width}`);
  const down = step < 5 ? [] : Array.from({length: years.until - years.from}, (_, i) => `M${yearX(years.from + i + 1, years, width).toFixed(1)} 0V${12 * cell}`);
  return [...across, ...down].join("");
}

/** Year figures under the ribbon, as many as have room; decades bold. */
function Years({years, width, y}: {years: YearSpan; width: number; y: number}) {
  const step = (width - gutter) / (years.until - years.from + 1);
  const every = [1, 2, 5, 10, 20].find((n) => n * step >= 26) ?? 50;
  const shown = [];
  for (let year = Math.ceil(years.from / every) * every; year <= years.until; year += every) {
    const round = year % 10 === 0;
    shown.push(<text key={year} x={yearX(year, years, width) + step / 2} y={y} textAnchor="middle" className={round ? "tick round" : "tick"}>{round || every >= 5 ? year : String(year % 100).padStart(2, "0")}</text>);
  }
  return <>{shown}</>;
}

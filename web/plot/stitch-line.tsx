// A stitch line: dashes where a mark was in use, thinning at its soft ends, on the years of the ribbon.
import type {WindowText} from "../../engine/rule/schema.ts";
import {parseMonth} from "../../engine/index.ts";
import {gutter, yearX} from "./year-ribbon.tsx";
import type {YearSpan} from "./year-scale.ts";

export interface StitchProps {
  /** Null: a mark that has no window of its own, such as a number. */
  readonly window: WindowText | null;
  readonly years: YearSpan;
  readonly width: number;
}

export function StitchLine({window, years, width}: StitchProps) {
  const place = (text: string) => Math.min(width, Math.max(gutter, yearX(1900 + parseMonth(text)! / 12, years, width)));
  if (!window) return <svg className="stitch" aria-hidden="true" width={width} height={10} viewBox={`0 0 ${width} 10`}><path d={`M${gutter} 5H${width}`} className="loose" /></svg>;
  const [a, b] = window.begins ? window.begins.map(place) : [gutter, gutter];
  const [c, d] = window.ends ? window.ends.map(place) : [width, width];
  return (
    <svg className="stitch" aria-hidden="true" width={width} height={10} viewBox={`0 0 ${width} 10`}>
      {b! > a! && <path d={`M${a} 5H${b}`} className="soft" />}
      {c! > b! && <path d={`M${b} 5H${c}`} className="firm" />}
      {d! > c! && <path d={`M${c} 5H${d}`} className="soft" />}
    </svg>
  );
}

// Reads the ribbon month by month: by pointing, or with the arrow keys, and says what it shows.
import {useState, type KeyboardEvent, type PointerEvent, type ReactNode} from "react";
import {monthIndex, sayMonth, type Brief, type MonthIndex} from "../../engine/index.ts";
import {gutter} from "../plot/year-ribbon.tsx";
import {january, type YearSpan} from "../plot/year-scale.ts";
import {sayShare} from "./say-share.ts";

export interface ReaderProps {
  readonly brief: Pick<Brief, "first" | "posterior" | "best">;
  readonly years: YearSpan;
  readonly width: number;
  readonly cell: number;
  readonly label: string;
  readonly children: (at: MonthIndex | null) => ReactNode;
}

const steps: Readonly<Record<string, number>> = {ArrowLeft: -12, ArrowRight: 12, ArrowUp: -1, ArrowDown: 1};

export function RibbonReader({brief: {first, posterior, best}, years, width, cell, label, children}: ReaderProps) {
  const [at, setAt] = useState<MonthIndex | null>(null);
  const [low, high] = [january(years.from), january(years.until) + 11];
  const inside = (month: number) => monthIndex(Math.min(high, Math.max(low, month)));
  const shown = at === null ? null : inside(at);
  const words = (month: MonthIndex) => `${sayMonth(month)}: ${sayShare(posterior[month - first] ?? 0)}`;
  const point = ({clientX, clientY, currentTarget}: PointerEvent) => {
    const {left, top} = currentTarget.getBoundingClientRect();
    const [along, down] = [(clientX - left - gutter) / (width - gutter), Math.floor((clientY - top) / cell)];
    setAt(along < 0 || along >= 1 || down < 0 || down > 11 ? null : inside(january(years.from + Math.floor(along * (years.until - years.from + 1))) + down));
  };
  const press = (event: KeyboardEvent) => {
    const to = event.key === "Home" ? best.month : event.key in steps ? (shown ?? best.month) + (shown === null ? 0 : steps[event.key]!) : null;
    if (to === null) return;
    event.preventDefault();
    setAt(inside(to));
  };
  return (
    <div
      className="ribbon-reader"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={low}
      aria-valuemax={high}
      aria-valuenow={shown ?? best.month}
      aria-valuetext={words(shown ?? best.month)}
      onKeyDown={press}
      onPointerMove={point}
      onPointerDown={point}
      onPointerLeave={() => setAt(null)}
      onBlur={() => setAt(null)}
    >
      {children(shown)}
      {shown !== null && <span className="ribbon-says" aria-hidden="true">{words(shown)}</span>}
    </div>
  );
}

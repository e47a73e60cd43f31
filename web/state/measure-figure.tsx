// The garment with a tape laid at every point of measure: what is measured is drawn through, the point at hand stands out.
import type {GarmentKind} from "../../state/garment-kind.ts";
import type {Point} from "../../state/point-shape.ts";
import {GarmentDrawing, sheet} from "../plot/garment-drawing.tsx";
import {outlines} from "../plot/garment-outline.ts";
import {middleOf, tapeLines} from "./tape-lines.ts";

export interface MeasureFigureProps {
  readonly kind: GarmentKind;
  readonly points: readonly Point[];
  readonly measured: ReadonlySet<string>;
  readonly doubted: ReadonlySet<string>;
  /** The point at hand. */
  readonly at: Point | null;
  onPoint(id: string): void;
}

export function MeasureFigure({kind, points, measured, doubted, at, onPoint}: MeasureFigureProps) {
  const lines = tapeLines[kind];
  return (
    <div className="measure-figure">
      <div className="figure-card figure-sheet">
        <GarmentDrawing outline={outlines[kind]} />
        {/* The fields beside it are the way for keyboards and ears. */}
        <svg className="laid" viewBox={`0 0 ${sheet.width} ${sheet.height}`} aria-hidden="true">
          {points.map(({id}) => {
            const line = lines[id];
            if (!line) return null;
            const d = `M${line.map((spot) => spot.join(" ")).join("L")}`;
            return (
              <g key={id} className={["lay", measured.has(id) ? "measured" : "", doubted.has(id) ? "doubted" : "", at?.id === id ? "at" : ""].join(" ").trim()} onClick={() => onPoint(id)}>
                <path d={d} className="reach" />
                <path d={d} className="line" />
                {[line[0]!, line.at(-1)!].map(([x, y]) => <circle key={`${x} ${y}`} cx={x} cy={y} r={2.6} />)}
              </g>
            );
          })}
          {at && lines[at.id] && <Name text={at.name} spot={middleOf(lines[at.id]!)} />}
        </svg>
      </div>
      <p className="lay-how">{at ? <><b>{capital(at.name)}</b>{at.also.length > 0 && <span className="quiet"> ({at.also.join(", ")})</span>}: {at.how}.{at.flat && " Doubled by itself to the girth."}</> : <span className="quiet">Press a line, or go to a field: its tape is shown here.</span>}</p>
    </div>
  );
}

function Name({text, spot: [x, y]}: {readonly text: string; readonly spot: readonly [number, number]}) {
  const width = text.length * 6.2 + 10;
  const left = Math.min(Math.max(x - width / 2, 2), sheet.width - width - 2);
  return (
    <g className="lay-name">
      <rect x={left} y={y - 22} width={width} height={16} rx={2} />
      <text x={left + width / 2} y={y - 10} textAnchor="middle">{text}</text>
    </g>
  );
}

export const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

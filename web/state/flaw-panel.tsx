// One side of a garment, on which a press says where a flaw is.
import type {GarmentKind} from "../../state/garment-kind.ts";
import type {Flaw} from "../../state/model.ts";
import {panel} from "../../state/place.ts";
import {outlines} from "../plot/garment-outline.ts";
import {CrossStitch} from "./cross-stitch.tsx";

export interface FlawPanelProps {
  readonly kind: GarmentKind;
  readonly side: Flaw["side"];
  readonly flaws: readonly Flaw[];
  readonly names: readonly string[];
  onPlace(x: number, y: number): void;
  onOpen(index: number): void;
}

export function FlawPanel({kind, side, flaws, names, onPlace, onOpen}: FlawPanelProps) {
  const {lines, stitches} = outlines[kind];
  return (
    <figure className={`flaw-panel ${side}`}>
      <div className="figure-card figure-sheet" onClick={(event) => {
        const box = event.currentTarget.getBoundingClientRect();
        onPlace((event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height);
      }}>
        <svg className="drawing" viewBox={`${side === "back" ? panel.width : 0} 0 ${panel.width} ${panel.height}`} aria-hidden="true">
          {lines.map((d) => <path key={d} d={d} className="cut" />)}
          {side !== "inside" && stitches.map((d) => <path key={d} d={d} className="seam" />)}
        </svg>
        {flaws.map((flaw, index) =>
          flaw.side === side && flaw.x !== null && flaw.y !== null ? (
            <button key={index} type="button" className="flaw-spot" title={names[index]} aria-label={`Flaw ${index + 1}: ${names[index]!}`} style={{left: `${flaw.x * 100}%`, top: `${flaw.y * 100}%`}} onClick={(event) => {
              event.stopPropagation();
              onOpen(index);
            }}>
              <CrossStitch {...flaw} />
            </button>
          ) : null,
        )}
      </div>
      <figcaption className="quiet">{side}</figcaption>
    </figure>
  );
}

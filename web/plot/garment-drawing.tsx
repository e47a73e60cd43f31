// A garment as a line drawing, front and back.
import type {Outline} from "./garment-outline.ts";

export const sheet = {width: 340, height: 380};

export function GarmentDrawing({outline}: {readonly outline: Outline}) {
  return (
    <svg className="drawing" viewBox={`0 0 ${sheet.width} ${sheet.height}`} aria-hidden="true">
      {outline.lines.map((d) => <path key={d} d={d} className="cut" />)}
      {outline.stitches.map((d) => <path key={d} d={d} className="seam" />)}
      <text x={84} y={374} textAnchor="middle">{outline.captions[0]}</text>
      <text x={256} y={374} textAnchor="middle">{outline.captions[1]}</text>
    </svg>
  );
}

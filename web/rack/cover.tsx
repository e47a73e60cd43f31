// What a garment looks like on the rack: its first photo, or a line drawing of its kind where there is none.
import type {RackRow} from "../../store/model.ts";
import {outlineOf} from "../plot/garment-outline.ts";

/** The front alone: it stands on the left half of the sheet. */
function frontOf(type: string) {
  const {lines, stitches} = outlineOf(type);
  const isFront = (path: string) => Number(/^M(\d+)/.exec(path)![1]) < 170;
  return {lines: lines.filter(isFront), stitches: stitches.filter(isFront)};
}

export interface CoverProps {
  readonly row: Pick<RackRow, "title" | "number" | "type" | "cover">;
  readonly small?: boolean;
}

export function Cover({row: {title, number, type, cover}, small = false}: CoverProps) {
  const name = title || `${type || "garment"} ${number}`;
  if (cover) return <img className={small ? "cover small" : "cover"} src={`/api/photos/${cover}/small`} alt={name} loading="lazy" />;
  const {lines, stitches} = frontOf(type);
  return (
    <svg className={small ? "cover small" : "cover"} role="img" aria-label={`${name}, drawn`} viewBox="0 24 168 340">
      {lines.map((d) => <path key={d} d={d} className="cut" />)}
      {stitches.map((d) => <path key={d} d={d} className="seam" />)}
    </svg>
  );
}

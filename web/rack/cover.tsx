// What a garment looks like on the rack: its first photo, or a line drawing of its kind where there is none.
import type {RackRow} from "../../store/model.ts";
import {outlineOf} from "../plot/garment-outline.ts";

export interface CoverProps {
  readonly row: Pick<RackRow, "title" | "number" | "type" | "cover">;
  readonly small?: boolean;
}

export function Cover({row: {title, number, type, cover}, small = false}: CoverProps) {
  const name = title || `${type || "garment"} ${number}`;
  if (cover) return <img className={small ? "cover small" : "cover"} src={`/api/photos/${cover}/small`} alt={name} loading="lazy" />;
  const {lines, stitches} = outlineOf(type);
  return (
    <svg className={small ? "cover small" : "cover"} role="img" aria-label={`${name}, drawn`} viewBox="0 20 168 350">
      {lines.map((d) => <path key={d} d={d} className="cut" />)}
      {stitches.map((d) => <path key={d} d={d} className="seam" />)}
    </svg>
  );
}

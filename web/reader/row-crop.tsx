// The picture of one row, cut out of its photo and laid flat.
import {useEffect, useRef, useState} from "react";
import {grown, sizeOf} from "../../reader/image/plane.ts";
import type {Quad} from "../../reader/model.ts";
import {noAids, type Aids} from "./aids.ts";
import {drawCrop} from "./draw-crop.ts";
import type {Size} from "./outline.ts";
import {pixelsOf} from "./photo-pixels.ts";

export interface CropProps {
  readonly photo: string;
  /** Sides of the upright original; null: not known, so that the original is needed. */
  readonly size: Size | null;
  readonly quad: Quad;
  readonly alt: string;
  /** Height on the screen, in pixels of the page. */
  readonly height?: number;
  readonly aids?: Aids;
}

/** Some cloth around the print, in heights of the row. */
const [beside, above] = [0.4, 0.32];

export function RowCrop({photo, size, quad, alt, height = 52, aids = noAids}: CropProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [state, setState] = useState<"waiting" | "there" | "absent">("waiting");
  const whole = grown(quad, beside, above);
  const {width: wide, height: high} = sizeOf(whole);
  const key = JSON.stringify([quad, size, aids]);
  useEffect(() => {
    let here = true;
    void pixelsOf(photo, size).then((pixels) => {
      if (!here || !canvas.current) return;
      const drawn = pixels !== null && drawCrop(canvas.current, pixels, whole, Math.round(height * Math.min(2, devicePixelRatio || 1)), aids);
      setState(drawn ? "there" : "absent");
    });
    return () => void (here = false);
  }, [photo, key, height]);
  return (
    <span className="row-crop" data-state={state} style={{aspectRatio: `${Math.max(0.2, wide / Math.max(1, high))}`, width: Math.round((height * wide) / Math.max(1, high))}}>
      <canvas ref={canvas} role="img" aria-label={alt} />
      {state === "absent" && <span className="quiet">its photo is not on this device</span>}
    </span>
  );
}

// The label cut out along its outline and laid flat, as the reader sees it.
import {useEffect, useRef} from "react";
import {sizeOf} from "../../reader/image/plane.ts";
import type {Quad} from "../../reader/model.ts";
import {noAids} from "./aids.ts";
import {drawCrop} from "./draw-crop.ts";
import type {PhotoPixels} from "./photo-pixels.ts";

/** Longer side of the drawing, in pixels of the device. */
const longest = 1000;

export function StraightLabel({pixels, outline}: {readonly pixels: PhotoPixels; readonly outline: Quad}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const {width, height} = sizeOf(outline);
  useEffect(() => void drawCrop(canvas.current!, pixels, outline, Math.round(Math.min(longest, (longest * height) / width)), noAids), [pixels, outline]);
  return <canvas ref={canvas} className="straight" role="img" aria-label="The label, laid flat" style={{width: `min(100%, calc(58dvh * ${width / height}))`}} />;
}

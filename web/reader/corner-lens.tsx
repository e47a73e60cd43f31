// What lies under the thumb while a corner is moved, enlarged, on the other side of the photo.
import {useEffect, useRef} from "react";
import type {Corner} from "../../reader/model.ts";
import type {Turn} from "./outline.ts";
import type {PhotoPixels} from "./photo-pixels.ts";

const side = 132;
/** So much of the photo's longer side is seen in the lens. */
const seen = 1 / 12;

export function CornerLens({pixels: {bitmap, size}, turn, at, opposite}: {readonly pixels: PhotoPixels; readonly turn: Turn; readonly at: Corner; readonly opposite: "left" | "right"}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const context = canvas.current!.getContext("2d")!;
    const scale = bitmap.width / size.width;
    const zoom = (side * 2) / (Math.max(bitmap.width, bitmap.height) * seen);
    context.resetTransform();
    context.fillRect(0, 0, side * 2, side * 2);
    context.translate(side, side);
    context.rotate((turn * Math.PI) / 180);
    context.scale(zoom, zoom);
    context.drawImage(bitmap, -at.x * scale, -at.y * scale);
  });
  return <span className={`corner-lens ${opposite}`} aria-hidden="true"><canvas ref={canvas} width={side * 2} height={side * 2} /></span>;
}

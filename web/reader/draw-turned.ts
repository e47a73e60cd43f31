// Draws a photo turned upright, no finer than a screen shows it.
import {turnedSize, type Turn} from "./outline.ts";
import type {PhotoPixels} from "./photo-pixels.ts";

const longest = 1600;

export function drawTurned(canvas: HTMLCanvasElement, {bitmap}: PhotoPixels, turn: Turn): void {
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const [wide, high] = [bitmap.width * scale, bitmap.height * scale];
  const {width, height} = turnedSize({width: Math.round(wide), height: Math.round(high)}, turn);
  Object.assign(canvas, {width, height});
  const context = canvas.getContext("2d")!;
  context.imageSmoothingQuality = "high";
  context.translate(width / 2, height / 2);
  context.rotate((turn * Math.PI) / 180);
  context.drawImage(bitmap, -wide / 2, -high / 2, wide, high);
}

// Draws a part of a photo laid flat on a canvas: a row, or the whole label.
import {crop} from "../../reader/image/crop.ts";
import {sizeOf} from "../../reader/image/plane.ts";
import type {Quad} from "../../reader/model.ts";
import {applyAids, type Aids} from "./aids.ts";
import type {PhotoPixels} from "./photo-pixels.ts";

/** More pixels than this across are of no use on a screen. */
const widest = 2400;

/**
 * Draws a quad of the photo upright; the canvas is given its size.
 * @param quad    in pixels of the upright original
 * @param height  of the drawing, in pixels of the device
 * @returns whether there was anything to draw
 */
export function drawCrop(canvas: HTMLCanvasElement, {bitmap, size}: PhotoPixels, quad: Quad, height: number, aids: Aids): boolean {
  const scale = bitmap.width / size.width;
  const inBitmap = quad.map(({x, y}) => ({x: x * scale, y: y * scale}));
  const {width: wide, height: high} = sizeOf(inBitmap);
  if (!(high > 0.5 && wide > 0.5)) return false;
  const width = Math.max(1, Math.min(widest, Math.round((wide / high) * height)));
  const [xs, ys] = [inBitmap.map(({x}) => x), inBitmap.map(({y}) => y)];
  const [left, top] = [clamp(Math.floor(Math.min(...xs)) - 1, bitmap.width - 1), clamp(Math.floor(Math.min(...ys)) - 1, bitmap.height - 1)];
  const [across, down] = [clamp(Math.ceil(Math.max(...xs)) + 1, bitmap.width) - left, clamp(Math.ceil(Math.max(...ys)) + 1, bitmap.height) - top];
  if (across < 1 || down < 1) return false;
  // No finer than the drawing needs: a label of a large photo is drawn small.
  const fine = Math.min(1, (2 * height) / high);
  const [w, h] = [Math.max(1, Math.round(across * fine)), Math.max(1, Math.round(down * fine))];
  const part = new OffscreenCanvas(w, h).getContext("2d", {willReadFrequently: true})!;
  part.drawImage(bitmap, left, top, across, down, 0, 0, w, h);
  const flat = crop({width: w, height: h, channels: 4, data: part.getImageData(0, 0, w, h).data}, inBitmap.map(({x, y}) => ({x: ((x - left) * w) / across, y: ((y - top) * h) / down})), width, height);
  if (!flat) return false;
  const picture = new ImageData(width, height);
  for (let i = 0; i < width * height; i++) {
    for (let c = 0; c < 3; c++) picture.data[i * 4 + c] = flat.planes[c]![i]!;
    picture.data[i * 4 + 3] = 255;
  }
  applyAids(picture, aids);
  Object.assign(canvas, {width, height});
  canvas.getContext("2d")!.putImageData(picture, 0, 0);
  return true;
}

const clamp = (value: number, most: number) => Math.max(0, Math.min(most, value));

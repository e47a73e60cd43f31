// How dark, shiny or blurred a photo is: not needed to read it, only to say why it could not be read.
import {resized} from "../image/shrink.ts";
import type {Pixels} from "../reader.ts";

export interface Light {
  /** Brightness that 95 in 100 pixels stay below, 0 to 255. */
  readonly bright: number;
  /** Share of pixels that are blown out. */
  readonly blown: number;
  /** Steepest step from pixel to pixel, as a share of the contrast around it: about 0.5 for a sharp edge, small for a blurred one. */
  readonly sharp: number;
}

export function lightOf(image: Pixels): Light {
  const scale = Math.min(1, 640 / Math.max(image.width, image.height));
  const [width, height] = [Math.max(8, Math.round(image.width * scale)), Math.max(8, Math.round(image.height * scale))];
  const {planes} = resized(image, width, height);
  const grey = planes[0].map((red, i) => 0.299 * red + 0.587 * planes[1][i]! + 0.114 * planes[2][i]!);
  const sorted = grey.slice().sort();
  return {bright: sorted[Math.floor(sorted.length * 0.95)]!, blown: grey.reduce((sum, value) => sum + Number(value >= 250), 0) / grey.length, sharp: sharpness(grey, width, height)};
}

/** Of the patches with most contrast, how steep their steepest step is beside that contrast. */
function sharpness(grey: Float32Array, width: number, height: number): number {
  const patch = 16;
  const found: {contrast: number; step: number}[] = [];
  for (let top = 0; top + patch <= height; top += patch) {
    for (let left = 0; left + patch <= width; left += patch) {
      let [least, most, step] = [Infinity, -Infinity, 0];
      for (let y = top; y < top + patch - 1; y++) {
        for (let x = left; x < left + patch - 1; x++) {
          const value = grey[y * width + x]!;
          [least, most] = [Math.min(least, value), Math.max(most, value)];
          step = Math.max(step, Math.abs(grey[y * width + x + 1]! - value), Math.abs(grey[(y + 1) * width + x]! - value));
        }
      }
      found.push({contrast: most - least, step});
    }
  }
  const strong = found.sort((a, b) => b.contrast - a.contrast).slice(0, Math.max(4, Math.floor(found.length / 20))).filter(({contrast}) => contrast > 8);
  return strong.length === 0 ? 0 : strong.reduce((sum, {contrast, step}) => sum + step / contrast, 0) / strong.length;
}

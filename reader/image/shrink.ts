// Photos of any size made small enough to work on: every pixel counts, so that fine print fades rather than breaks.
import type {Pixels} from "../reader.ts";
import type {Planes} from "./crop.ts";

/**
 * A photo as three planes of the given size, each pixel the mean of what lies under it; smaller photos are stretched smoothly.
 * @cost one pass over the photo
 */
export function resized(image: Pixels, width: number, height: number): Planes {
  const across = spans(image.width, width);
  const down = spans(image.height, height);
  const {data, channels} = image;
  const planes: [Float32Array, Float32Array, Float32Array] = [new Float32Array(width * height), new Float32Array(width * height), new Float32Array(width * height)];
  const line = new Float32Array(width * 3);
  for (let y = 0; y < height; y++) {
    const {first, weights} = down[y]!;
    for (let j = 0; j < weights.length; j++) {
      rowOf(data, (first + j) * image.width * channels, channels, across, line);
      for (let x = 0, at = y * width; x < width; x++, at++) for (let c = 0; c < 3; c++) planes[c]![at]! += line[x * 3 + c]! * weights[j]!;
    }
  }
  return {width, height, planes};
}

interface Span {
  readonly first: number;
  readonly weights: readonly number[];
}

function rowOf(data: Pixels["data"], start: number, channels: number, across: readonly Span[], line: Float32Array): void {
  for (let x = 0; x < across.length; x++) {
    const {first, weights} = across[x]!;
    let [red, green, blue] = [0, 0, 0];
    for (let i = 0, at = start + first * channels; i < weights.length; i++, at += channels) {
      red += data[at]! * weights[i]!;
      green += data[at + 1]! * weights[i]!;
      blue += data[at + 2]! * weights[i]!;
    }
    line[x * 3] = red;
    line[x * 3 + 1] = green;
    line[x * 3 + 2] = blue;
  }
}

/** For every new pixel the old ones under it: a tent as wide as the step, at least one pixel to either side. */
function spans(from: number, to: number): Span[] {
  const step = from / to;
  const reach = Math.max(1, step);
  return Array.from({length: to}, (_, i) => {
    const centre = (i + 0.5) * step - 0.5;
    const first = Math.max(0, Math.ceil(centre - reach));
    const last = Math.min(from - 1, Math.floor(centre + reach));
    const weights = Array.from({length: last - first + 1}, (_unused, k) => Math.max(0, 1 - Math.abs(first + k - centre) / reach));
    const sum = weights.reduce((total, weight) => total + weight, 0);
    return sum > 0 ? {first, weights: weights.map((weight) => weight / sum)} : {first: Math.min(from - 1, Math.max(0, Math.round(centre))), weights: [1]};
  });
}

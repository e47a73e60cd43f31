// Aids for the eye on a crop: one colour alone, more contrast, even light, light and dark changed over. For looking at only; the reader is given the photo as it is.

export const channels = ["colours", "grey", "red", "green", "blue"] as const;

export interface Aids {
  readonly channel: (typeof channels)[number];
  /** The darkest becomes black, the lightest white. */
  readonly stretch: boolean;
  /** Each part of the crop gets its own contrast. */
  readonly even: boolean;
  readonly negative: boolean;
}

export const noAids: Aids = {channel: "colours", stretch: false, even: false, negative: false};

/** Pixels as a canvas holds them, four bytes each. */
export interface Shades {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** Changes a crop in place. */
export function applyAids(picture: Shades, {channel, stretch, even, negative}: Aids): void {
  if (channel !== "colours") toOneShade(picture.data, channel);
  if (even) evenOut(picture);
  if (stretch) stretchOut(picture.data);
  if (negative) for (let i = 0; i < picture.data.length; i++) if (i % 4 !== 3) picture.data[i] = 255 - picture.data[i]!;
}

/** How light a pixel looks; source: ITU-R BT.601, luma. */
const lightness = (data: Uint8ClampedArray, at: number) => 0.299 * data[at]! + 0.587 * data[at + 1]! + 0.114 * data[at + 2]!;

function toOneShade(data: Uint8ClampedArray, channel: Exclude<Aids["channel"], "colours">): void {
  const offset = channel === "grey" ? 0 : {red: 0, green: 1, blue: 2}[channel];
  for (let at = 0; at < data.length; at += 4) data[at] = data[at + 1] = data[at + 2] = channel === "grey" ? lightness(data, at) : data[at + offset]!;
}

/** Share of pixels at either end that may become plain black or white. */
const beyond = 0.01;

function stretchOut(data: Uint8ClampedArray): void {
  const counts = new Uint32Array(256);
  for (let at = 0; at < data.length; at += 4) counts[Math.round(lightness(data, at))]!++;
  const limit = (data.length / 4) * beyond;
  const edge = (from: number, step: number) => {
    let [sum, value] = [counts[from]!, from];
    while (sum <= limit && value + step >= 0 && value + step < 256) sum += counts[(value += step)]!;
    return value;
  };
  const [dark, light] = [edge(0, 1), edge(255, -1)];
  const scale = 255 / Math.max(8, light - dark);
  for (let i = 0; i < data.length; i++) if (i % 4 !== 3) data[i] = (data[i]! - dark) * scale;
}

/** Bins of the histogram of each part, its size in pixels, and how much of a part one bin may hold. */
const [bins, part, mostInBin] = [64, 40, 3 / 64];

// Contrast-limited adaptive histogram equalisation; source: Zuiderveld, Graphics Gems IV, 1994. Colours keep their proportion.
function evenOut({width, height, data}: Shades): void {
  const [across, down] = [Math.max(1, Math.round(width / part)), Math.max(1, Math.round(height / part))];
  const curves = Array.from({length: across * down}, (_, i) => curveOf(data, width, {
    left: Math.floor(((i % across) * width) / across), right: Math.floor((((i % across) + 1) * width) / across),
    top: Math.floor((Math.floor(i / across) * height) / down), bottom: Math.floor(((Math.floor(i / across) + 1) * height) / down),
  }));
  for (let y = 0; y < height; y++) {
    const fy = ((y + 0.5) * down) / height - 0.5;
    const [top, v] = [Math.max(0, Math.floor(fy)), Math.min(1, Math.max(0, fy - Math.floor(Math.max(0, fy))))];
    for (let x = 0; x < width; x++) {
      const fx = ((x + 0.5) * across) / width - 0.5;
      const [left, u] = [Math.max(0, Math.floor(fx)), Math.min(1, Math.max(0, fx - Math.floor(Math.max(0, fx))))];
      const [right, bottom] = [Math.min(across - 1, left + 1), Math.min(down - 1, top + 1)];
      const at = (y * width + x) * 4;
      const light = lightness(data, at);
      const bin = binOf(light);
      const upper = curves[top * across + left]![bin]! * (1 - u) + curves[top * across + right]![bin]! * u;
      const lower = curves[bottom * across + left]![bin]! * (1 - u) + curves[bottom * across + right]![bin]! * u;
      const scale = (upper * (1 - v) + lower * v) / Math.max(1, light);
      for (let c = 0; c < 3; c++) data[at + c] = data[at + c]! * scale;
    }
  }
}

const binOf = (light: number) => Math.min(bins - 1, Math.floor((light / 256) * bins));

function curveOf(data: Uint8ClampedArray, width: number, {left, right, top, bottom}: Readonly<Record<"left" | "right" | "top" | "bottom", number>>): Float32Array {
  const counts = new Float32Array(bins);
  for (let y = top; y < bottom; y++) for (let x = left; x < right; x++) counts[binOf(lightness(data, (y * width + x) * 4))]!++;
  const all = (right - left) * (bottom - top);
  let over = 0;
  for (let b = 0; b < bins; b++) {
    over += Math.max(0, counts[b]! - all * mostInBin);
    counts[b] = Math.min(counts[b]!, all * mostInBin);
  }
  let sum = 0;
  return counts.map((count) => (255 * (sum += count + over / bins)) / all);
}

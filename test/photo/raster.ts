// Blurs and smooth chance over planes of numbers, for made-up photos.
import type {Random} from "../simulate/random.ts";

/** Width × height numbers, row by row. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

export const plane = (width: number, height: number, values = new Float32Array(width * height)): Plane => ({width, height, values});

/** Softens by a bell of the given spread in pixels. */
export function softened(source: Plane, spread: number): Plane {
  if (spread <= 0.05) return source;
  const reach = Math.ceil(spread * 3);
  const bell = Array.from({length: 2 * reach + 1}, (_, i) => Math.exp(-((i - reach) ** 2) / (2 * spread * spread)));
  const sum = bell.reduce((total, value) => total + value, 0);
  return alongColumns(alongRows(source, bell, sum), bell, sum);
}

function alongRows({width, height, values}: Plane, bell: readonly number[], sum: number): Plane {
  const reach = (bell.length - 1) / 2;
  const out = plane(width, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let value = 0;
      for (let i = -reach; i <= reach; i++) value += bell[i + reach]! * values[y * width + Math.min(width - 1, Math.max(0, x + i))]!;
      out.values[y * width + x] = value / sum;
    }
  }
  return out;
}

function alongColumns({width, height, values}: Plane, bell: readonly number[], sum: number): Plane {
  const reach = (bell.length - 1) / 2;
  const out = plane(width, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let value = 0;
      for (let i = -reach; i <= reach; i++) value += bell[i + reach]! * values[Math.min(height - 1, Math.max(0, y + i)) * width + x]!;
      out.values[y * width + x] = value / sum;
    }
  }
  return out;
}

/** Smears along a direction, as a hand that moved. */
export function smeared(source: Plane, length: number, angle: number): Plane {
  const count = Math.round(length);
  if (count < 2) return source;
  const {width, height, values} = source;
  const out = plane(width, height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let value = 0;
      for (let i = 0; i < count; i++) {
        const t = i - (count - 1) / 2;
        const u = Math.min(width - 1, Math.max(0, Math.round(x + Math.cos(angle) * t)));
        const v = Math.min(height - 1, Math.max(0, Math.round(y + Math.sin(angle) * t)));
        value += values[v * width + u]!;
      }
      out.values[y * width + x] = value / count;
    }
  }
  return out;
}

/** Smooth chance of 0 to 1, with bumps about `cell` pixels wide. */
export function bumps(random: Random, width: number, height: number, cell: number): Plane {
  const across = Math.ceil(width / cell) + 2;
  const knots = Float32Array.from({length: across * (Math.ceil(height / cell) + 2)}, () => random.next());
  const out = plane(width, height);
  const ease = (t: number) => t * t * (3 - 2 * t);
  for (let y = 0; y < height; y++) {
    const [top, sy] = [Math.floor(y / cell), ease((y / cell) % 1)];
    for (let x = 0; x < width; x++) {
      const [left, sx] = [Math.floor(x / cell), ease((x / cell) % 1)];
      const at = top * across + left;
      const above = knots[at]! * (1 - sx) + knots[at + 1]! * sx;
      const below = knots[at + across]! * (1 - sx) + knots[at + across + 1]! * sx;
      out.values[y * width + x] = above * (1 - sy) + below * sy;
    }
  }
  return out;
}

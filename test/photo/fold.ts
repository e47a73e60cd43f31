// How a label lies: waves and creases that push its points about and shade it.
import type {Random} from "../simulate/random.ts";
import {between} from "./chance.ts";
import type {Wear} from "./level.ts";

export interface Lie {
  /** How far the point at x, y of the flat label is pushed, and how much lighter or darker it looks. */
  (x: number, y: number): {dx: number; dy: number; shade: number};
}

export function lieOf(random: Random, wear: Wear, width: number, height: number, capital: number): Lie {
  const creases = Array.from({length: random.whole(...(wear.creases as [number, number]))}, () => ({
    x: between(random, [0.1, 0.9]) * width, y: between(random, [0.1, 0.9]) * height, angle: between(random, [0, Math.PI]), wide: between(random, [0.5, 2]) * capital,
    push: between(random, wear.crease) * (random.happens(0.5) ? 1 : -1) * (capital / 16),
  }));
  const wave = {ax: between(random, wear.wave), ay: between(random, wear.wave), lx: between(random, [0.5, 1.4]) * width, ly: between(random, [0.5, 1.4]) * height, px: between(random, [0, 6]), py: between(random, [0, 6])};
  return (x, y) => {
    let dx = wave.ax * Math.sin((2 * Math.PI * y) / wave.ly + wave.px);
    let dy = wave.ay * Math.sin((2 * Math.PI * x) / wave.lx + wave.py);
    let shade = 0;
    for (const crease of creases) {
      const [nx, ny] = [Math.cos(crease.angle), Math.sin(crease.angle)];
      const away = ((x - crease.x) * nx + (y - crease.y) * ny) / crease.wide;
      const near = away * Math.exp(-away * away);
      dx += crease.push * near * 0.6 * nx;
      dy += crease.push * near * 0.6 * ny;
      shade += Math.sign(crease.push) * near * (Math.abs(crease.push) / 9);
    }
    return {dx, dy, shade};
  };
}

/** The point of the flat label that came to lie at x, y. */
export function flat(lie: Lie, x: number, y: number): {x: number; y: number; shade: number} {
  let at = {x, y, shade: 0};
  for (let i = 0; i < 4; i++) {
    const {dx, dy, shade} = lie(at.x, at.y);
    at = {x: x - dx, y: y - dy, shade};
  }
  return at;
}

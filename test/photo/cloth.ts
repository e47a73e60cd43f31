// Puts print on cloth: a weave, the colours of cloth and ink, and what years of washing left of it.
import type {Random} from "../simulate/random.ts";
import {between} from "./chance.ts";
import type {Wear} from "./level.ts";
import {bumps, plane, softened, type Plane} from "./raster.ts";

export type Colour = readonly [number, number, number];
/** Red, green and blue. */
export type Picture = readonly [Plane, Plane, Plane];

const light: readonly Colour[] = [[236, 232, 222], [245, 244, 240], [222, 212, 190], [230, 224, 200]];
const dark: readonly Colour[] = [[38, 42, 58], [30, 30, 32]];
const inks: readonly Colour[] = [[28, 28, 32], [32, 32, 36], [60, 32, 36], [34, 42, 84], [150, 46, 44]];

/** A worn label, flat; ink bleeds, fades in patches and breaks on the threads. */
export function onCloth(random: Random, ink: Plane, wear: Wear, capital: number): Picture {
  const {width, height} = ink;
  const print = softened(ink, between(random, wear.bleed)).values;
  const strength = between(random, [1, 1.5]);
  const patches = bumps(random, width, height, capital * between(random, [0.8, 3])).values;
  const fine = bumps(random, width, height, 2).values;
  const patchy = between(random, wear.patchy);
  const left = between(random, wear.ink);
  const depth = between(random, wear.weave);
  const weave = weaveOf(random, width, height);
  const isDark = random.happens(0.12);
  const cloth = random.pick(isDark ? dark : light);
  const colour: Colour = isDark ? [225, 222, 214] : random.pick(inks);
  const breaks = wear.slant < 5 ? 0.14 : 0.35;
  const picture: Picture = [plane(width, height), plane(width, height), plane(width, height)];
  for (let i = 0; i < print.length; i++) {
    const thread = weave[i]! + (fine[i]! - 0.5);
    const held = Math.min(1, Math.max(0, 1 + thread * breaks));
    const covered = Math.min(1, print[i]! * strength) * left * (1 - patchy * patches[i]!) * held * (1 - patchy * 0.5 * fine[i]!);
    for (let c = 0; c < 3; c++) picture[c]!.values[i] = (cloth[c]! * (1 - covered) + colour[c]! * covered) * (1 + thread * depth);
  }
  return picture;
}

/** Height of the threads, about -1 to 1: plain weave, twill or satin. */
function weaveOf(random: Random, width: number, height: number): Float32Array {
  const kind = random.pick(["plain", "satin", "twill"] as const);
  const period = between(random, [2.6, 5]);
  const phase = between(random, [0, 6]);
  const streak = bumps(random, width, height, 3).values;
  const turn = 2 * Math.PI;
  return Float32Array.from({length: width * height}, (_, i) => {
    const [x, y, shift] = [i % width, Math.floor(i / width), (streak[i]! - 0.5) * 1.5];
    if (kind === "plain") return Math.sin((turn * (x + shift)) / period + phase) * Math.sin((turn * (y + shift)) / period);
    if (kind === "twill") return Math.sin((turn * (x + y + shift)) / (period * 1.4));
    return 0.8 * Math.sin((turn * (y + shift * 2)) / period) + 0.6 * (streak[i]! - 0.5);
  });
}

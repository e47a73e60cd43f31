// Made-up photos for measuring readers: seeds for fitting and seeds for reporting never meet.
import {levels, type Level} from "../test/photo/level.ts";
import {makePhoto, type MadePhoto, type PhotoWish} from "../test/photo/make-photo.ts";

/** Settings and the reading map were chosen on the first, figures are reported of the second. */
export const firstSeed = {fit: 60_000, report: 900_000} as const;

/** So many photos of every level, in the order of the levels; the seed goes with the place, whatever the number. */
export async function* photosOf(kind: keyof typeof firstSeed, perLevel: number, more: Partial<PhotoWish> = {}): AsyncGenerator<MadePhoto> {
  for (const [l, level] of levels.entries()) for (let i = 0; i < perLevel; i++) yield makePhoto({...more, seed: firstSeed[kind] + i * levels.length + l, level});
}

export const byLevel = <T extends {readonly level: Level}>(all: readonly T[]): [Level, T[]][] => levels.map((level) => [level, all.filter((one) => one.level === level)]);

// How worn and badly photographed the made-up labels of each level are: ranges from least to most.

export type Level = "easy" | "medium" | "hard";
export const levels: readonly Level[] = ["easy", "medium", "hard"];

type Range = readonly [least: number, most: number];

export interface Wear {
  /** Height of a capital in pixels of the photo. */
  readonly capital: Range;
  /** How much of the ink is left, how patchy it is, and how far it bled, in pixels. */
  readonly ink: Range;
  readonly patchy: Range;
  readonly bleed: Range;
  /** Degrees, either way. */
  readonly slant: number;
  /** How far corners wander, as a share of the label. */
  readonly perspective: number;
  readonly wave: Range;
  readonly creases: Range;
  readonly crease: Range;
  /** How uneven the light is. */
  readonly light: Range;
  readonly blur: Range;
  readonly motion: Range;
  readonly noise: Range;
  readonly jpeg: Range;
  readonly weave: Range;
}

export const wear: Readonly<Record<Level, Wear>> = {
  easy: {
    capital: [20, 30], ink: [0.75, 0.95], patchy: [0, 0.2], bleed: [0.2, 0.6], slant: 3, perspective: 0.02, wave: [0, 2], creases: [0, 1], crease: [1, 3],
    light: [0.05, 0.2], blur: [0.4, 0.8], motion: [0, 0], noise: [1, 3], jpeg: [85, 92], weave: [0.02, 0.05],
  },
  medium: {
    capital: [14, 21], ink: [0.42, 0.68], patchy: [0.2, 0.45], bleed: [0.4, 1.1], slant: 8, perspective: 0.05, wave: [1, 4], creases: [1, 2], crease: [2, 6],
    light: [0.15, 0.4], blur: [0.6, 1.2], motion: [0, 2], noise: [3, 6], jpeg: [65, 85], weave: [0.04, 0.09],
  },
  hard: {
    capital: [12, 19], ink: [0.31, 0.55], patchy: [0.2, 0.55], bleed: [0.5, 1.3], slant: 15, perspective: 0.08, wave: [2, 6], creases: [2, 3], crease: [4, 9],
    light: [0.25, 0.55], blur: [0.7, 1.35], motion: [0, 2.5], noise: [3, 7], jpeg: [50, 75], weave: [0.05, 0.11],
  },
};

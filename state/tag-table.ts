// What makes a garment measure otherwise than its tag says, and how often: the written rule behind the odds. All of it common practice, no source.

/** Cloth as it came through its life, with how often. */
export const clothOdds = {kept: 0.55, shrunk: 0.35, stretched: 0.1} as const;
export type ClothLife = keyof typeof clothOdds;

/** Work on a garment, and how far it moves a measure, in percent, all of it alike likely. */
export interface Work {
  /** Of the rule for grades, where it names one. */
  readonly id: string;
  /** "a shortened hem" */
  readonly says: string;
  readonly odds: number;
  readonly low: number;
  readonly high: number;
}

export interface TagDimension {
  readonly point: string;
  readonly entry: "waist" | "inseam" | "neck";
  /** Percent of change to be expected of cloth, with its spread: lengthways cloth shrinks more than across. */
  readonly cloth: Readonly<Record<ClothLife, readonly [mean: number, spread: number]>>;
  readonly works: readonly Work[];
}

const lost = {id: "other-tag", says: "a tag of another garment, or one misread", odds: 0.02, low: -50, high: 60};

/** A chest on a tag is of the body and not of the garment (EN 13402-1: sizes name bodies), so it is not compared here. */
export const tagDimensions: readonly TagDimension[] = [
  {
    point: "waist", entry: "waist", cloth: {kept: [0.5, 1.8], shrunk: [-3, 1.6], stretched: [4, 2]},
    works: [{id: "waist-taken-in", says: "a waist taken in", odds: 0.08, low: -20, high: -4}, {id: "waist-let-out", says: "a waist let out", odds: 0.03, low: 3, high: 14}, lost],
  },
  {
    point: "inseam", entry: "inseam", cloth: {kept: [0, 1.3], shrunk: [-5, 2.4], stretched: [1, 1]},
    works: [{id: "shortened-hem", says: "a shortened hem", odds: 0.18, low: -35, high: -3}, {id: "let-down-hem", says: "a hem let down", odds: 0.015, low: 2, high: 10}, lost],
  },
  {point: "neck", entry: "neck", cloth: {kept: [0, 1.5], shrunk: [-3.5, 1.6], stretched: [1, 1]}, works: [{id: "moved-button", says: "a moved collar button", odds: 0.04, low: -8, high: 8}, lost]},
];

/** Work that the record names is taken to be there, a slip of the pen apart. */
export const recordedOdds = 0.97;

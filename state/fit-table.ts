// How much more than a body a garment measures when it fits: ease in millimetres, by kind of garment. Drafting practice from memory; common practice, no source.
import type {GarmentKind} from "./garment-kind.ts";
import type {BodyMeasure} from "./point-shape.ts";

/** Girths are too tight, close, good, easy or too wide; lengths and shoulders too short, short, right, long or too long. */
export type FitWay = "girth" | "length" | "width";

export const fitWords: Readonly<Record<FitWay, readonly [string, string, string, string, string]>> = {
  girth: ["too tight", "close", "good", "easy", "too wide"],
  length: ["too short", "short", "right", "long", "too long"],
  width: ["too narrow", "narrow", "right", "wide", "too wide"],
};

export interface EaseLine {
  readonly point: string;
  readonly body: BodyMeasure;
  readonly way: FitWay;
  /** Ease at which each word ends and the next begins. */
  readonly ends: readonly [number, number, number, number];
}

const leg: EaseLine = {point: "inseam", body: "inside-leg", way: "length", ends: [-60, -25, 25, 75]};
const side: EaseLine = {point: "outseam", body: "outside-leg", way: "length", ends: [-70, -30, 30, 85]};
const shoulder: EaseLine = {point: "shoulder", body: "shoulder", way: "width", ends: [-25, -10, 25, 55]};
const arm: EaseLine = {point: "sleeve", body: "arm", way: "length", ends: [-40, -15, 20, 45]};

export const easeTable: Readonly<Record<GarmentKind, readonly EaseLine[]>> = {
  trousers: [
    {point: "waist", body: "waist", way: "girth", ends: [-15, 5, 45, 90]}, {point: "hip", body: "hip", way: "girth", ends: [15, 40, 95, 170]}, {point: "thigh", body: "thigh", way: "girth", ends: [15, 45, 120, 210]}, leg, side,
  ],
  jacket: [{point: "chest", body: "chest", way: "girth", ends: [40, 80, 160, 250]}, {point: "waist", body: "waist", way: "girth", ends: [30, 90, 190, 300]}, shoulder, arm],
  shirt: [{point: "neck", body: "neck", way: "girth", ends: [0, 8, 25, 45]}, {point: "chest", body: "chest", way: "girth", ends: [20, 60, 140, 220]}, {point: "waist", body: "waist", way: "girth", ends: [20, 70, 180, 280]}, shoulder, arm],
  overalls: [
    {point: "waist", body: "waist", way: "girth", ends: [20, 60, 170, 270]}, {point: "hip", body: "hip", way: "girth", ends: [30, 70, 170, 270]}, {point: "thigh", body: "thigh", way: "girth", ends: [20, 60, 150, 240]}, leg, side,
  ],
  sweatshirt: [{point: "chest", body: "chest", way: "girth", ends: [0, 40, 130, 220]}, {...shoulder, ends: [-30, -12, 35, 80]}, arm],
};

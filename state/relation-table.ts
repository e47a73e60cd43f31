// How the measures of one garment hang together: weighted sums of what was laid, in millimetres, between two ends. Common practice, no source.
import type {GarmentKind} from "./garment-kind.ts";

export interface Relation {
  readonly id: string;
  /** How often each point counts. */
  readonly terms: Readonly<Record<string, number>>;
  readonly low: number;
  readonly high: number;
  /** What holds of most garments. */
  readonly says: string;
}

const any = Number.POSITIVE_INFINITY;

const leg: readonly Relation[] = [
  {id: "rise-inseam-outseam", terms: {inseam: 1, "front-rise": 1, outseam: -1}, low: -70, high: 70, says: "front rise and inseam together come to about the outseam"},
  {id: "outseam-longer", terms: {outseam: 1, inseam: -1}, low: 140, high: 420, says: "the outseam is longer than the inseam by about the rise"},
  {id: "hip-waist", terms: {hip: 1, waist: -1}, low: -30, high: 260, says: "the hip is wider than the waist"},
  {id: "thigh-hip", terms: {thigh: 1, hip: -0.75}, low: -any, high: 0, says: "a thigh laid flat is about half to two thirds of the hip"},
  {id: "hip-thigh", terms: {hip: 0.42, thigh: -1}, low: -any, high: 0, says: "a thigh laid flat is about half to two thirds of the hip"},
  {id: "knee-thigh", terms: {thigh: 1, knee: -1}, low: -10, high: any, says: "the knee is no wider than the thigh"},
  {id: "hem-thigh", terms: {thigh: 1.35, hem: -1}, low: 0, high: any, says: "even a wide flare is hardly wider than the thigh"},
];

const body: readonly Relation[] = [
  {id: "chest-shoulder", terms: {chest: 1, shoulder: -1}, low: -40, high: 230, says: "the chest laid flat is about as wide as the shoulders, or wider"},
  {id: "chest-hem", terms: {chest: 1, hem: -1}, low: -160, high: 260, says: "the hem is about as wide as the chest"},
  {id: "chest-waist", terms: {chest: 1, waist: -1}, low: -90, high: 220, says: "the waist is about as wide as the chest, or narrower"},
  {id: "sleeve-cuff", terms: {sleeve: 1, cuff: -1}, low: 30, high: any, says: "a sleeve is longer than its cuff is wide"},
];

export const relationTable: Readonly<Record<GarmentKind, readonly Relation[]>> = {
  trousers: [{id: "back-front-rise", terms: {"back-rise": 1, "front-rise": -1}, low: 0, high: 200, says: "the back rise is longer than the front rise"}, ...leg],
  jacket: body,
  shirt: [
    ...body,
    {id: "centre-sleeve", terms: {"centre-sleeve": 1, sleeve: -1, shoulder: -0.5}, low: -50, high: 60, says: "from the centre back it is half the shoulder and the sleeve"},
    {id: "chest-neck", terms: {chest: 2, neck: -2}, low: 120, high: any, says: "the chest all round is far wider than the collar"},
  ],
  overalls: leg,
  sweatshirt: body.filter(({terms}) => !("waist" in terms)),
};

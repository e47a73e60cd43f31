// Named places on the drawings: how far right of the middle and how far down, on a panel of 170 by 380. A pair lies on both sides alike.
import type {GarmentKind} from "./garment-kind.ts";
import type {Flaw} from "./model.ts";

export interface Place {
  readonly name: string;
  readonly sides: readonly Flaw["side"][];
  readonly x: number;
  readonly y: number;
  readonly pair: boolean;
}

type Line = readonly [name: string, sides: string, x: number, y: number];
const places = (lines: readonly Line[]): Place[] => lines.map(([name, sides, x, y]) => ({name, sides: sides.split(" ") as Flaw["side"][], x, y, pair: x !== 0}));

const legs: readonly Line[] = [["thigh", "front inside", 34, 180], ["knee", "front inside", 38, 250], ["shin", "front inside", 40, 300], ["hem", "front back inside", 40, 345], ["back of the thigh", "back", 34, 190], ["back of the knee", "back", 38, 250], ["calf", "back", 40, 300]];
const sleeves: readonly Line[] = [["shoulder", "front back inside", 44, 58], ["upper arm", "front inside", 56, 100], ["elbow", "back", 58, 130], ["forearm", "front back inside", 60, 165], ["cuff", "front back inside", 61, 204], ["side seam", "front back inside", 40, 190]];

export const placeTable: Readonly<Record<GarmentKind, readonly Place[]>> = {
  trousers: places([["waistband", "front back inside", 0, 42], ["hip", "front inside", 38, 90], ["fly", "front", 0, 90], ["pocket", "front", 34, 66], ["pocket bag", "inside", 30, 95], ["seat", "back", 0, 130], ["back pocket", "back", 27, 108], ["crotch", "front back inside", 0, 152], ...legs]),
  overalls: places([["bib", "front inside", 0, 120], ["strap", "front back", 28, 60], ["back", "back inside", 0, 128], ["waist", "front back inside", 0, 158], ["side opening", "front", 44, 170], ["pocket", "front", 36, 186], ["back pocket", "back", 27, 198], ["crotch", "front back inside", 0, 212], ...legs.map(([name, sides, x, y]): Line => [name, sides, x, name.includes("thigh") ? y + 45 : y + 15])]),
  jacket: places([["collar", "front back inside", 0, 46], ["chest", "front", 24, 82], ["chest pocket", "front", 20, 112], ["front edge", "front", 0, 170], ["front", "front inside", 24, 200], ["hem", "front back inside", 0, 254], ["yoke", "back", 0, 74], ["back", "back", 0, 160], ["lining", "inside", 0, 130], ...sleeves]),
  shirt: places([["collar", "front back inside", 0, 50], ["chest", "front", 24, 90], ["chest pocket", "front", 20, 114], ["button band", "front", 0, 170], ["front", "front inside", 24, 200], ["hem", "front back inside", 0, 270], ["yoke", "back", 0, 72], ["back", "back", 0, 160], ...sleeves]),
  sweatshirt: places([["neck", "front back inside", 0, 60], ["chest", "front", 0, 110], ["front", "front inside", 0, 190], ["hem", "front back inside", 0, 256], ["back", "back", 0, 150], ...sleeves]),
};

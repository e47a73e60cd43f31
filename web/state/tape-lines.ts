// Where a tape is laid on the drawings of garments: a line for each point of measure, on the sheet of front and back.
import type {GarmentKind} from "../../state/garment-kind.ts";

type Spot = readonly [x: number, y: number];

const leg = (crotch: number, hem: number) => ({
  thigh: [[27, crotch + 6], [82, crotch + 6]], knee: [[24, crotch + 94], [75, crotch + 94]], hem: [[22, hem + 6], [68, hem + 6]], inseam: [[89, crotch + 2], [103, hem]],
}) as const satisfies Readonly<Record<string, readonly Spot[]>>;

const arms = (shoulder: number, wrist: number) => ({
  shoulder: [[206, shoulder], [306, shoulder]], sleeve: [[315, shoulder], [333, wrist]], cuff: [[13, wrist + 7], [33, wrist + 12]],
}) as const satisfies Readonly<Record<string, readonly Spot[]>>;

const across = (left: number, right: number, y: number): readonly Spot[] => [[left, y], [right, y]];

export const tapeLines: Readonly<Record<GarmentKind, Readonly<Record<string, readonly Spot[]>>>> = {
  trousers: {...leg(150, 350), waist: across(40, 128, 27), hip: across(27, 141, 132), "front-rise": [[84, 148], [84, 34]], "back-rise": [[256, 148], [256, 34]], outseam: [[134, 34], [147, 96], [153, 350]]},
  overalls: {...leg(210, 360), "bib-width": across(58, 110, 84), "bib-height": [[84, 94], [84, 154]], waist: across(36, 132, 162), hip: across(33, 135, 200), "front-rise": [[90, 208], [90, 158]], outseam: [[139, 156], [153, 360]]},
  jacket: {...arms(55, 200), chest: across(42, 126, 134), waist: across(42, 126, 190), hem: across(42, 126, 269), length: [[256, 41], [256, 262]]},
  shirt: {...arms(57, 210), neck: [[60, 44], [70, 34], [98, 34], [108, 44]], chest: across(44, 124, 138), waist: across(44, 124, 190), hem: across(44, 124, 288), "centre-sleeve": [[253, 46], [198, 60], [180, 210]], length: [[256, 43], [256, 281]]},
  sweatshirt: {...arms(61, 214), chest: across(44, 124, 140), hem: across(44, 124, 269), neck: across(62, 106, 46), length: [[256, 58], [256, 262]]},
};

/** The middle of a line, where its name stands. */
export function middleOf(line: readonly Spot[]): Spot {
  const at = (line.length - 1) / 2;
  const [a, b] = [line[Math.floor(at)]!, line[Math.ceil(at)]!];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

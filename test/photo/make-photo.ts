// A made-up photo of a made-up worn label, with the truth about what is printed where; the same seed gives the same photo.
import sharp from "sharp";
import type {Corner, Quad} from "../../reader/model.ts";
import {project, projection, rectangle} from "../../reader/image/plane.ts";
import type {Pixels} from "../../reader/reader.ts";
import {seeded, type Random} from "../simulate/random.ts";
import {bell, between, eitherWay} from "./chance.ts";
import {onCloth, type Colour, type Picture} from "./cloth.ts";
import {flat, lieOf, type Lie} from "./fold.ts";
import type {Printing} from "./fonts.ts";
import {wear, type Level, type Wear} from "./level.ts";
import {printRows, type Box} from "./print.ts";
import {bumps, plane, smeared, softened, type Plane} from "./raster.ts";
import {makeRows, type MadeRow, type RowKind} from "./rows.ts";

export interface TrueRow {
  readonly kind: RowKind;
  readonly text: string;
  readonly printing: Printing;
  readonly quad: Quad;
}

export interface MadePhoto {
  readonly level: Level;
  readonly width: number;
  readonly height: number;
  /** As a camera writes it. */
  readonly jpeg: Uint8Array;
  /** The four corners of the label. */
  readonly label: Quad;
  readonly rows: readonly TrueRow[];
}

export interface PhotoWish {
  readonly seed: number;
  readonly level: Level;
  /** Left out: drawn. */
  readonly rows?: readonly MadeRow[];
  /** Degrees clockwise by which the label lies turned, beside its slant. Default 0. */
  readonly turn?: number;
  /** Times the photo is larger than its label on each side. Default: the label fills it. */
  readonly around?: number;
}

/** Makes a photo. */
export async function makePhoto({seed, level, rows, turn = 0, around = 1}: PhotoWish): Promise<MadePhoto> {
  const random = seeded(seed);
  const worn = wear[level];
  const made = rows ?? makeRows(random);
  const capital = between(random, worn.capital);
  const print = printRows(random, made, capital);
  const picture = onCloth(random, print.ink, worn, capital);
  const {width: wide, height: high} = print.ink;
  const lie = lieOf(random, worn, wide, high, capital);
  const {corners, width, height} = placed(random, worn, wide, high, capital, turn, around);
  const taken = takePicture(random, worn, picture, lie, corners, width, height);
  const jpeg = await sharp(taken.data, {raw: {width, height, channels: 3}}).jpeg({quality: Math.round(between(random, worn.jpeg)), chromaSubsampling: "4:2:0"}).toBuffer();
  const seen = projection(rectangle(wide, high), corners)!;
  const inPhoto = (x: number, y: number): Corner => {
    const {dx, dy} = lie(x, y);
    return project(seen, x + dx, y + dy);
  };
  const quadOf = ([left, top, right, bottom]: Box): Quad => [inPhoto(left, top), inPhoto(right, top), inPhoto(right, bottom), inPhoto(left, bottom)];
  return {level, width, height, jpeg, label: corners, rows: print.lines.map(({kind, text, face, box}) => ({kind, text, printing: face.printing, quad: quadOf(box)}))};
}

/** The bytes of a made-up photo opened again. */
export async function pixelsOf(jpeg: Uint8Array): Promise<Pixels> {
  const {data, info} = await sharp(jpeg).removeAlpha().raw().toBuffer({resolveWithObject: true});
  return {width: info.width, height: info.height, channels: 3, data};
}

/** Where the label's corners come to lie, and how large the photo is. */
function placed(random: Random, worn: Wear, wide: number, high: number, capital: number, turn: number, around: number): {corners: Quad; width: number; height: number} {
  const angle = ((eitherWay(random, worn.slant) + turn) * Math.PI) / 180;
  const wander = worn.perspective * Math.max(wide, high);
  const loose = rectangle(wide, high).map(({x, y}) => {
    const [u, v] = [x - wide / 2, y - high / 2];
    return {x: u * Math.cos(angle) - v * Math.sin(angle) + eitherWay(random, wander), y: u * Math.sin(angle) + v * Math.cos(angle) + eitherWay(random, wander)};
  });
  const margin = capital * 2.5;
  const [xs, ys] = [loose.map(({x}) => x), loose.map(({y}) => y)];
  const [width, height] = [Math.max(...xs) - Math.min(...xs) + 2 * margin, Math.max(...ys) - Math.min(...ys) + 2 * margin];
  const [whole, tall] = [Math.round(width * around), Math.round(height * around)];
  const [dx, dy] = [(whole - width) * (around > 1 ? random.next() : 0), (tall - height) * (around > 1 ? random.next() : 0)];
  return {corners: loose.map(({x, y}) => ({x: x - Math.min(...xs) + margin + dx, y: y - Math.min(...ys) + margin + dy})), width: whole, height: tall};
}

const tables: readonly Colour[] = [[58, 72, 104], [90, 96, 110], [120, 96, 70], [44, 44, 48]];

/** Light, lens and sensor. */
function takePicture(random: Random, worn: Wear, label: Picture, lie: Lie, corners: Quad, width: number, height: number): {data: Buffer} {
  const {width: wide, height: high} = label[0];
  const back = projection(corners, rectangle(wide, high))!;
  const table = random.pick(tables);
  const grain = bumps(random, width, height, 3).values;
  const light = lightOf(random, worn, width, height);
  const cast = [between(random, [0.94, 1.06]), 1, between(random, [0.9, 1.06])];
  const seen: [Plane, Plane, Plane] = [plane(width, height), plane(width, height), plane(width, height)];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const loose = project(back, x, y);
      const near = loose.x > -20 && loose.y > -20 && loose.x < wide + 20 && loose.y < high + 20;
      const at = near ? flat(lie, loose.x, loose.y) : {...loose, shade: 0};
      const bright = light(x, y, at.shade);
      const on = at.x >= 0 && at.y >= 0 && at.x < wide - 1 && at.y < high - 1;
      for (let c = 0; c < 3; c++) seen[c]!.values[i] = (on ? sample(label[c]!, at.x, at.y) : table[c]! * (0.8 + 0.4 * grain[i]!)) * bright * cast[c]!;
    }
  }
  const [blur, motion, direction, noise] = [between(random, worn.blur), between(random, worn.motion), between(random, [0, Math.PI]), between(random, worn.noise)];
  const data = Buffer.alloc(width * height * 3);
  for (let c = 0; c < 3; c++) {
    const {values} = smeared(softened(seen[c]!, blur), motion, direction);
    for (let i = 0; i < values.length; i++) data[i * 3 + c] = Math.max(0, Math.min(255, Math.round(values[i]! + bell(random) * noise)));
  }
  return {data};
}

/** How bright each point of the photo is: a slope, a pool of light, slow bumps, and the shade of creases. */
function lightOf(random: Random, worn: Wear, width: number, height: number): (x: number, y: number, shade: number) => number {
  const [angle, strength, px, py] = [between(random, [0, 6.28]), between(random, worn.light), between(random, [0, width]), between(random, [0, height])];
  const slow = bumps(random, width, height, Math.max(width, height) / 3).values;
  const exposure = between(random, [0.8, 1.05]);
  const size = Math.hypot(width, height);
  return (x, y, shade) => {
    const slope = (((x - width / 2) * Math.cos(angle) + (y - height / 2) * Math.sin(angle)) / (size / 2)) * 0.7;
    const pool = 0.5 * Math.min(1, Math.hypot(x - px, y - py) / size);
    return exposure * (1 + strength * (slope - pool + 0.6 * (slow[y * width + x]! - 0.5)) + shade * 0.35);
  };
}

function sample({width, values}: Plane, x: number, y: number): number {
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const [fx, fy, at] = [x - left, y - top, top * width + left];
  return (values[at]! * (1 - fx) + values[at + 1]! * fx) * (1 - fy) + (values[at + width]! * (1 - fx) + values[at + width + 1]! * fx) * fy;
}

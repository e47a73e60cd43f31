// Reads one line: cut out with room around it, laid flat, shown to the recogniser once or, in doubt, several times.
import {openRow} from "../ctc/open-row.ts";
import {cutDown, type Alphabet, type Table} from "../ctc/table.ts";
import {crop, type Planes} from "../image/crop.ts";
import {grown, sizeOf} from "../image/plane.ts";
import type {Quad} from "../model.ts";
import type {LineOptions, OpenRow, Pixels} from "../reader.ts";
import type {Session} from "./session.ts";

/** One way to cut a line out: room at its ends and above and below as shares of its height, and how much it is drawn out. */
interface Look {
  readonly sideways: number;
  readonly upright: number;
  readonly stretch: number;
}

/** Measured, docs/decisions/0019: the recogniser wants room, and letters a little narrower than they are. */
const looks: readonly Look[] = [
  {sideways: 0.25, upright: 0.3, stretch: 0.85},
  {sideways: 0.2, upright: 0.2, stretch: 0.9},
  {sideways: 0.35, upright: 0.42, stretch: 1},
];
/** A best reading less likely than this is looked at again, but not one that is hopeless. */
const doubtful = 0.75;
const hopeless = 0.01;
/** Where less than this of what the recogniser says is in the alphabet of labels, there is no print: cloth, a seam, noise. */
const leastKnown = 0.25;
const lineHeight = 48;
const longestLine = 1600;

export async function readLine(reader: Session, alphabet: Alphabet, image: Pixels, quad: Quad, {looks: wanted = "doubt"}: LineOptions = {}): Promise<OpenRow> {
  const look = async (way: Look): Promise<Table[]> => {
    const picture = cutOut(image, quad, way);
    return picture === null ? [] : [await tableOf(reader, alphabet, picture, way)];
  };
  const first = await look(looks[0]!);
  if (first.length === 0 || first[0]!.known < leastKnown) return nothing(quad);
  const once = openRow(first, alphabet, quad);
  const sure = once.row.strings[0]?.p ?? 0;
  const number = wanted === "doubt" ? (sure < doubtful && sure > hopeless ? looks.length : 1) : Math.min(looks.length, Math.max(1, wanted));
  if (number === 1) return once;
  const more = [...first];
  for (const way of looks.slice(1, number)) more.push(...(await look(way)));
  return openRow(more, alphabet, quad);
}

const nothing = (quad: Quad): OpenRow => ({row: {quad, best: "", places: [], strings: [], none: 1, mass: 0}, score: () => 0});

function cutOut(image: Pixels, quad: Quad, {sideways, upright, stretch}: Look): Planes | null {
  const {width, height} = sizeOf(quad);
  if (!(width >= 1 && height >= 1)) return null;
  const room = grown(quad, sideways, upright);
  const shape = sizeOf(room);
  const long = Math.round((shape.width / shape.height) * lineHeight * stretch);
  return crop(image, room, Math.max(16, Math.min(longestLine, long)), lineHeight);
}

/** Shows a line to the recogniser: blue first, from -1 to 1, its width filled up to a multiple of eight. */
async function tableOf(reader: Session, alphabet: Alphabet, {width, height, planes}: Planes, {upright, stretch}: Look): Promise<Table> {
  const wide = Math.ceil(width / 8) * 8;
  const data = new Float32Array(3 * height * wide);
  for (let c = 0; c < 3; c++) {
    const plane = planes[2 - c]!;
    for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data[(c * height + y) * wide + x] = plane[y * width + x]! / 127.5 - 1;
  }
  const {data: raw, dims} = await reader.run(data, [1, 3, height, wide]);
  const steps = dims[1]!;
  return cutDown(raw, steps, dims[2]!, alphabet, (wide / steps / lineHeight / stretch) * (1 + 2 * upright));
}

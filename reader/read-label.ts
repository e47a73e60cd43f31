// A photo to the rows of its label with honest doubt, or advice when nothing can be read.
import type {Problem} from "../engine/problem.ts";
import {projected, sizeOf} from "./image/plane.ts";
import {adviceFor} from "./label/advice.ts";
import {commonAngle, readAlong, turnFor} from "./label/direction.ts";
import {joinPieces} from "./label/join.ts";
import {outlineAround, straightened} from "./label/outline.ts";
import {sureness} from "./label/sureness.ts";
import {quadKey, rightWayUp} from "./label/way-up.ts";
import {defaultMap, mapRow} from "./map.ts";
import type {LabelReading, Quad, ReadingMap} from "./model.ts";
import * as say from "./problems.ts";
import type {LabelReader, OpenRow, Pixels} from "./reader.ts";

export interface LabelOptions {
  /** The label in the photo; null: the whole photo; left out: proposed from the lines found. */
  readonly outline?: Quad | null;
  /** Degrees clockwise that make the label upright; left out: found out. */
  readonly turn?: LabelReading["turn"];
  /** Left out: the fitted map that is shipped. */
  readonly map?: ReadingMap;
  /** Told before each row and at the end: how many rows are read, and of how many. */
  readonly onRow?: (done: number, of: number) => void;
}

/** A label reading, but for the photo's hash, which the reader does not know. */
export type ReadLabel = Omit<LabelReading, "photo">;

export interface LabelAnswer {
  /** null when nothing can be read; `problems` then says why and what to do. */
  readonly reading: ReadLabel | null;
  /** One a row, in the order of the rows: chance of exactly this text, as OpenRow.score. */
  readonly scores: readonly ((text: string) => number)[];
  /** Why nothing can be read, or advice for a better photo beside what could be. */
  readonly problems: readonly Problem[];
}

const mostRows = 40;
const fewestPixels = 24;
const mostMegapixels = 120;
/** A row is kept when its listed readings together are at least this likely, and its characters on average: below, it is cloth, a seam or a shadow. */
const leastTrust = 0.15;
const leastSure = 0.5;
/** A photo shows print when one row of so many characters is read so surely a character; else it is noise, a ring or a stud, unless the owner drew the outline. */
const printLength = 2;
const printSure = 0.72;

/**
 * Reads the label in an upright photo: its outline, its turn, and its rows from the top down.
 * @edge  photos without anything like print, too dark, too small or enormous ones give a null reading and advice, never a guess
 * @cost  one pass of the finder, a second one when the label is small in the photo, one to three passes of the recogniser a row
 */
export async function readLabel(reader: LabelReader, image: Pixels, {outline, turn, map = defaultMap, onRow}: LabelOptions = {}): Promise<LabelAnswer> {
  const refused = cannotWorkOn(image);
  if (refused) return {reading: null, scores: [], problems: [refused]};
  const lines = asRows(await linesOf(reader, image, outline));
  const {angle, known} = await rightWayUp(reader, image, lines, turn);
  const upright = lines.map((quad) => readAlong(quad, angle)).sort((a, b) => downAlong(a, angle) - downAlong(b, angle)).slice(0, mostRows);
  const open: OpenRow[] = [];
  for (const quad of upright) {
    onRow?.(open.length, upright.length);
    open.push(known.get(quadKey(quad)) ?? (await reader.readLine(image, quad)));
  }
  onRow?.(open.length, open.length);
  const trusted = open.map(({row, score}) => ({read: mapRow(row, map), score})).filter(({read}) => 1 - read.none >= leastTrust && sureness(read) >= leastSure);
  const mapped = outline || trusted.some(({read}) => read.best.replace(/ /g, "").length >= printLength && sureness(read) >= printSure) ? trusted : [];
  const advice = adviceFor(image, upright, mapped.map(({read}) => read));
  if (mapped.length === 0) return {reading: null, scores: [], problems: advice};
  const around = outline === undefined ? outlineAround(mapped.map(({read}) => read.quad), angle) : outline;
  return {
    reading: {reader: reader.name, size: {width: image.width, height: image.height}, outline: around, turn: turn ?? turnFor(angle), map, rows: mapped.map(({read}) => ({read, settled: null}))},
    scores: mapped.map(({score}) => score),
    problems: advice,
  };
}

/** The same reading in pixels of a photo that is so many times larger. */
export function scaledReading(reading: ReadLabel, by: number): ReadLabel {
  const scaled = (quad: Quad): Quad => quad.map(({x, y}) => ({x: x * by, y: y * by}));
  const {size, outline, rows} = reading;
  return {
    ...reading,
    ...(size ? {size: {width: Math.round(size.width * by), height: Math.round(size.height * by)}} : {}),
    outline: outline && scaled(outline),
    rows: rows.map(({read, settled}) => ({read: {...read, quad: scaled(read.quad)}, settled})),
  };
}

function cannotWorkOn({width, height, channels, data}: Pixels): Problem | null {
  if (data.length !== width * height * channels) throw new Error(`a picture of ${width} × ${height} × ${channels} comes with ${data.length} bytes`);
  if (Math.min(width, height) < fewestPixels) return say.tooFewPixels(width, height);
  if (width * height > mostMegapixels * 1e6) return say.tooLarge(Math.round((width * height) / 1e6), mostMegapixels);
  return null;
}

function asRows(quads: readonly Quad[]): Quad[] {
  const angle = commonAngle(quads);
  return joinPieces(quads.map((quad) => readAlong(quad, angle)));
}

/** Lines within the outline, or where there seem to be some: a label that is small in its photo is looked at again by itself. */
async function linesOf(reader: LabelReader, image: Pixels, outline: Quad | null | undefined): Promise<Quad[]> {
  if (outline) return within(reader, image, outline);
  const lines = (await reader.findLines(image)).map(({quad}) => quad);
  const around = outline === null || lines.length === 0 ? null : outlineAround(lines, commonAngle(lines));
  if (around === null) return lines;
  const {width, height} = sizeOf(around);
  const small = Math.max(image.width, image.height) > 1200 && width * height < image.width * image.height * 0.5;
  if (!small) return lines;
  const again = await within(reader, image, around);
  return again.length >= lines.length ? again : lines;
}

async function within(reader: LabelReader, image: Pixels, outline: Quad): Promise<Quad[]> {
  const flat = straightened(image, outline);
  if (flat === null) return [];
  return (await reader.findLines(flat.pixels)).map(({quad}) => projected(flat.back, quad));
}

const downAlong = (quad: Quad, angle: number) => {
  const [x, y] = [quad.reduce((sum, corner) => sum + corner.x, 0), quad.reduce((sum, corner) => sum + corner.y, 0)];
  return y * Math.cos((angle * Math.PI) / 180) - x * Math.sin((angle * Math.PI) / 180);
};

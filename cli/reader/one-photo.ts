// One photo from its path to what is told of it: bytes, pixels, rows, marks, and a finding when asked for.
import {createHash} from "node:crypto";
import {readFileSync} from "node:fs";
import type {Finding, Garment, Problem} from "../../engine/index.ts";
import {labelGarment} from "../../commands/reading/date-reading.ts";
import {readPhoto, whatItSays, type ReadingSays} from "../../commands/reading/read-photo.ts";
import {oneOrSeveral} from "../../commands/write-garment.ts";
import type {World} from "../../commands/world.ts";
import type {LabelReading} from "../../reader/model.ts";
import {openPhoto} from "../../reader/node.ts";
import {scaledReading} from "../../reader/read-label.ts";
import type {LabelReader} from "../../reader/reader.ts";
import {notOpened} from "../problems.ts";
import type {ReadFlags} from "./flags.ts";

export interface OnePhoto {
  readonly path: string;
  readonly reading: LabelReading | null;
  readonly problems: readonly Problem[];
  /** Null when nothing could be read. */
  readonly says: ReadingSays | null;
  readonly garment: Garment | null;
  /** Null unless asked for and possible. */
  readonly finding: Finding | null;
}

export const makersOf = ({maker}: Pick<ReadFlags, "maker">): string[] => (maker === undefined ? [] : [oneOrSeveral(maker)].flat());

/** Reads one photo; whatever is wrong with it is told as problems. */
export async function readOne(path: string, reader: LabelReader, world: World, flags: ReadFlags): Promise<OnePhoto> {
  const nothing = (problems: readonly Problem[]): OnePhoto => ({path, reading: null, problems: problems.map((problem) => ({...problem, at: path})), says: null, garment: null, finding: null});
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    return nothing([notOpened(path, (error as NodeJS.ErrnoException).code ?? String(error))]);
  }
  const {photo, problems: notPhoto} = await openPhoto(bytes);
  if (!photo) return nothing(notPhoto);
  const makers = makersOf(flags);
  const {reading: read, problems} = await readPhoto(reader, photo.pixels, {makers, label: flags.label ?? null, ...(flags.turn === undefined ? {} : {turn: Number(flags.turn) as LabelReading["turn"]})}, world);
  if (!read) return nothing(problems);
  const reading: LabelReading = {photo: createHash("sha256").update(bytes).digest("hex"), ...scaledReading(read, photo.width / photo.pixels.width)};
  const says = whatItSays(reading, world, {makers, kinds: flags.label === undefined && makers.length > 0});
  const garment = labelGarment(says.rows, {name: path.slice(-100), ...(flags.maker === undefined ? {} : {maker: oneOrSeveral(flags.maker)}), ...(flags.label === undefined ? {} : {label: flags.label})});
  const examined = flags.date && says.rows.length > 0 ? world.examiner().examine(garment) : null;
  return {path, reading, problems: [...problems, ...(examined?.problems ?? [])].map((problem) => ({...problem, at: `${path} ${problem.at}`})), says, garment, finding: examined?.finding ?? null};
}

// One photo of a label to everything that is known of it: its rows with doubt, widened by the makers' row grammar, marks and label kinds that it suggests.
import type {Problem, RowText} from "../../engine/index.ts";
import {mapRow, unmapRow, defaultMap} from "../../reader/map.ts";
import type {LabelReading, Quad, ReadingMap} from "../../reader/model.ts";
import {readLabel, type LabelAnswer, type ReadLabel} from "../../reader/read-label.ts";
import type {LabelReader, Pixels} from "../../reader/reader.ts";
import {rowSeen} from "../../reader/row-seen.ts";
import type {World} from "../world.ts";
import {codeRows} from "./code-rows.ts";
import {joinRows} from "./join-rows.ts";
import {suggestKinds, type KindOdds} from "./suggest-kinds.ts";
import {suggestMarks} from "./suggest-marks.ts";
import {widen} from "./widen.ts";
import type {Suggestion} from "./words/suggestion.ts";

export interface PhotoOptions {
  readonly outline?: Quad | null;
  readonly turn?: LabelReading["turn"];
  readonly map?: ReadingMap;
  /** Ids of possible makers' books, whose row grammar proposes readings. */
  readonly makers?: readonly string[];
  /** Label kind, when known. */
  readonly label?: string | null;
  readonly onRow?: (done: number, of: number) => void;
}

export interface PhotoRead {
  /** Null when nothing can be read; the problems then say why and what to do. */
  readonly reading: ReadLabel | null;
  readonly problems: readonly Problem[];
}

/** What a reading says beside its characters. */
export interface ReadingSays {
  /** Rows of codes, for the engine. */
  readonly rows: readonly RowText[];
  readonly marks: readonly Suggestion[];
  readonly kinds: readonly KindOdds[];
}

/** Reads a photo and asks the reader once more for what the makers' labels can print. */
export async function readPhoto(reader: LabelReader, pixels: Pixels, {makers = [], label = null, ...options}: PhotoOptions, {books}: Pick<World, "books">): Promise<PhotoRead> {
  const {reading, scores, problems} = await readLabel(reader, pixels, options);
  return {reading: reading && widened(reading, scores, books.filter(({book}) => makers.includes(book)), label), problems};
}

/**
 * A reading whose torn rows are whole again, and whose rows of codes hold also what the makers' labels can print, by the reader's exact scores.
 * @param label  the label kind when known; its layout and schemes alone are then asked
 */
export function widened(reading: ReadLabel, scores: LabelAnswer["scores"], makers: Parameters<typeof widen>[2], label: string | null): ReadLabel {
  const map = reading.map ?? defaultMap;
  const rows = joinRows(reading.rows.map(({read}, i) => ({row: unmapRow(read, map), score: scores[i]!})));
  if (makers.length === 0 && rows.length === reading.rows.length) return reading;
  const codes = new Set(codeRows(rows.map(({row}) => row.best)));
  const options = label === null ? {} : {kinds: [label]};
  return {...reading, rows: rows.map(({row, score}, i) => ({settled: null, read: mapRow(codes.has(i) ? widen(row, score, makers, options) : row, map)}))};
}

/** The rows, marks and label kinds that a reading gives, with what its owner settled. */
export function whatItSays(reading: Pick<LabelReading, "rows">, world: World, {makers = [], kinds = false}: {readonly makers?: readonly string[]; /** Whether label kinds are weighed, which takes a while. */ readonly kinds?: boolean} = {}): ReadingSays {
  const texts = reading.rows.map(({read, settled}) => (settled?.left ? "" : (settled?.text ?? read.best)));
  const rows = codeRows(texts).flatMap((i) => rowSeen(reading.rows[i]!.read, reading.rows[i]!.settled) ?? []);
  return {rows, marks: suggestMarks(texts, world, {makers}), kinds: kinds ? suggestKinds([...texts.filter((_, i) => !codeRows(texts).includes(i)), ...rows], world, makers.length > 0 ? {makers} : {}) : []};
}

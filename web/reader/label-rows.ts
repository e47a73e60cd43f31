// Which row of the slip was read from which photo, and what becomes of both when a photo is read or its owner settles something.
import type {Garment, RowText} from "../../engine/index.ts";
import {codeRows} from "../../commands/reading/code-rows.ts";
import {centreOf, within} from "../../reader/image/plane.ts";
import type {LabelReading, ReadRow, SettledRow} from "../../reader/model.ts";
import {rowSeen, type RowSide} from "../../reader/row-seen.ts";
import type {Content} from "../../store/model.ts";
import {same} from "../offline/merge.ts";

/** A row of one of the photos that were read. */
export interface RowPlace {
  readonly label: number;
  readonly row: number;
}

/** A row of the slip; `from` is null when it was typed. */
export interface SlipRow {
  readonly seen: RowText;
  readonly from: RowPlace | null;
}

/** More rows than this the slip does not take. */
export const mostRows = 12;

/** Readings that weigh less than this part of the likeliest are told as none of them: many hardly possible ones would hold up the verdict. Source: own choice. */
const leastReading = 0.002;
const mostReadings = 40;

/** The row of a photo as the engine is given it on this screen; null when it is left out, or nothing is read in it. */
export function rowOf(read: ReadRow, settled: SettledRow | null, at?: RowSide): RowText | null {
  const seen = rowSeen(read, settled, at);
  if (seen === null || !("readings" in seen)) return seen;
  const readings = seen.readings.filter(({weight}, i) => i < mostReadings && weight >= seen.readings[0]!.weight * leastReading);
  const lost = seen.readings.slice(readings.length).reduce((sum, {weight}) => sum + weight, 0);
  return {...seen, readings, none: Math.min(1, seen.none + lost)};
}

/** The rows of the slip, each with the row of a photo it was read from: the one that says the same. */
export function slipRows({garment, labels}: Content): SlipRow[] {
  const open = labels.flatMap(({rows}, label) => rows.map(({read, settled}, row) => ({label, row, seen: rowOf(read, settled), whole: rowSeen(read, settled)})));
  return (garment.saw.rows ?? []).map((seen) => {
    const i = typeof seen === "string" ? -1 : open.findIndex((one) => same(withoutSide(seen), one.seen) || same(withoutSide(seen), one.whole));
    const [found] = i === -1 ? [] : open.splice(i, 1);
    return {seen, from: found ? {label: found.label, row: found.row} : null};
  });
}

/** The rows of the photos that do not stand on the slip, whether their owner left them out or they are words. */
export function rowsBeside(content: Content): RowPlace[] {
  const there = slipRows(content).map(({from}) => from);
  return content.labels.flatMap(({rows}, label) => rows.map((_, row) => ({label, row}))).filter(({label, row}) => !there.some((from) => from?.label === label && from.row === row));
}

/**
 * The garment with a photo read: its rows of figures stand on the slip.
 * A photo that was read before gives its place to the new reading, and what was settled stays with rows that stand where they stood.
 * @param others  what becomes of rows of other origin: they stay, or the reading takes their place
 */
export function withReading(content: Content, fresh: LabelReading, others: "stay" | "go"): Content {
  const before = content.labels.find(({photo}) => photo === fresh.photo);
  const reading = before ? {...fresh, rows: fresh.rows.map((row) => ({...row, settled: settledBefore(row.read, before)}))} : fresh;
  const slip = slipRows(content);
  const isOld = ({from}: SlipRow) => from !== null && content.labels[from.label] === before;
  const first = slip.findIndex(isOld);
  const kept = others === "go" ? [] : slip.filter((row) => !isOld(row) && !(typeof row.seen === "string" && row.seen.trim() === "")).map(({seen}) => seen);
  const at = first === -1 || others === "go" ? kept.length : slip.slice(0, first).filter((row) => !isOld(row)).length;
  const codes = new Set(codeRows(reading.rows.map(({read}) => read.best)));
  const own = reading.rows.filter(({settled}, i) => settled !== null || codes.has(i)).flatMap(({read, settled}) => rowOf(read, settled) ?? []);
  const rows = [...kept.slice(0, at), ...own.slice(0, Math.max(0, mostRows - kept.length)), ...kept.slice(at)];
  const labels = others === "go" ? [reading] : before ? content.labels.map((one) => (one === before ? reading : one)) : [...content.labels, reading];
  return {...content, labels, garment: withRows(content.garment, rows)};
}

/** The garment with a row of a photo settled otherwise; null: as read. A row left out leaves the slip, and comes back to where it stood. */
export function withSettled(content: Content, place: RowPlace, settled: SettledRow | null): Content {
  const slip = slipRows(content);
  const at = slip.findIndex(({from}) => from?.label === place.label && from.row === place.row);
  const {read} = content.labels[place.label]!.rows[place.row]!;
  const seen = rowOf(read, settled, at === -1 ? undefined : sideOf(slip[at]!.seen));
  const rows = slip.map((row) => row.seen);
  if (at !== -1) rows.splice(at, 1, ...(seen === null ? [] : [seen]));
  else if (seen !== null && rows.length < mostRows) rows.splice(placeFor(slip, place), 0, seen);
  const labels = content.labels.map((label, i) => (i === place.label ? {...label, rows: label.rows.map((row, j) => (j === place.row ? {...row, settled} : row))} : label));
  return {...content, labels, garment: withRows(content.garment, rows)};
}

/** The garment without a photo's rows, and without what was read from it. */
export function withoutReading(content: Content, photo: string): Content {
  const slip = slipRows(content).filter(({from}) => from === null || content.labels[from.label]!.photo !== photo);
  return {...content, labels: content.labels.filter((one) => one.photo !== photo), garment: withRows(content.garment, slip.map(({seen}) => seen))};
}

/** The garment with other rows on its slip. */
export function withRows(garment: Garment, rows: readonly RowText[]): Garment {
  const {rows: _, ...rest} = garment.saw;
  return {...garment, saw: (rows.length === 0 ? rest : {...rest, rows: [...rows]}) as Garment["saw"]};
}

/** What the owner settled, with one place of the row settled more; null: that place is open again. Nothing left settled is null. */
export function settlePlace(settled: SettledRow | null, place: number, character: string | null): SettledRow | null {
  const {[place]: _, ...others} = settled?.places ?? {};
  const places = character === null ? others : {...others, [place]: character};
  return Object.keys(places).length === 0 && !settled?.left ? null : {text: null, places, left: false};
}

export const sideOf = (row: RowText): RowSide | undefined => (typeof row === "string" ? undefined : row.at);

function withoutSide(row: Exclude<RowText, string>): unknown {
  const {at: _, ...rest} = row;
  return rest;
}

// Behind the last row of the same photo that stands above it, else before the first one below it, else last of all.
function placeFor(slip: readonly SlipRow[], {label, row}: RowPlace): number {
  const above = slip.findLastIndex(({from}) => from?.label === label && from.row < row);
  const below = slip.findIndex(({from}) => from?.label === label && from.row > row);
  return above !== -1 ? above + 1 : below !== -1 ? below : slip.length;
}

function settledBefore(read: ReadRow, before: LabelReading): SettledRow | null {
  const same = before.rows.find((row) => within(row.read.quad, centreOf(read.quad)) && within(read.quad, centreOf(row.read.quad)));
  if (!same?.settled) return null;
  // Single places count the characters of the earlier reading.
  return same.settled.text !== null || same.settled.left || same.read.best === read.best ? same.settled : null;
}

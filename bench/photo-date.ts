// How far a photo of a label alone dates a garment: node scripts/run.mjs bench/photo-date.ts [--photos 24] [--seed 700000] [--levels hard] [--keep file.jsonl]
// Labels are drawn from the invented makers' books, printed, worn and photographed by test/photo; maker and label kind are known, nothing else is.
import {appendFileSync, writeFileSync} from "node:fs";
import {fileURLToPath} from "node:url";
import {parseArgs} from "node:util";
import {codeRows} from "../commands/reading/code-rows.ts";
import {labelGarment} from "../commands/reading/date-reading.ts";
import {widened} from "../commands/reading/read-photo.ts";
import {makeExaminer, type Examiner, type RowText} from "../engine/index.ts";
import {readingsOf} from "../engine/infer/readings.ts";
import {monthIndex} from "../engine/units.ts";
import {openPackagedReader} from "../reader/node.ts";
import {readLabel, type ReadLabel} from "../reader/read-label.ts";
import {rowSeen} from "../reader/row-seen.ts";
import type {LabelReader} from "../reader/reader.ts";
import {shippedBooks} from "../rulebooks/load.ts";
import {drawLabel, type DrawnLabel} from "../test/commands/reading/drawn-label.ts";
import {levels, type Level} from "../test/photo/level.ts";
import {makePhoto, pixelsOf} from "../test/photo/make-photo.ts";
import {shippedAxis} from "../test/simulate/books.ts";
import {seeded} from "../test/simulate/random.ts";

/** One way to go from a photo to a date. */
interface Way {
  readonly month: boolean;
  readonly said: number;
  readonly in90: boolean;
  /** By printed row of codes: place of the truth among the readings, all figures and letters right; -1 when it is not among them. */
  readonly places: readonly number[];
}

export interface Dated {
  readonly level: Level;
  readonly seed: number;
  /** The month, from the rows typed without a mistake. */
  readonly typed: boolean;
  readonly ways: Readonly<Record<WayName, Way>>;
  readonly processor: {readonly read: number; readonly widen: number; readonly date: number};
}

export const wayNames = ["best string", "listed readings", "with the grammar"] as const;
export type WayName = (typeof wayNames)[number];

const makers = (shippedBooks().books ?? []).filter(({kind}) => kind === "maker");
const examiner = makeExaminer(makers, {since: monthIndex(shippedAxis.from), today: monthIndex(shippedAxis.until)});

/** Reads and dates one made-up photo in every way. */
export async function datePhoto(reader: LabelReader, level: Level, seed: number): Promise<Dated> {
  const random = seeded(seed);
  const book = random.pick(makers);
  const label = drawLabel(book, shippedAxis, random);
  const photo = await makePhoto({seed, level, rows: label.printed});
  const pixels = await pixelsOf(photo.jpeg);
  const [read, answer] = await spent(() => readLabel(reader, pixels));
  const [widen, wide] = await spent(() => answer.reading && widened(answer.reading, answer.scores, [book], label.kind));
  const best = (reading: ReadLabel | null) => rowsOf(reading).map(({read: row}) => row.best);
  const listed = (reading: ReadLabel | null) => rowsOf(reading).map(({read: row}): RowText => rowSeen(row, null)!);
  const truths = label.rows.map((text, i) => ({text, y: middle(photo.rows[photo.rows.length - label.rows.length + i]!.quad)}));
  const wayOf = (rows: RowText[], reading: ReadLabel | null) => dated(examiner, label, rows, rowsOf(reading).map(({read: {quad}}) => middle(quad)), truths);
  const plain = wayOf(best(answer.reading), answer.reading);
  const own = wayOf(listed(answer.reading), answer.reading);
  const [date, joint] = await spent(() => wayOf(listed(wide), wide));
  return {level, seed, typed: dated(examiner, label, [...label.rows], [], []).month, ways: {"best string": plain, "listed readings": own, "with the grammar": joint}, processor: {read, widen, date}};
}

function rowsOf(reading: ReadLabel | null): ReadLabel["rows"] {
  const codes = reading ? codeRows(reading.rows.map(({read}) => read.best)) : [];
  return codes.map((i) => reading!.rows[i]!).filter(({read}) => rowSeen(read, null) !== null);
}

const middle = (quad: readonly {readonly y: number}[]) => quad.reduce((sum, {y}) => sum + y / quad.length, 0);

function dated(by: Examiner, label: DrawnLabel, rows: readonly RowText[], ys: readonly number[], truths: readonly {readonly text: string; readonly y: number}[]): Way {
  const garment = labelGarment(rows, {maker: label.maker, label: label.kind});
  const {finding} = by.brief(garment);
  const {finding: stages} = by.stages(garment);
  if (!finding || !stages) throw new Error(`a label was not understood: ${JSON.stringify(garment)}`);
  const readings = truths.length > 0 && rows.length > 0 ? readingsOf(stages.evaluations[0]!) : [];
  const places = truths.map(({text, y}) => {
    const nearest = ys.map((at, i) => ({i, far: Math.abs(at - y)})).sort((a, b) => a.far - b.far)[0];
    if (!nearest || !readings[nearest.i]) return -1;
    const byText = new Map<string, number>();
    for (const {row, probability} of readings[nearest.i]!.readings) byText.set(bare(row.text), (byText.get(bare(row.text)) ?? 0) + probability);
    return [...byText].sort((a, b) => b[1] - a[1]).findIndex(([one]) => one === bare(text));
  });
  return {month: finding.best.month === label.month, said: finding.best.probability, in90: finding.sets[1]!.runs.some(({from, until}) => label.month >= from && label.month <= until), places};
}

const bare = (text: string) => text.replace(/[^0-9A-Z]/g, "");

async function spent<T>(work: () => T | Promise<T>): Promise<[number, T]> {
  const before = process.cpuUsage();
  const result = await work();
  const {user, system} = process.cpuUsage(before);
  return [(user + system) / 1000, result];
}

const share = (some: readonly boolean[]) => (some.length === 0 ? "   -" : ((100 * some.filter(Boolean).length) / some.length).toFixed(1).padStart(5));
const mean = (some: readonly number[]) => some.reduce((sum, value) => sum + value, 0) / Math.max(1, some.length);

/** The table that is printed. */
export function sayDated(all: readonly Dated[]): string[] {
  const lines = ["level    way                 rows: first  first three | month right  of those typed right | said  in the 90 set | said 0.80 to 0.97: photos  said  right"];
  for (const level of levels) {
    const photos = all.filter((one) => one.level === level);
    if (photos.length === 0) continue;
    for (const name of wayNames) {
      const ways = photos.map(({ways: by}) => by[name]);
      const places = ways.flatMap((way) => way.places);
      const sure = ways.filter(({said}) => said >= 0.8 && said <= 0.97);
      lines.push(`${level.padEnd(8)} ${name.padEnd(19)} ${share(places.map((p) => p === 0))}  ${share(places.map((p) => p >= 0 && p < 3))}          | ${share(ways.map(({month}) => month))}        ${share(ways.filter((_, i) => photos[i]!.typed).map(({month}) => month))}               | ${(100 * mean(ways.map(({said}) => said))).toFixed(1)}  ${share(ways.map(({in90}) => in90))}        | ${String(sure.length).padStart(4)}  ${(100 * mean(sure.map(({said}) => said))).toFixed(1)}  ${share(sure.map(({month}) => month))}`);
    }
    const {read, widen, date} = Object.fromEntries((["read", "widen", "date"] as const).map((part) => [part, Math.round(mean(photos.map(({processor}) => processor[part])))])) as Record<"read" | "widen" | "date", number>;
    lines.push(`         ${photos.length} photos, ${photos.flatMap(({ways}) => ways["best string"].places).length} rows; typed without a mistake the month is right in ${share(photos.map(({typed}) => typed)).trim()} of 100; processor a photo: ${read} ms reading, ${widen} ms joining with the grammar, ${date} ms dating and reading rows`);
  }
  return lines;
}

if (process.argv[1]?.endsWith("photo-date.ts")) {
  const {values} = parseArgs({options: {photos: {type: "string", default: "24"}, seed: {type: "string", default: "700000"}, levels: {type: "string", default: levels.join()}, keep: {type: "string"}}});
  const reader = await openPackagedReader();
  const all: Dated[] = [];
  if (values.keep) writeFileSync(values.keep, "");
  for (let i = 0; i < Number(values.photos); i++) {
    for (const level of values.levels.split(",") as Level[]) {
      const one = await datePhoto(reader, level, Number(values.seed) + i * levels.length + levels.indexOf(level));
      all.push(one);
      if (values.keep) appendFileSync(values.keep, `${JSON.stringify(one)}\n`);
    }
  }
  await reader.close();
  console.log(sayDated(all).join("\n"));
  const rates = Object.fromEntries(levels.map((level) => [level, Object.fromEntries(wayNames.map((name) => [name, mean(all.filter((one) => one.level === level).map(({ways}) => Number(ways[name].month)))]))]));
  appendFileSync(fileURLToPath(new URL("history.jsonl", import.meta.url)), `${JSON.stringify({bench: "photo-date", at: new Date().toISOString(), node: process.version, seed: Number(values.seed), photos: all.length, monthRight: rates})}\n`);
}

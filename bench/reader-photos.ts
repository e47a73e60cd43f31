// How well whole photos are read: lines found, turned, read; and what is read where there is nothing.
import {readLabel, type LabelReader} from "../reader/index.ts";
import {openPackagedReader, openPhoto} from "../reader/node.ts";
import {openGeneralReader} from "../test/photo/general-reader.ts";
import type {Level} from "../test/photo/level.ts";
import {makePhoto, pixelsOf} from "../test/photo/make-photo.ts";
import {inLargePhoto, nothings, photoOfNothing} from "../test/photo/no-label.ts";
import {runsOf, scoreRuns} from "../test/photo/score.ts";
import type {Line} from "./line.ts";
import {byLevel, firstSeed, photosOf} from "./reader-set.ts";

const recall: Readonly<Record<Level, number>> = {easy: 92, medium: 90, hard: 63};
const precision = 88;

interface PhotoScore {
  readonly level: Level;
  readonly hit: number;
  readonly printed: number;
  readonly read: number;
  readonly spent: number;
  readonly processor: number;
}

export async function measureReaderPhotos(perLevel: number): Promise<Line[]> {
  const reader = await openPackagedReader();
  const own = await scoreAll(reader, perLevel);
  const turned = [...(await scoreAll(reader, Math.ceil(perLevel / 6), 90)), ...(await scoreAll(reader, Math.ceil(perLevel / 6), 180))];
  const lines = [
    ...linesOf("reading photos", own, true),
    ...linesOf("reading photos that lie on their side or head", turned, false),
    ...(await nothingRead(reader)),
    ...(await largePhoto(reader)),
  ];
  await reader.close();
  const general = await openGeneralReader();
  lines.push(...linesOf("the same photos, general text library", await scoreAll(general, perLevel), false));
  await general.close();
  return lines;
}

async function scoreAll(reader: LabelReader, perLevel: number, turn = 0): Promise<PhotoScore[]> {
  const scores: PhotoScore[] = [];
  for await (const photo of photosOf("report", perLevel, {turn})) {
    const pixels = await pixelsOf(photo.jpeg);
    const [began, cpu] = [performance.now(), process.cpuUsage()];
    const {reading} = await readLabel(reader, pixels);
    const used = process.cpuUsage(cpu);
    const rows = reading?.rows.map(({read}) => read.best) ?? [];
    scores.push({level: photo.level, spent: performance.now() - began, processor: (used.user + used.system) / 1000, ...scoreRuns(photo.rows.map(({text}) => text), rows)});
  }
  return scores;
}

function linesOf(name: string, scores: readonly PhotoScore[], aimed: boolean): Line[] {
  const sum = (some: readonly PhotoScore[], of: (score: PhotoScore) => number) => some.reduce((total, score) => total + of(score), 0);
  const levels = byLevel(scores).flatMap(([level, some]): Line[] => [
    {name: `${name}: ${level}, runs of digits read`, value: (100 * sum(some, ({hit}) => hit)) / sum(some, ({printed}) => printed), unit: "in 100", ...(aimed ? {least: recall[level]} : {}), note: `${some.length} photos, ${sum(some, ({printed}) => printed)} runs`},
    {name: `${name}: ${level}, runs that are right`, value: (100 * sum(some, ({hit}) => hit)) / sum(some, ({read}) => read), unit: "in 100"},
  ]);
  const all: Line = {name: `${name}: all levels, runs that are right`, value: (100 * sum(scores, ({hit}) => hit)) / sum(scores, ({read}) => read), unit: "in 100", ...(aimed ? {least: precision} : {})};
  const times = scores.map(({spent}) => spent).sort((a, b) => a - b);
  return [...levels, all, {name: `${name}: time a photo`, value: times[times.length >> 1]!, unit: "ms", ...(aimed ? {most: 1000} : {}), note: `${Math.round(sum(scores, ({processor}) => processor) / scores.length)} ms of processor`}];
}

/** Photos without a label: how many runs of digits are made up in each. */
async function nothingRead(reader: LabelReader): Promise<Line[]> {
  let [runs, photos] = [0, 0];
  const found: string[] = [];
  for (const kind of nothings) {
    for (let seed = 1; seed <= 5; seed++) {
      const {reading} = await readLabel(reader, photoOfNothing(seed, kind));
      const read = reading?.rows.flatMap(({read: row}) => runsOf(row.best)) ?? [];
      runs += read.length;
      photos++;
      if (read.length > 0) found.push(`${kind}: ${read.join(" ")}`);
    }
  }
  return [{name: "numbers made up in a photo without a label", value: runs / photos, unit: "a photo", most: 0.1, note: `${photos} photos${found.length > 0 ? `; ${found.join(", ")}` : ""}`}];
}

/** A photo of twelve megapixels in which the label takes half of each side: from bytes to rows. */
async function largePhoto(reader: LabelReader): Promise<Line[]> {
  const photo = await makePhoto({seed: firstSeed.report, level: "medium"});
  const bytes = await inLargePhoto(photo.jpeg, 4000, 3000, 0.5);
  const [began, cpu] = [performance.now(), process.cpuUsage()];
  const opened = await openPhoto(bytes);
  const {reading} = await readLabel(reader, opened.photo!.pixels);
  const used = process.cpuUsage(cpu);
  const {hit, printed} = scoreRuns(photo.rows.map(({text}) => text), reading?.rows.map(({read}) => read.best) ?? []);
  return [{name: "a photo of twelve megapixels to rows", value: performance.now() - began, unit: "ms", most: 3000, note: `${hit} of ${printed} runs; ${Math.round((used.user + used.system) / 1000)} ms of processor; ${Math.round(process.memoryUsage().rss / 1e6)} MB held`}];
}

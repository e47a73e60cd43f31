// How well single rows are read when their boxes are given, by the packaged reader and by a general text library, on the same made-up photos.
import {sizeOf} from "../reader/image/plane.ts";
import {binsOf, defaultMap, errorOf, mapRow, type LabelReader, type Quad} from "../reader/index.ts";
import {openPackagedReader} from "../reader/node.ts";
import {openGeneralReader} from "../test/photo/general-reader.ts";
import type {Level} from "../test/photo/level.ts";
import {pixelsOf} from "../test/photo/make-photo.ts";
import {scoreLine, share, type LineScore} from "../test/photo/score.ts";
import {seeded} from "../test/simulate/random.ts";
import type {Line} from "./line.ts";
import {byLevel, photosOf} from "./reader-set.ts";

/** What was asked for, in per cent: every digit of a row right in the likeliest reading, and in one of the three likeliest. */
const aims: Readonly<Record<Level, readonly [first: number, third: number]>> = {easy: [98, 99], medium: [96, 99], hard: [64, 72]};

type Scored = LineScore & {readonly level: Level};

/** @param perLevel  photos of each level; each has about seven rows */
export async function measureReaderLines(perLevel: number): Promise<Line[]> {
  const lines: Line[] = [];
  for (const open of [openPackagedReader, openGeneralReader]) {
    const reader = await open();
    const cpu = process.cpuUsage();
    const {scored, spent} = await scoreAll(reader, perLevel);
    await reader.close();
    const own = open === openPackagedReader;
    const name = own ? "reading rows" : "the same rows, general text library";
    for (const [level, some] of byLevel(scored)) {
      const rows = some.filter(({hasDigits}) => hasDigits);
      const [first, third] = aims[level];
      const note = `${rows.length} rows with digits; characters ${percent(some.reduce((sum, {right}) => sum + right, 0) / some.reduce((sum, {of}) => sum + of, 0))}; blanks counted ${percent(share(rows, (row) => row.strictFirst))}, in three ${percent(share(rows, (row) => row.strictThird))}`;
      lines.push({name: `${name}: ${level}, all digits right`, value: 100 * share(rows, (row) => row.first), unit: "in 100", ...(own ? {least: first, note} : {note})});
      lines.push({name: `${name}: ${level}, right in the first three`, value: 100 * share(rows, (row) => row.third), unit: "in 100", ...(own ? {least: third} : {})});
    }
    const rows = scored.filter(({hasDigits}) => hasDigits);
    const bins = binsOf(scored.flatMap(({digits}) => digits));
    lines.push({name: `${name}: calibration error of digits`, value: 100 * errorOf(bins), unit: "in 100", ...(own ? {most: 1.5} : {}), note: bins.map(({said, right, count}) => `${percent(said)}→${percent(right)} (${count})`).join(", ")});
    const rowBins = binsOf(rows.map(({row}) => row));
    lines.push({name: `${name}: calibration error of whole rows`, value: 100 * errorOf(rowBins), unit: "in 100", note: rowBins.map(({said, right, count}) => `${percent(said)}→${percent(right)} (${count})`).join(", ")});
    const used = process.cpuUsage(cpu);
    lines.push({name: `${name}: time a row`, value: spent / scored.length, unit: "ms", note: `making the photos apart; ${Math.round((used.user + used.system) / 1000 / scored.length)} ms of processor with it`});
  }
  return lines;
}

const percent = (part: number) => (100 * part).toFixed(1);

async function scoreAll(reader: LabelReader, perLevel: number): Promise<{scored: Scored[]; spent: number}> {
  const scored: Scored[] = [];
  const random = seeded(31);
  let spent = 0;
  for await (const photo of photosOf("report", perLevel)) {
    const pixels = await pixelsOf(photo.jpeg);
    for (const {quad, text} of photo.rows) {
      // Nobody draws a box to the pixel.
      const off = () => (random.next() * 2 - 1) * 0.06 * sizeOf(quad).height;
      const drawn: Quad = quad.map(({x, y}) => ({x: x + off(), y: y + off()}));
      const began = performance.now();
      const {row} = await reader.readLine(pixels, drawn);
      spent += performance.now() - began;
      scored.push({level: photo.level, ...scoreLine(text, mapRow(row, defaultMap))});
    }
  }
  return {scored, spent};
}

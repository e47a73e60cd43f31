// How fast a rack of fifty thousand garments is opened, searched, saved to, backed up and archived.
import {mkdtempSync, rmSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {writeArchive} from "../store/archive/write-archive.ts";
import {restoreArchive} from "../store/archive/restore-archive.ts";
import {makeBackup} from "../store/backup/backups.ts";
import {contentSchema, rackQuerySchema, standings, type Content} from "../store/model.ts";
import {openStore} from "../store/open.ts";
import type {Store} from "../store/store.ts";
import {seeded} from "../test/simulate/random.ts";
import type {Line} from "./line.ts";
import {quantile} from "./measure.ts";
import type {BenchWorld} from "./world.ts";

const at = "2026-06-01T10:00:00.000Z";
/** As many as the screens must be quick with, too. */
export const total = 50_000;

const queries: Readonly<Record<string, Record<string, unknown>>> = {
  "all, newest first": {},
  "all, by number": {sort: "number", descending: false},
  "all, by date": {sort: "date", descending: false},
  "of ten years, 0.5 at least": {from: 1960, until: 1969},
  "of a maker, by what is asked": {maker: "maker-1", sort: "asked"},
  "for sale, with a tag": {standing: "for sale", tag: "tag-1"},
  "the beginning of a code": {text: "412-03"},
  "two words": {text: "note 17 rail"},
};

export async function measureRack({garments}: BenchWorld, rounds: number): Promise<Line[]> {
  const home = mkdtempSync(join(tmpdir(), "ticking-bench-"));
  const folder = join(home, "rack");
  try {
    const filled = await openStore(folder);
    const fill = await timed(() => fillRack(filled, garments));
    await filled.close();
    const store = await openStore(folder);
    const cold = await timed(() => store.search(rackQuerySchema.parse({})));
    const lines: Line[] = [
      {name: `rack of ${total.toLocaleString("en")}: filled`, value: total / (fill / 1000), unit: "garments/s"},
      {name: "rack: first search after opening", value: cold, unit: "ms"},
    ];
    for (const [name, given] of Object.entries(queries)) {
      const {value, found} = await measureQuery(store, given, rounds);
      lines.push({name: `rack: ${name}`, value, unit: "ms p95", most: Object.keys(given).length === 0 ? 200 : 100, note: `${found.toLocaleString("en")} found`});
    }
    lines.push({name: "rack: a save, forced to the disk", value: await measureSave(store, rounds), unit: "ms p95", most: 100});
    lines.push({name: "rack: a backup", value: await timed(() => makeBackup(store, folder, at)), unit: "ms"});
    await store.close();
    const archive = join(home, "rack.zip");
    lines.push({name: "rack: an archive", value: await timed(() => writeArchive(folder, archive)), unit: "ms"});
    lines.push({name: "rack: an archive restored", value: await timed(() => restoreArchive(archive, join(home, "again"))), unit: "ms"});
    return lines;
  } finally {
    rmSync(home, {recursive: true, force: true});
  }
}

async function measureQuery(store: Store, given: Record<string, unknown>, rounds: number): Promise<{value: number; found: number}> {
  const times: number[] = [];
  let found = 0;
  for (let round = 0; round < 4 * rounds; round++) times.push(await timed(async () => (found = (await store.search(rackQuerySchema.parse(given))).total)));
  return {value: quantile(times, 0.95), found};
}

async function measureSave(store: Store, rounds: number): Promise<number> {
  const [record] = await store.walk(null, 1);
  const times: number[] = [];
  for (let round = 0; round < 10 * rounds; round++) times.push(await timed(() => store.save({id: record!.id, base: round + 1, content: record!.content, who: "bench", what: "changed", at})));
  return quantile(times, 0.95);
}

export async function fillRack(store: Store, garments: BenchWorld["garments"]): Promise<void> {
  const {next, whole} = seeded(7);
  const upTo = (count: number) => whole(0, count - 1);
  const content = (i: number): Content => {
    const shares = Array.from({length: 1 + upTo(25)}, next);
    const sum = shares.reduce((all, share) => all + share, 0);
    const first = 1935 + upTo(50);
    const dating = {
      at, books: [{book: "public", edition: 1}], kind: "one date", words: `March ${first}`, sentence: `Most likely March ${first}`, sureness: "likely", probability: Number(next().toFixed(4)), best: `${first}-03`,
      noEarlier: `${first}-01`, noLater: `${first + 24}-12`, maker: `maker-${upTo(4)}`, plant: null, odd: upTo(5) === 0 ? 1 : 0, years: {first, shares: shares.map((share) => Math.min(1, Math.round((share / sum) * 1e6) / 1e6))},
    };
    return contentSchema.parse({
      garment: {...garments[i % garments.length]!, garment: `n${i}`, note: `note ${i % 97}`}, place: `rail ${upTo(40)}`, standing: standings[upTo(standings.length)], asked: {cents: upTo(30_000), currency: "EUR"}, tags: [`tag-${upTo(6)}`], dating,
    });
  };
  for (let from = 0; from < total; from += 1000) await store.saveAll(Array.from({length: 1000}, (_, i) => ({id: null, base: 0, content: content(from + i), who: "bench", what: "imported", at})));
}

async function timed(run: () => unknown): Promise<number> {
  const start = performance.now();
  await run();
  return performance.now() - start;
}

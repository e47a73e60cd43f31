// How honest the answers are, in numbers: node scripts/run.mjs bench/calibration.ts [--draws 10000] [--detail-every 5] [--only BOOK]
import {appendFileSync} from "node:fs";
import {execFileSync} from "node:child_process";
import {cpus} from "node:os";
import {fileURLToPath} from "node:url";
import {parseArgs} from "node:util";
import {shippedBooks} from "../rulebooks/load.ts";
import {independent, shippedAxis, testSources} from "../test/simulate/books.ts";
import {seeded} from "../test/simulate/random.ts";
import {keptScores, sayScores} from "../test/simulate/report.ts";
import type {Source} from "../test/simulate/sampler.ts";
import {examinerFor, joinScores, scoreDraws} from "../test/simulate/score.ts";
import {wrongWindows} from "../test/simulate/worlds.ts";

const {values} = parseArgs({options: {draws: {type: "string", default: "10000"}, only: {type: "string"}, seed: {type: "string", default: "1"}, "detail-every": {type: "string", default: "5"}}});
const draws = Number(values.draws);
const seed = Number(values.seed);

const shipped = (shippedBooks().books ?? []).filter(({kind}) => kind === "maker");
const sources: Record<string, Source> = {
  ...testSources,
  ...Object.fromEntries(shipped.map((book) => [book.book, {makers: [independent(book)], axis: shippedAxis}])),
};

const kept: Record<string, object> = {};
for (const [name, source] of Object.entries(sources)) {
  if (values.only && values.only !== name) continue;
  const scores = scoreDraws(source, draws, seed, {detailEvery: Number(values["detail-every"])});
  console.log(sayScores(name, scores).join("\n"));
  const wrong = wrongWorlds(source);
  console.log(sayScores(`${name}, windows a year off`, wrong)[1]!.replace("sets,", "windows a year off,"));
  kept[name] = {...keptScores(scores), wrongWindows: keptScores(wrong).sets};
}

const line = {bench: "calibration", at: new Date().toISOString(), commit: commitOf(), node: process.version, cpus: cpus().length, seed, books: kept};
appendFileSync(fileURLToPath(new URL("history.jsonl", import.meta.url)), `${JSON.stringify(line)}\n`);

/** Twenty worlds whose windows are each a year early or late, examined with the book as it is. */
function wrongWorlds(source: Source) {
  const random = seeded(seed);
  const examiner = examinerFor(source);
  const each = Math.max(1, Math.round(draws / 20));
  return joinScores(
    Array.from({length: 20}, (_, w) => scoreDraws({...source, makers: source.makers.map((book) => wrongWindows(book, 12, random))}, each, seed * 1000 + w, {examiner, detailEvery: 0})),
  );
}

function commitOf(): string | null {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], {encoding: "utf8", stdio: ["ignore", "pipe", "ignore"]}).trim();
  } catch {
    return null;
  }
}

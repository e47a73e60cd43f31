// Fits the reading map that is shipped, on made-up photos that nothing is reported of: node scripts/run.mjs bench/reader-map.ts [--photos 40]
import {parseArgs} from "node:util";
import {centreOf, within} from "../reader/image/plane.ts";
import {defaultMap, fitMap, judgeMap, noMap, readLabel, type KnownRow} from "../reader/index.ts";
import {openPackagedReader} from "../reader/node.ts";
import {pixelsOf} from "../test/photo/make-photo.ts";
import {photosOf} from "./reader-set.ts";

const {values} = parseArgs({options: {photos: {type: "string", default: "40"}}});
const reader = await openPackagedReader();
const known: KnownRow[] = [];
for await (const photo of photosOf("fit", Number(values.photos))) {
  const {reading} = await readLabel(reader, await pixelsOf(photo.jpeg), {map: noMap});
  for (const {read} of reading?.rows ?? []) {
    const printed = photo.rows.find(({quad}) => within(read.quad, centreOf(quad)));
    if (printed) known.push({row: read, truth: printed.text});
  }
}
await reader.close();
const fitted = fitMap(known, defaultMap);
console.log(JSON.stringify({fitted, before: judgeMap(known, noMap), shipped: judgeMap(known, defaultMap), after: judgeMap(known, fitted)}, null, 2));

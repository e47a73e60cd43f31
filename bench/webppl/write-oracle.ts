// Writes what WebPPL answers for the small cases to test/oracle/webppl.json: node scripts/run.mjs bench/webppl/write-oracle.ts
import {writeFileSync} from "node:fs";
import {fileURLToPath} from "node:url";
import {smallCases} from "./small-cases.ts";
import {askWebppl, haveWebppl, webpplVersion} from "./webppl.ts";

if (!haveWebppl()) throw new Error("WebPPL could not be installed; the file stays as it is");
const oracle = {
  program: "webppl",
  version: webpplVersion,
  date: new Date().toISOString().slice(0, 10),
  how: "Infer({method: 'enumerate'}) on bench/webppl/model.wppl, which follows docs/model.md, sections 1, 2, 6 and 7; bench/webppl/write-oracle.ts writes this file",
  cases: smallCases.map((small) => {
    const {posterior, makers} = askWebppl(small);
    return {...small, posterior, makers};
  }),
};
const text = JSON.stringify(oracle, null, 1).replace(/\[\s+([-\d.e,\s]+?)\s+\]/g, (_, numbers: string) => `[${numbers.replace(/\s+/g, " ")}]`);
writeFileSync(fileURLToPath(new URL("../../test/oracle/webppl.json", import.meta.url)), `${text}\n`);

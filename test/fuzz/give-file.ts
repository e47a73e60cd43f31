// Gives one file to one way in and prints what came of it: node scripts/run.mjs test/fuzz/give-file.ts WAY-IN FILE [whole]
import {readFileSync} from "node:fs";
import {give, type Target} from "./targets.ts";

const [target, file, whole] = process.argv.slice(2);
const input = readFileSync(file!);
let least = Infinity;
let outcome = null;
for (let times = 0; times < 3; times++) {
  const before = process.cpuUsage();
  const start = performance.now();
  outcome = give(target as Target, input, whole === "whole");
  const {user, system} = process.cpuUsage(before);
  least = Math.min(least, performance.now() - start, (user + system) / 1000);
}
console.log(JSON.stringify({outcome, ms: Math.round(least)}));

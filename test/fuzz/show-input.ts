// Writes out one input of the fuzz tests: node scripts/run.mjs test/fuzz/show-input.ts WAY-IN SEED NUMBER
import {inputAt} from "./inputs.ts";
import type {Target} from "./targets.ts";

const [target, seed, number] = process.argv.slice(2);
process.stdout.write(inputAt(target as Target, Number(seed), Number(number)).bytes);

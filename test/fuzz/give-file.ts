// Gives one file to one way in and prints what came of it: node scripts/run.mjs test/fuzz/give-file.ts WAY-IN FILE [whole]
import {readFileSync} from "node:fs";
import {give, type Target} from "./targets.ts";
import {timed, warmUp} from "./timed.ts";

const [target, file, whole] = process.argv.slice(2);
warmUp();
console.log(JSON.stringify(timed(() => give(target as Target, readFileSync(file!), whole === "whole"))));

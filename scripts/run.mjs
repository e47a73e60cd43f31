// Runs a TypeScript file with its arguments on any supported Node: node scripts/run.mjs FILE [ARGUMENTS]
import "./ensure.mjs";
import {pathToFileURL} from "node:url";

const [file, ...rest] = process.argv.slice(2);
process.argv.splice(1, process.argv.length - 1, file, ...rest);
const {register} = await import("tsx/esm/api");
register();
await import(pathToFileURL(file).href);

// `npm start`: examines a garment of the demo and says how to go on. `npm start -- WORDS` hands the words to the command instead.
import "./ensure.mjs";
import {spawnSync} from "node:child_process";

const words = process.argv.slice(2);
const ticking = (...args) => spawnSync(process.execPath, ["bin/ticking.mjs", ...args], {stdio: "inherit"}).status ?? 1;

if (words.length > 0) process.exit(ticking(...words));

console.log("A garment of the demo: a pair of trousers of a maker that never was, with a worn label.\n");
const status = ticking("examine", "rulebooks/demo/garments/0147.yaml", "--months");
if (status === 0) {
  console.log(`
  Your own garments:
    npx ticking ask                       be asked for the marks, the most telling look first
    npx ticking examine my-garment.yaml   a garment written down, like those in rulebooks/demo/garments
    npx ticking batch my-rack.csv         thousands at once
    npx ticking --help                    everything else
`);
}
process.exit(status);

// `npm start`: opens the workshop in the browser, on a rack in your home. `npm start -- WORDS` hands the words to the command instead.
import "./ensure.mjs";
import {spawnSync} from "node:child_process";
import {buildWeb} from "./build-web.mjs";

const words = process.argv.slice(2);
const serving = words.length === 0 || words[0] === "serve";
if (serving && !buildWeb()) {
  console.error("The screens could not be built. To fix: delete the folder node_modules and run the command again.");
  process.exit(1);
}
const {status} = spawnSync(process.execPath, ["bin/ticking.mjs", ...(words.length === 0 ? ["serve", "--open"] : words)], {stdio: "inherit"});
process.exit(status ?? 1);

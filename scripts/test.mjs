// `npm test`: installs what is missing, checks types and lint, runs every test. Arguments narrow it to some test files.
import "./ensure.mjs";
import {spawnSync} from "node:child_process";
import {buildWeb} from "./build-web.mjs";
import {check} from "./check.mjs";

const only = process.argv.slice(2);
let good = only.length > 0 || check();
// Before the tests, since several of them would otherwise build at once.
good = buildWeb() && good;
const {status} = spawnSync(process.execPath, ["node_modules/vitest/vitest.mjs", "run", ...only], {stdio: "inherit"});
good = status === 0 && good;
process.exit(good ? 0 : 1);

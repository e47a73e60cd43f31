// `npm run check`: types and lint, without the tests.
import "./ensure.mjs";
import {spawnSync} from "node:child_process";

const steps = [
  ["types", "node_modules/typescript/bin/tsc", "-p", "tsconfig.json"],
  ["types of the browser tests", "node_modules/typescript/bin/tsc", "-p", "test/browser/tsconfig.json"],
  ["types of the screens", "node_modules/typescript/bin/tsc", "-p", "web/tsconfig.json"],
  ["lint", "node_modules/oxlint/bin/oxlint", "--quiet", "engine", "rulebooks", "reader", "state", "worth", "paper", "store", "commands", "server", "web", "cli", "bench", "test", "scripts"],
];

export function check() {
  let good = true;
  for (const [name, ...args] of steps) {
    const start = performance.now();
    const {status} = spawnSync(process.execPath, args, {stdio: "inherit"});
    console.log(`[${name}] ${status === 0 ? "fine" : "failed"}, ${((performance.now() - start) / 1000).toFixed(1)} s`);
    good = status === 0 && good;
  }
  return good;
}

if (import.meta.url === `file://${process.argv[1]}`) process.exit(check() ? 0 : 1);

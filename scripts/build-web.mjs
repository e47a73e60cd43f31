// Builds the screens into dist-web when they are missing or their sources changed: called by `npm start` and by the browser tests.
import {spawnSync} from "node:child_process";
import {createHash} from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import {fileURLToPath} from "node:url";
import {shipReader} from "./ship-reader.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const sources = ["web", "engine", "commands", "rulebooks", "reader", "state", "store", "worth", "scripts/ship-reader.mjs", "package-lock.json"];
const mark = path.join(root, "dist-web", ".built");
const lock = path.join(root, ".cache", "building-screens");
/** A build that takes longer has been killed. */
const longest = 120_000;

/** @returns whether the screens are there */
export function buildWeb() {
  const wanted = hashOf(sources);
  const isBuilt = () => fs.existsSync(mark) && fs.readFileSync(mark, "utf8") === wanted;
  if (isBuilt()) return true;
  // Test files run side by side: one builds, the others wait for it.
  while (!claim()) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
  try {
    return isBuilt() || build(wanted);
  } finally {
    fs.rmSync(lock, {recursive: true, force: true});
  }
}

function build(wanted) {
  console.error("Building the screens ...");
  const {status} = spawnSync(process.execPath, ["node_modules/vite/bin/vite.js", "build", "web", "--config", "web/vite.config.ts", "--logLevel", "warn"], {cwd: root, stdio: ["ignore", 2, 2], env: {...process.env, NODE_ENV: "production"}});
  if (status !== 0) return false;
  shipReader(path.join(root, "node_modules"), path.join(root, "dist-web", "reader"));
  fs.writeFileSync(mark, wanted);
  return true;
}

/** Whether the build is ours to do. */
function claim() {
  fs.mkdirSync(path.dirname(lock), {recursive: true});
  try {
    fs.mkdirSync(lock);
    return true;
  } catch {
    const since = fs.statSync(lock, {throwIfNoEntry: false})?.mtimeMs;
    if (since !== undefined && Date.now() - since > longest) fs.rmSync(lock, {recursive: true, force: true});
    return false;
  }
}

function hashOf(names) {
  const hash = createHash("sha256");
  const add = (name) => {
    const whole = path.join(root, name);
    if (fs.statSync(whole).isDirectory()) for (const inner of fs.readdirSync(whole).sort()) add(path.join(name, inner));
    else hash.update(name).update(fs.readFileSync(whole));
  };
  names.forEach(add);
  return hash.digest("hex");
}

// Installs the packages when they are missing or the lock file changed. Plain JavaScript: it runs before anything is installed.
import {spawnSync} from "node:child_process";
import {createHash} from "node:crypto";
import fs from "node:fs";
import {fileURLToPath} from "node:url";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`ticking needs Node 20.19 or newer; this is ${process.version}. To fix: install a newer Node, then run the command again.`);
  process.exit(1);
}

const hash = createHash("sha256");
for (const file of ["package.json", "package-lock.json"]) hash.update(file).update(fs.readFileSync(file));
const wanted = hash.digest("hex");
const mark = "node_modules/.installed";

if (!fs.existsSync(mark) || fs.readFileSync(mark, "utf8") !== wanted) {
  console.error("Installing packages (first run, or the lock file changed) ...");
  const flags = ["--include=dev", "--no-audit", "--no-fund", "--loglevel=error"];
  let status = npm("ci", ...flags);
  if (status !== 0) {
    console.error("npm ci refused the lock file; trying npm install");
    status = npm("install", "--no-save", "--no-package-lock", ...flags);
  }
  if (status !== 0) {
    console.error("The packages could not be installed. To fix: check the network and the disk, then run the command again.");
    process.exit(status ?? 1);
  }
  fs.writeFileSync(mark, wanted);
}

function npm(...args) {
  const cli = process.env.npm_execpath;
  const shell = !cli && process.platform === "win32";
  const [program, all] = cli ? [process.execPath, [cli, ...args]] : ["npm", args];
  // npm's own words go to stderr: stdout belongs to the answer of the command that follows.
  return spawnSync(program, all, {stdio: ["ignore", 2, 2], shell}).status;
}

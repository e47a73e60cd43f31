// Finds a Chromium for the browser tests, or gets one: `node scripts/chromium.mjs` says which. CHROMIUM_ORDER changes where it looks first.
import {spawnSync} from "node:child_process";
import fs from "node:fs";
import path from "node:path";
import {fileURLToPath, pathToFileURL} from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const folder = path.join(root, ".cache/chromium");
const travelling = "@sparticuz/chromium@153.0.0";
const minutes = (n) => n * 60_000;

const ways = {given, system, npm, apt, playwright};

/**
 * Looks in turn at CHROMIUM_PATH, the programs of this machine, a Chromium that travels in an npm package, the packages of the distribution
 * (as root only), and Playwright's own download.
 * @returns `{executablePath, args, env, how}`, or `{why}`: a line for each way that was tried
 */
export function findChromium(order = (process.env.CHROMIUM_ORDER ?? "given,system,npm,apt,playwright").split(",")) {
  const why = [];
  for (const how of order) {
    const found = ways[how] ? ways[how]() : `no such way; there are ${Object.keys(ways).join(", ")}`;
    if (typeof found === "object") return {args: ["--no-sandbox", "--disable-gpu", "--disable-background-networking"], env: {}, ...found, how};
    why.push(`${how}: ${found}`);
  }
  return {why};
}

function given() {
  const file = process.env.CHROMIUM_PATH;
  if (!file) return "CHROMIUM_PATH is not set";
  return starts(file) ? {executablePath: file} : `${file} does not start`;
}

function system() {
  const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "microsoft-edge"];
  const candidates = {
    darwin: ["/Applications/Chromium.app/Contents/MacOS/Chromium", "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"],
    win32: [process.env.ProgramFiles, process.env["ProgramFiles(x86)"], process.env.LOCALAPPDATA]
      .filter(Boolean)
      .flatMap((base) => [`${base}\\Google\\Chrome\\Application\\chrome.exe`, `${base}\\Microsoft\\Edge\\Application\\msedge.exe`]),
  }[process.platform] ?? names.flatMap((name) => (process.env.PATH ?? "").split(":").map((base) => `${base}/${name}`));
  // On Windows a browser that is asked for its version opens a window instead.
  const file = candidates.find((one) => fs.existsSync(one) && (process.platform === "win32" || starts(one)));
  return file ? {executablePath: file} : "no browser in the usual places";
}

function npm() {
  if (process.platform !== "linux" || process.arch !== "x64") return "that package is for Linux on x64";
  const installed = path.join(folder, "node_modules/@sparticuz/chromium");
  if (!fs.existsSync(installed)) {
    fs.mkdirSync(folder, {recursive: true});
    fs.writeFileSync(path.join(folder, "package.json"), '{"private": true}\n');
    const client = process.env.npm_execpath;
    const [program, before] = client ? [process.execPath, [client]] : ["npm", []];
    const {status} = spawnSync(program, [...before, "install", "--no-audit", "--no-fund", "--loglevel=error", travelling], {cwd: folder, stdio: "ignore", timeout: minutes(4)});
    if (status !== 0) return `${travelling} could not be installed`;
  }
  // It unpacks into the temporary folder, where another user's file would be in the way; the variable makes it bring its own libraries.
  const script = `const {default: it} = await import("@sparticuz/chromium");
    console.log(JSON.stringify([await it.executablePath(), it.args, process.env.LD_LIBRARY_PATH ?? ""]))`;
  const {stdout} = spawnSync(process.execPath, ["--input-type=module", "-e", script], {
    cwd: folder, encoding: "utf8", timeout: minutes(1), env: {...process.env, AWS_EXECUTION_ENV: "AWS_Lambda_nodejs22.x", TMPDIR: folder},
  });
  try {
    const [executablePath, args, libraries] = JSON.parse(stdout.trim().split("\n").at(-1));
    const env = {LD_LIBRARY_PATH: libraries};
    return starts(executablePath, env) ? {executablePath, args: args.filter(harmless), env} : "the one from npm does not start";
  } catch {
    return "the one from npm could not be unpacked";
  }
}

// That package is cut to run inside other people's functions: these would take from a page the protections it has for everybody else.
const harmless = (arg) => !/^--(headless|single-process|no-zygote|in-process-gpu|disable-web-security|disable-site-isolation|allow-running-insecure|disable-print|disable-features|enable-features)/.test(arg);

function apt() {
  if (process.getuid?.() !== 0 || !fs.existsSync("/usr/bin/apt-get")) return "only as root on Debian and its kin";
  const env = {...process.env, DEBIAN_FRONTEND: "noninteractive"};
  spawnSync("apt-get", ["update", "-qq"], {env, stdio: "ignore", timeout: minutes(2)});
  const {status} = spawnSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"], {env, stdio: "ignore", timeout: minutes(5)});
  return status === 0 && starts("/usr/bin/chromium") ? {executablePath: "/usr/bin/chromium"} : "apt-get could not install chromium";
}

function playwright() {
  const {status} = spawnSync(process.execPath, [path.join(root, "node_modules/playwright-core/cli.js"), "install", "chromium"], {stdio: "ignore", timeout: minutes(3)});
  return status === 0 ? {executablePath: undefined} : "the download failed";
}

function starts(file, env = {}) {
  return spawnSync(file, ["--version", "--no-sandbox"], {timeout: 20_000, stdio: "ignore", env: {...process.env, ...env}}).status === 0;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const found = findChromium();
  console.log(found.why ? `No Chromium. Set CHROMIUM_PATH to one.\n  ${found.why.join("\n  ")}` : JSON.stringify(found, null, 2));
  process.exit(found.why ? 1 : 0);
}

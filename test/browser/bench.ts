// What the browser tests work with: the real server on a fresh rack, a real Chromium, pictures kept for review, and axe on every screen.
import {spawn, type ChildProcess} from "node:child_process";
import {mkdirSync, mkdtempSync, readFileSync, rmSync} from "node:fs";
import {createRequire} from "node:module";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {fileURLToPath} from "node:url";
import {chromium, type Browser, type Page} from "playwright-core";
import {expect} from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const shots = join(root, "test/browser/shots");
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export const desk = {width: 1360, height: 900};
export const phone = {width: 390, height: 844};

export interface Workshop {
  readonly address: string;
  readonly folder: string;
  readonly browser: Browser;
  /** A page that was walked through already. Faults of the page fail the test that looks at `faults`. */
  page(viewport: {width: number; height: number}, more?: {colorScheme?: "light" | "dark"; walk?: boolean; /** false: no service worker, so that requests can be held back. */ offline?: boolean}): Promise<Page>;
  readonly faults: string[];
  stopServer(): Promise<void>;
  startServer(): Promise<void>;
  close(): Promise<void>;
}

/**
 * @param fill  puts a rack into the folder before it is served
 * @throws with what to do when no Chromium can be had or the screens do not build
 */
export async function openWorkshop(fill: (folder: string) => Promise<void> = async () => {}): Promise<Workshop> {
  const {findChromium} = (await import("../../scripts/chromium.mjs" as string)) as {findChromium(): Promise<{executablePath?: string; args: string[]; env?: Record<string, string>; how: string | null; why?: string[]}>};
  const {buildWeb} = (await import("../../scripts/build-web.mjs" as string)) as {buildWeb(): boolean};
  if (!buildWeb()) throw new Error("the screens do not build: npx vite build web --config web/vite.config.ts says why");
  const found = await findChromium();
  if (found.how === null) throw new Error(`no Chromium can be had: ${found.why?.join("; ")}. To fix: install one, or set CHROMIUM_PATH`);
  const browser = await chromium.launch({executablePath: found.executablePath, args: found.args, env: {...process.env, ...found.env} as Record<string, string>});
  const folder = mkdtempSync(join(tmpdir(), "ticking-workshop-"));
  await fill(folder);
  let server = await serve(folder, 0);
  const faults: string[] = [];
  return {
    browser,
    folder,
    faults,
    get address() {
      return `http://127.0.0.1:${server.port}`;
    },
    async page(viewport, {colorScheme = "light", walk = false, offline = true} = {}) {
      const context = await browser.newContext({viewport, colorScheme, reducedMotion: "reduce", serviceWorkers: offline ? "allow" : "block"});
      if (!walk) await context.addInitScript(() => localStorage.setItem("ticking.walked", "1"));
      const page = await context.newPage();
      page.setDefaultTimeout(30_000);
      page.on("pageerror", (error) => faults.push(error.message));
      page.on("console", (message) => message.type() === "error" && !/Failed to load resource|ERR_CONNECTION/.test(message.text()) && faults.push(message.text()));
      return page;
    },
    stopServer: () => stop(server.process),
    async startServer() {
      server = await serve(folder, server.port);
    },
    async close() {
      await browser.close();
      await stop(server.process);
      rmSync(folder, {recursive: true, force: true});
    },
  };
}

async function serve(folder: string, port: number): Promise<{process: ChildProcess; port: number}> {
  const child = spawn(process.execPath, ["bin/ticking.mjs", "serve", "--data", folder, "--port", String(port)], {cwd: root, stdio: ["ignore", "pipe", "pipe"]});
  let said = "";
  child.stderr.on("data", (text: Buffer) => (said += text));
  const found = await new Promise<number>((resolve, reject) => {
    child.stdout.on("data", (text: Buffer) => {
      const at = /http:\/\/127\.0\.0\.1:(\d+)\//.exec((said += text));
      if (at) resolve(Number(at[1]));
    });
    child.on("exit", () => reject(new Error(`the server ended: ${said}`)));
  });
  return {process: child, port: found};
}

function stop(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null) return resolve();
    child.once("exit", () => resolve());
    child.kill("SIGTERM");
  });
}

/** Keeps a picture for review. */
export async function shot(page: Page, name: string): Promise<void> {
  mkdirSync(shots, {recursive: true});
  await page.screenshot({path: join(shots, `${name}.png`)});
}

/** No breach of WCAG 2.2 A and AA that axe can find. Source: axe-core, rules tagged wcag2a to wcag22aa. */
export async function expectAccessible(page: Page): Promise<void> {
  // Not as a script of the page: its content policy rightly refuses that.
  await page.evaluate(axe);
  const breaches = await page.evaluate(async () => {
    const {violations} = await (window as unknown as {axe: {run(where: unknown, how: unknown): Promise<{violations: {id: string; nodes: {html: string; failureSummary: string}[]}[]}>}}).axe.run(document, {runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]});
    return violations.map(({id, nodes}) => `${id}: ${nodes.slice(0, 3).map(({html, failureSummary}) => `${html.slice(0, 160)} ${failureSummary.slice(0, 200)}`).join(" | ")}`);
  });
  expect(breaches).toEqual([]);
}

/** No sideways scrolling of the page itself. */
export async function expectNoOverflow(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0);
}

// How soon the screens are there, and how soon the answer follows a key, in a real browser against the real server.
import {gzipSync} from "node:zlib";
import {readFileSync} from "node:fs";
import {join} from "node:path";
import {fileURLToPath} from "node:url";
import {desk, openWorkshop} from "../test/browser/bench.ts";
import type {RackPage} from "../store/model.ts";
import type {Line} from "./line.ts";
import {median, quantile} from "./measure.ts";

const built = fileURLToPath(new URL("../dist-web", import.meta.url));

export async function measureScreens(rounds: number): Promise<Line[]> {
  const shop = await openWorkshop();
  try {
    const {rows} = (await (await fetch(`${shop.address}/api/rack?text=0147`)).json()) as RackPage;
    const page = await shop.page(desk);
    const scripts = new Set<string>();
    page.on("response", (response) => /\.js$/.test(new URL(response.url()).pathname) && scripts.add(new URL(response.url()).pathname));
    const paints: number[] = [];
    for (let round = 0; round < rounds; round++) {
      await page.goto(`${shop.address}/examine/${rows[0]!.id}`);
      await page.locator(".ledger li").first().waitFor();
      paints.push(await page.evaluate(() => new Promise<number>((resolve) => new PerformanceObserver((list) => resolve(list.getEntries().at(-1)!.startTime)).observe({type: "largest-contentful-paint", buffered: true}))));
    }
    const script = [...scripts].filter((path) => path !== "/sw.js").reduce((sum, path) => sum + gzipSync(readFileSync(join(built, path))).length, 0);
    const waits: number[] = [];
    const row = page.locator(".slip-row input").nth(1);
    for (let i = 0; i < 12 * rounds; i++) {
      // Another figure each time, so that no answer was there before.
      const text = `${1 + (i % 9)} ${i % 10} ${20 + ((i * 7) % 60)}`;
      waits.push(await row.evaluate(async (box: HTMLInputElement, typed) => {
        const begun = performance.now();
        performance.clearMarks();
        Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!.call(box, typed);
        box.dispatchEvent(new Event("input", {bubbles: true}));
        while (performance.getEntriesByName("ticking date").length === 0) await new Promise((resolve) => setTimeout(resolve, 1));
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
        return performance.now() - begun;
      }, text));
      await page.waitForTimeout(300);
    }
    const note = `${waits.length} keys`;
    return [
      {name: "first load, script, packed", value: script / 1000, unit: "kB", most: 250, note: "worker included"},
      {name: "largest contentful paint", value: median(paints), unit: "ms", most: 1500, note: `${rounds} loads`},
      {name: "key to painted date, median", value: median(waits), unit: "ms", note},
      {name: "key to painted date, 95 of 100", value: quantile(waits, 0.95), unit: "ms", most: 50, note},
    ];
  } finally {
    await shop.close();
  }
}

// How soon a rack of fifty thousand garments is there on the screen, narrowed down, and scrolled, in a real browser against the real server.
import type {Page} from "playwright-core";
import {openStore} from "../store/open.ts";
import {desk, openWorkshop} from "../test/browser/bench.ts";
import type {Line} from "./line.ts";
import {median, quantile} from "./measure.ts";
import {fillRack, total} from "./rack-speed.ts";
import type {BenchWorld} from "./world.ts";

export async function measureLongRack({garments}: BenchWorld, rounds: number): Promise<Line[]> {
  const shop = await openWorkshop(async (folder) => {
    const store = await openStore(folder);
    await fillRack(store, garments);
    await store.close();
  });
  try {
    const page = await shop.page(desk);
    const firsts: number[] = [];
    const narrowed: number[] = [];
    for (let round = 0; round < 3 * rounds; round++) {
      await page.goto(`${shop.address}/examine`);
      await page.waitForTimeout(2500);
      firsts.push(await page.evaluate(async () => {
        const begun = performance.now();
        document.querySelector<HTMLAnchorElement>('a[href="/rack"]')!.click();
        while (!document.querySelector(".hanger")) await new Promise((resolve) => setTimeout(resolve, 1));
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
        return performance.now() - begun;
      }));
      for (const standing of ["for sale", "sold", "kept", ""]) narrowed.push(await narrow(page, standing));
    }
    const frames = await scrolled(page);
    const note = `${total.toLocaleString("en")} garments`;
    return [
      {name: "rack on screen: press to first rows, 95 of 100", value: quantile(firsts, 0.95), unit: "ms", most: 200, note: `${note}, ${firsts.length} times, median ${Math.round(median(firsts))}`},
      {name: "rack on screen: filter to rows, 95 of 100", value: quantile(narrowed, 0.95), unit: "ms", most: 100, note: `${narrowed.length} times, median ${Math.round(median(narrowed))}`},
      {name: "rack on screen: a frame while scrolling, 95 of 100", value: quantile(frames, 0.95), unit: "ms", most: 34, note: `${frames.length} frames, median ${Math.round(median(frames))}`},
    ];
  } finally {
    await shop.close();
  }
}

/** Sets the standing, and waits until other rows are painted. */
const narrow = (page: Page, standing: string): Promise<number> =>
  page.locator(".narrow-fold select").filter({has: page.locator("option", {hasText: /^given away$/})}).evaluate(async (box: HTMLSelectElement, value) => {
    const head = document.querySelector(".rack h1")!;
    const before = head.textContent;
    const begun = performance.now();
    Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, "value")!.set!.call(box, value);
    box.dispatchEvent(new Event("change", {bubbles: true}));
    while (head.textContent === before || document.querySelector(".rack[aria-busy=true]")) await new Promise((resolve) => setTimeout(resolve, 1));
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
    return performance.now() - begun;
  }, standing);

/** Times between frames while the page moves for three seconds. */
const scrolled = (page: Page): Promise<number[]> =>
  page.evaluate(async () => {
    const times: number[] = [];
    const end = performance.now() + 3000;
    let last = performance.now();
    while (last < end) {
      scrollBy(0, 120);
      await new Promise((resolve) => requestAnimationFrame(resolve));
      const now = performance.now();
      times.push(now - last);
      last = now;
    }
    return times.slice(2);
  });

// A label read from a photo, from end to end, in a real browser: rows, doubt settled with a tap, the verdict; with and without a server; nothing leaves the machine.
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import sharp from "sharp";
import type {Page} from "playwright-core";
import {afterAll, beforeAll, expect, test} from "vitest";
import type {GarmentRecord, RackPage} from "../../store/model.ts";
import {makePhoto} from "../photo/make-photo.ts";
import type {MadeRow} from "../photo/rows.ts";
import {desk, expectAccessible, expectNoOverflow, openWorkshop, phone, shot, type Workshop} from "./bench.ts";

let shop: Workshop;
let label: string;
beforeAll(async () => {
  shop = await openWorkshop();
  label = await photo("label", 7, {});
});
afterAll(() => shop.close());

const printed: readonly MadeRow[] = [
  {kind: "care", text: "MACHINE WASH WARM"}, {kind: "fibre", text: "100% COTTON"}, {kind: "origin", text: "MADE IN U.S.A."}, {kind: "lot", text: "418-0324"}, {kind: "date", text: "9 2 33"}, {kind: "size", text: "W 34 L 32"},
];

async function photo(name: string, seed: number, {level = "easy", turn = 0, longest}: {level?: "easy" | "medium" | "hard"; turn?: number; longest?: number}): Promise<string> {
  const made = await makePhoto({seed, level, rows: printed, turn});
  const file = join(shop.folder, `${name}.jpg`);
  writeFileSync(file, longest ? await sharp(made.jpeg).resize({width: longest, height: longest, fit: "inside", kernel: "cubic"}).jpeg({quality: 90}).toBuffer() : made.jpeg);
  return file;
}

const verdict = (page: Page) => page.locator(".verdict h1");
const saved = (page: Page) => page.getByText(/^saved/).waitFor();
const find = async (text: string) => ((await (await fetch(`${shop.address}/api/rack?text=${encodeURIComponent(text)}`)).json()) as RackPage).rows;
const recordOf = async (id: string) => (await (await fetch(`${shop.address}/api/garments/${id}`)).json()) as GarmentRecord;

/** A blank sheet of the maker's, its photo read as far as the rows. */
async function readOn(page: Page, file: string): Promise<void> {
  await page.goto(`${shop.address}/examine`);
  await page.getByLabel("Marrowfield Dungaree Company").check();
  await page.getByRole("button", {name: "Read from a photo"}).click();
  await page.locator("dialog input[type=file]").last().setInputFiles(file);
  await page.getByText(/rows? read in/).waitFor({timeout: 120_000});
}

test.each([["desk", desk, "light"], ["phone", phone, "dark"]] as const)("a photo becomes rows, rows a verdict, and a tap settles what is in doubt, on a %s", async (device, viewport, colorScheme) => {
  const page = await shop.page(viewport, {colorScheme});
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await readOn(page, label);
  await page.waitForTimeout(300);
  await shot(page, `reading-sheet-${device}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  await page.getByRole("button", {name: /Put .* on the slip/}).click();
  await expect.poll(() => verdict(page).textContent(), {timeout: 90_000}).toBe("September 1972");
  await page.locator(".photo-row canvas").first().waitFor();
  await page.locator(".slip").scrollIntoViewIfNeeded();
  await page.waitForTimeout(300);
  await shot(page, `reading-slip-${device}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  expect(asked.filter((url) => !url.startsWith(shop.address) && !url.startsWith("blob:"))).toEqual([]);
  expect(shop.faults).toEqual([]);
  await page.context().close();
});

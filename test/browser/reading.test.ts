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

/** The machine may be busy with much else. */
const longest = 400_000;
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

async function photo(name: string, seed: number, {level = "easy", turn = 0}: {level?: "easy" | "medium" | "hard"; turn?: number}): Promise<string> {
  const made = await makePhoto({seed, level, rows: printed, turn});
  const file = join(shop.folder, `${name}.jpg`);
  writeFileSync(file, made.jpeg);
  return file;
}

const verdict = (page: Page) => page.locator(".verdict h1");
const saved = (page: Page) => page.getByText(/^saved/).waitFor();
const find = async (text: string) => ((await (await fetch(`${shop.address}/api/rack?text=${encodeURIComponent(text)}`)).json()) as RackPage).rows;
const recordOf = async (id: string) => (await (await fetch(`${shop.address}/api/garments/${id}`)).json()) as GarmentRecord;

/** A blank sheet of the maker's, its photo read as far as the rows. */
async function readOn(page: Page, file: string): Promise<void> {
  page.setDefaultTimeout(120_000);
  await page.goto(`${shop.address}/examine`);
  await page.getByLabel("Marrowfield Dungaree Company").check();
  await page.getByRole("button", {name: "Read from a photo"}).click();
  await page.locator("dialog input[type=file]").last().setInputFiles(file);
  await page.getByText(/rows? read in/).waitFor({timeout: 120_000});
}

const shown = async (page: Page, selector: string, name: string) => {
  await page.locator(selector).first().scrollIntoViewIfNeeded();
  await page.waitForTimeout(400);
  await shot(page, name);
  await expectAccessible(page);
  await expectNoOverflow(page);
};
const dated = (page: Page, words: string) => expect.poll(() => verdict(page).textContent(), {timeout: 90_000}).toBe(words);

test.each([["desk", desk, "light"], ["phone", phone, "dark"]] as const)("a photo becomes rows, rows a verdict, and a tap settles what is in doubt, on a %s", async (device, viewport, colorScheme) => {
  const page = await shop.page(viewport, {colorScheme});
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await readOn(page, label);
  await shown(page, ".stage", `reading-sheet-${device}`);
  await page.getByRole("button", {name: /Put .* on the slip/}).click();
  await dated(page, "September 1972");
  await page.locator(".photo-row canvas").first().waitFor();
  await shown(page, ".slip", `reading-slip-${device}`);

  const date = page.locator(".photo-row").nth(1);
  await date.getByRole("button", {name: /^9.*say what it may be/}).click();
  await date.getByLabel(/1st character: another one/).fill("8");
  await dated(page, "August 1972");
  await date.getByRole("button", {name: /^8, settled by you/}).waitFor();
  await shown(page, ".photo-row:nth-of-type(2)", `reading-settled-${device}`);
  await page.keyboard.press("Control+z");
  await dated(page, "September 1972");

  await page.locator(".photo-row", {hasText: "fabric"}).getByRole("button", {name: "Not a row"}).click();
  await expect.poll(() => page.locator(".photo-row").count()).toBe(2);
  await page.getByText(/rows read besides/).click();
  await page.locator(".beside li", {hasText: "left out by you"}).getByRole("button", {name: "Put it on the slip"}).click();
  await expect.poll(() => page.locator(".photo-row").count()).toBe(3);
  await page.locator(".offers", {hasText: "In the words on the label"}).waitFor();
  await page.locator(".offers", {hasText: "Which kind of label"}).waitFor({timeout: 60_000});
  await shown(page, ".offers", `reading-offers-${device}`);

  await page.getByRole("button", {name: /Row 1 in the photo: look closely/}).click();
  await page.getByLabel("even light").check();
  await page.locator(".look-ways select").selectOption("blue");
  await page.getByRole("slider", {name: "Larger"}).press("End");
  await page.locator(".look canvas").first().hover();
  await shown(page, ".look", `reading-look-${device}`);
  await page.getByRole("button", {name: "Close", exact: true}).click();

  expect(asked.filter((url) => !url.startsWith(shop.address) && !url.startsWith("blob:"))).toEqual([]);
  expect(shop.faults).toEqual([]);
  await page.context().close();
}, longest);

test("a worn label leaves doubt: one tap settles a character, another takes the row otherwise, and both can be taken back", async () => {
  const page = await shop.page(phone);
  await readOn(page, await photo("worn", 35, {level: "hard"}));
  await page.getByRole("button", {name: /Put .* on the slip/}).click();
  const row = page.locator(".photo-row", {has: page.locator(".sign.doubtful")}).last();
  await row.locator(".choice .chip").first().waitFor();
  await page.waitForTimeout(1500);
  await row.scrollIntoViewIfNeeded();
  await shot(page, "reading-worn-phone");
  await expectAccessible(page);
  const number = (await row.getAttribute("aria-label"))!;
  const same = page.getByRole("group", {name: number, exact: true});
  const doubts = await same.locator(".sign.doubtful").count();
  const choice = same.getByRole("group", {name: /character$/}).first();
  await choice.getByRole("button").first().click();
  await expect.poll(() => same.locator(".sign.settled").count()).toBe(1);
  expect(await same.locator(".sign.doubtful").count()).toBeLessThan(doubts);
  await same.getByRole("button", {name: "As it was read"}).click();
  await expect.poll(() => same.locator(".sign.settled").count()).toBe(0);
  const other = same.getByRole("group", {name: /other readings of the whole row/}).getByRole("button").first();
  const text = (await other.locator(".print").textContent())!;
  await other.click();
  await expect.poll(() => same.locator("input.print").inputValue()).toBe(text);
  await page.context().close();
}, longest);

test("the outline is moved by keys, the photo turned and straightened, and what is read is kept with the photo and opened again", async () => {
  const page = await shop.page(desk);
  await readOn(page, await photo("on its side", 8, {turn: 90}));
  await page.locator(".rows-found li", {hasText: "418-0324"}).waitFor();
  const before = await page.locator(".stage-outline").getAttribute("points");
  await page.getByRole("button", {name: /^Top left corner of the label/}).focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press("Shift+ArrowLeft");
  expect(await page.locator(".stage-outline").getAttribute("points")).not.toBe(before);
  await page.getByRole("button", {name: "Straightened"}).click();
  await page.getByRole("img", {name: "The label, laid flat"}).waitFor();
  await page.getByText(/rows? read in/).waitFor({timeout: 120_000});
  await shown(page, ".straight", "reading-straight-desk");
  await page.getByRole("button", {name: /Put .* on the slip/}).click();
  await dated(page, "September 1972");
  await page.getByLabel("Number").fill("read-1");
  await page.getByRole("button", {name: "Hang it on the rack"}).click();
  await saved(page);
  const [{id}] = (await find("read-1")) as [RackPage["rows"][0]];
  const {content} = await recordOf(id);
  expect(content.photos.map((one) => one.photo)).toEqual(content.labels.map((one) => one.photo));
  expect(content.labels[0]).toMatchObject({turn: 270, size: {width: expect.any(Number)}});
  expect(content.labels[0]!.rows.length).toBe(printed.length);
  await page.reload();
  await page.locator(".photo-row canvas").first().waitFor();
  await page.getByRole("button", {name: "Open photo 1 that was read, with its outline"}).click();
  await page.getByText("As it was read before.").waitFor();
  await page.locator(".rows-found li", {hasText: "418-0324"}).waitFor();
  await page.context().close();
}, longest);

test("a label is read without a server once the reader was fetched; photo and rows reach the rack when the server is back", async () => {
  const page = await shop.page(phone);
  await page.goto(`${shop.address}/examine`);
  await page.getByLabel("Number").waitFor();
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await readOn(page, label);
  await page.getByRole("button", {name: "Close", exact: true}).click();
  await page.getByRole("button", {name: "Begin anew"}).click();
  const other = await photo("at the market", 9, {});
  await shop.stopServer();
  await readOn(page, other);
  await page.getByRole("button", {name: /Put .* on the slip/}).click();
  await dated(page, "September 1972");
  await page.getByLabel("Number").fill("market-9");
  await page.getByRole("button", {name: "Hang it on the rack"}).click();
  await page.getByText(/waits on this device/).waitFor();
  await page.locator(".photos img").first().waitFor();
  await page.reload();
  await page.locator(".photo-row .row-crop[data-state=there]").first().waitFor();
  await shop.startServer();
  await expect.poll(async () => (await find("market-9")).length, {timeout: 60_000}).toBe(1);
  const [{id}] = (await find("market-9")) as [RackPage["rows"][0]];
  const {content} = await recordOf(id);
  expect(content.labels).toHaveLength(1);
  expect((await fetch(`${shop.address}/api/photos/${content.labels[0]!.photo}/shown`)).status).toBe(200);
  await page.context().close();
}, longest);

test("what is no label is told with advice, what is no photo is refused, and without the reader rows are typed as ever", async () => {
  const page = await shop.page(phone, {offline: false});
  page.setDefaultTimeout(120_000);
  const cloth = join(shop.folder, "cloth.jpg");
  writeFileSync(cloth, await sharp({create: {width: 900, height: 700, channels: 3, background: "#556", noise: {type: "gaussian", mean: 110, sigma: 12}}}).jpeg().toBuffer());
  const text = join(shop.folder, "text.jpg");
  writeFileSync(text, "no photo at all");
  await page.goto(`${shop.address}/examine`);
  await page.getByRole("button", {name: "Read from a photo"}).click();
  const input = page.locator("dialog input[type=file]").last();
  await input.setInputFiles(text);
  await page.locator("dialog .problems").waitFor();
  await input.setInputFiles(cloth);
  await page.getByRole("heading", {name: "I cannot read this"}).waitFor({timeout: 120_000});
  expect(await page.getByRole("button", {name: /on the slip/}).count()).toBe(0);
  await shown(page, ".stage", "reading-cannot-phone");
  await page.route("**/reader/parts.json", (route) => route.fulfill({json: {}}));
  await page.goto(`${shop.address}/examine`);
  await page.getByRole("button", {name: "Read from a photo"}).click();
  await page.locator("dialog input[type=file]").last().setInputFiles(label);
  await page.getByRole("heading", {name: "There is no reader"}).waitFor();
  await shown(page, ".read-rows", "reading-missing-phone");
  await page.getByRole("button", {name: "Close", exact: true}).click();
  await page.locator(".add-row").click();
  await page.locator(".slip-row input").fill("9 2 33");
  await page.context().close();
}, longest);

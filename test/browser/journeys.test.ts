// The main journeys from end to end, as a dealer goes them, in a real browser against the real server.
import {writeFileSync} from "node:fs";
import {join} from "node:path";
import sharp from "sharp";
import type {Page} from "playwright-core";
import {afterAll, beforeAll, expect, test} from "vitest";
import type {GarmentRecord, RackPage} from "../../store/model.ts";
import {desk, openWorkshop, phone, shot, type Workshop} from "./bench.ts";

let shop: Workshop;
beforeAll(async () => {
  shop = await openWorkshop();
});
afterAll(() => shop.close());

const verdict = (page: Page) => page.locator(".verdict h1");
const saved = (page: Page) => page.getByText(/^saved/).waitFor();
const find = async (text: string) => ((await (await fetch(`${shop.address}/api/rack?text=${encodeURIComponent(text)}`)).json()) as RackPage).rows;
const recordOf = async (id: string) => (await (await fetch(`${shop.address}/api/garments/${id}`)).json()) as GarmentRecord;

async function typeRow(page: Page, index: number, text: string): Promise<void> {
  if ((await page.locator(".slip-row").count()) <= index) await page.locator(".add-row").click();
  await page.locator(".slip-row").nth(index).locator("input").fill(text);
}

// First of all, while nothing but the demo hangs on the rack.
test("a first start begins with a walk-through, shown once, that can be gone through or skipped", async () => {
  const page = await shop.page(desk, {walk: true});
  await page.goto(shop.address);
  await page.getByRole("heading", {name: "A rack to try things on"}).waitFor();
  for (const heading of ["Examine", "Write down what you see", "Look next"]) {
    await page.getByRole("button", {name: "Next", exact: true}).click();
    await page.getByRole("dialog").getByRole("heading", {name: heading}).waitFor();
  }
  await page.getByRole("button", {name: "Begin"}).click();
  await page.reload();
  await page.locator(".verdict h1").waitFor();
  expect(await page.getByRole("dialog").count()).toBe(0);
  await page.context().close();
  const other = await shop.page(phone, {walk: true});
  await other.goto(shop.address);
  await other.getByRole("button", {name: "Skip"}).click();
  expect(await other.getByRole("dialog").count()).toBe(0);
  await other.context().close();
});

test.each([["desk", desk], ["phone", phone]] as const)("from a blank sheet to a verdict, hung on the rack and found again, on a %s", async (device, viewport) => {
  const page = await shop.page(viewport);
  await page.goto(`${shop.address}/examine`);
  await expect.poll(() => verdict(page).textContent(), {timeout: 20_000}).toBe("When was it made?");
  await page.getByLabel("Marrowfield Dungaree Company").check();
  await typeRow(page, 0, "418-0324");
  await typeRow(page, 1, "9 2 33");
  await expect.poll(() => verdict(page).textContent(), {timeout: 20_000}).toBe("September 1972");
  await page.getByLabel("Title").fill(`Narrow trousers of the ${device}`);
  await page.getByLabel("Kept where").fill("rail 7");
  await page.getByLabel("Number").fill(`new-${device}`);
  await page.getByRole("button", {name: "Hang it on the rack"}).click();
  await saved(page);
  await shot(page, `journey-verdict-${device}`);
  await page.goto(`${shop.address}/rack?text=narrow+418-0324`);
  await page.getByText(`Narrow trousers of the ${device}`).first().click();
  await expect.poll(() => verdict(page).textContent(), {timeout: 20_000}).toBe("September 1972");
  const [row] = await find(`new-${device}`);
  expect(row).toMatchObject({place: "rail 7", dating: {best: "1972-09", words: "September 1972"}});
  await page.context().close();
});

test("a worn figure leaves two plants; the stamp on the back of the button tells which", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/examine`);
  await page.getByLabel("Marrowfield Dungaree Company").check();
  await typeRow(page, 0, "3 8 2(1/7)");
  const best = page.locator(".readings button").first();
  await expect.poll(() => best.textContent(), {timeout: 20_000}).toMatch(/plant 2\(1\/7\)/);
  await page.getByRole("button", {name: /^back of the top button/}).click();
  await page.getByLabel(/As printed/).first().fill("21");
  await page.getByRole("button", {name: "Close"}).click();
  await page.locator(".ledger li", {hasText: "stamp on the back of the top button"}).waitFor();
  await page.locator(".stitches button", {hasText: "stamp on the back"}).hover();
  await page.getByText(/^Without stamp on the back of the top button/).waitFor();
  await page.context().close();
});

test("one character is put in doubt by pressing it", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/examine`);
  await page.getByLabel("Marrowfield Dungaree Company").check();
  await typeRow(page, 0, "3 8 21");
  await page.locator(".sign").nth(1).click();
  await page.getByLabel("Character 2").fill("3");
  await page.getByRole("button", {name: "Set"}).click();
  expect(await page.locator(".slip-row input").first().inputValue()).toBe("3 (8:100/3:20) 21");
  await page.keyboard.press("Control+z");
  await expect.poll(() => page.locator(".slip-row input").first().inputValue()).toBe("3 8 21");
  await page.context().close();
});

test("a rule is followed from the ledger to its citation", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/examine/${(await find("0147"))[0]!.id}`);
  const line = page.locator(".ledger details", {hasText: "fibre content statement"});
  await line.locator("summary").click();
  const books = (await (await fetch(`${shop.address}/api/books/used`)).json()) as {book: string; marks: Record<string, {source: {ref: string}; values: Record<string, {source?: {ref: string}}>}>; sources: Record<string, {title: string}>}[];
  const open = books.find(({book}) => book === "public")!;
  const mark = open.marks["us.fibre.content.statement"]!;
  await line.getByText(open.sources[(mark.values.none?.source ?? mark.source).ref]!.title).first().waitFor();
  await page.context().close();
});

test("a photo goes in, is shown, and stays", async () => {
  const page = await shop.page(phone);
  const [{id}] = (await find("0152")) as [RackPage["rows"][0]];
  const file = join(shop.folder, "front.jpg");
  writeFileSync(file, await sharp({create: {width: 900, height: 1200, channels: 3, background: "#345"}}).jpeg().toBuffer());
  await page.goto(`${shop.address}/examine/${id}`);
  await page.locator(".photos input[type=file]").setInputFiles(file);
  await page.locator(".photos img").waitFor();
  await saved(page);
  expect((await recordOf(id)).content.photos).toHaveLength(1);
  await page.goto(`${shop.address}/rack?text=0152`);
  await page.locator("img.cover").waitFor();
  await page.context().close();
});

test.each([["0155", desk], ["0166", phone]] as const)("two windows on one garment: the later save is told, and both changes are kept (%s)", async (number, viewport) => {
  const [{id}] = (await find(number)) as [RackPage["rows"][0]];
  const [one, two] = [await shop.page(viewport), await shop.page(viewport)];
  for (const page of [one, two]) {
    await page.goto(`${shop.address}/examine/${id}`);
    await page.locator(".ledger li").first().waitFor();
  }
  await one.getByLabel("Kept where").fill("attic");
  await expect.poll(async () => (await recordOf(id)).content.place).toBe("attic");
  await two.getByLabel("Title").fill("A title of the second window");
  await two.getByRole("button", {name: "Save both together"}).click();
  await expect.poll(async () => (await recordOf(id)).content).toMatchObject({place: "attic", garment: {title: "A title of the second window"}});
  for (const page of [one, two]) await page.context().close();
});

test.each([["desk", desk], ["phone", phone]] as const)("everything is archived, the rack emptied, and all of it brought back, on a %s", async (_, viewport) => {
  const page = await shop.page(viewport);
  const before = await (await fetch(`${shop.address}/api/rack?limit=500&sort=number&descending=false`)).json();
  const file = join(shop.folder, "rack.zip");
  writeFileSync(file, Buffer.from(await (await fetch(`${shop.address}/api/archive`)).arrayBuffer()));
  await page.goto(`${shop.address}/rack/archive`);
  await page.getByLabel("Yes, clear this rack").check();
  await page.getByRole("button", {name: "Empty rack"}).click();
  await page.getByText("The rack is empty.").waitFor();
  expect((await find("")).length).toBe(0);
  await page.getByLabel("Archive file").setInputFiles(file);
  await page.getByText("Everything in the archive is on the rack now.").waitFor();
  expect(await (await fetch(`${shop.address}/api/rack?limit=500&sort=number&descending=false`)).json()).toEqual(before);
  await page.context().close();
});

test("a book is edited with its mistakes told by line, saved as a new edition, and compared", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/books/marrowfield/edit`);
  const box = page.getByLabel("The book as YAML");
  await expect.poll(() => box.inputValue(), {timeout: 20_000}).toContain("green-satin");
  const text = await box.inputValue();
  await box.fill(text.replace(/^edition:.*$/m, "edition: soon"));
  await page.getByText("One thing to mend").waitFor();
  await box.fill(text.replace("Marrowfield Dungaree Company", "Marrowfield Dungaree Works"));
  await page.getByText("Nothing to mend").waitFor();
  await page.getByLabel("Garment to try").selectOption({label: "0147 Straight-leg trousers, worn label"});
  await page.locator(".tried").getByText(/March 1968/).first().waitFor();
  await page.getByRole("button", {name: "Save as a new edition"}).click();
  await page.getByText("Marrowfield Dungaree Works").first().waitFor();
  await page.goto(`${shop.address}/books/marrowfield/compare/3/4`);
  await page.getByText(/edition 3/).first().waitFor();
  await page.context().close();
});

test("without the server examining goes on, and what was written is sent when it is back", async () => {
  const page = await shop.page(desk);
  const [{id}] = (await find("0158")) as [RackPage["rows"][0]];
  await page.goto(`${shop.address}/examine/${id}`);
  await page.locator(".ledger li").first().waitFor();
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
  await page.locator(".ledger li").first().waitFor();
  await shop.stopServer();
  await page.getByLabel("Kept where").fill("the van");
  await page.getByText("kept on this device until the server is back").waitFor();
  await page.goto(`${shop.address}/examine`);
  await page.getByLabel(/^Marrowfield/).check();
  await typeRow(page, 0, "9 2 33");
  await expect.poll(() => verdict(page).textContent(), {timeout: 20_000}).toMatch(/1972/);
  await shop.startServer();
  await page.goto(`${shop.address}/rack`);
  await expect.poll(async () => (await recordOf(id)).content.place, {timeout: 30_000}).toBe("the van");
  await page.context().close();
});

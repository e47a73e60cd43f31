// Paper on the screens: chosen, looked at, made and checked, on a desk and on a phone; axe finds nothing, nothing runs off the page.
import {readFileSync} from "node:fs";
import {afterAll, beforeAll, expect, test} from "vitest";
import type {GarmentRecord, RackPage} from "../../store/model.ts";
import {desk, expectAccessible, expectNoOverflow, openWorkshop, phone, shot, type Workshop} from "./bench.ts";
import {lookAtEach, type Look} from "./every-light.ts";
import {pagesOf} from "../paper/pdf-pages.ts";

let shop: Workshop;
let first: string;
let second: string;
beforeAll(async () => {
  shop = await openWorkshop();
  first = await idOf("0147");
  second = await idOf("0149");
  const {rev, content} = (await (await fetch(`${shop.address}/api/garments/${first}`)).json()) as GarmentRecord;
  const seen = {
    ...content,
    asked: {cents: 8500, currency: "EUR"},
    state: {flaws: [{kind: "hole", place: "left knee", severity: "slight", size: 12, mended: true}], wear: "even", clean: "washed", fading: ["whiskers"], alterations: [], missing: []},
    sizes: {measures: [{point: "waist", length: {typed: "16 1/4", unit: "in"}}, {point: "inseam", length: {typed: "30 1/2", unit: "in"}}], tag: {text: "W 34 L 32"}, cloth: null},
  };
  const saved = await fetch(`${shop.address}/api/garments/${first}`, {method: "PUT", headers: {"content-type": "application/json"}, body: JSON.stringify({base: rev, content: seen, what: "measured"})});
  expect(saved.status).toBe(200);
});
afterAll(() => shop.close());

const idOf = async (number: string) => ((await (await fetch(`${shop.address}/api/rack?text=${number}`)).json()) as RackPage).rows[0]!.id;

const screens: readonly Look[] = [
  ["paper-empty", () => "/paper", ".found li"],
  ["paper-sheet", () => `/paper?of=${first},${second}`, ".sheet-place.ready"],
  ["paper-tags", () => `/paper?what=tags&of=${first},${second}&format=ticket`, ".tag-place img"],
  ["paper-listing", () => `/paper?what=listing&of=${first}`, ".listing-text.ready"],
  ["paper-chart", () => "/paper?what=chart", ".as-button"],
  ["paper-check", () => "/paper?what=check", ".check-paper"],
];

lookAtEach(screens, () => shop);

test("from a garment's screen one link leads to its sheet, which is made as a PDF and found true", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/examine/${first}`);
  await page.getByRole("link", {name: "Sheet, tag, listing"}).click();
  await page.locator(".sheet-place.ready").waitFor();
  const short = (await page.locator(".sheet-place figcaption").last().textContent())!;
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", {name: "Make the sheet as PDF"}).click()]);
  const pages = await pagesOf(readFileSync(await download.path()));
  expect(pages[0]!.text).toContain("March 1968");
  expect(pages.map(({text}) => text).join(" ")).toContain(short);
  await page.getByText("Check a sheet").click();
  await page.getByLabel("Code of the sheet").fill(short);
  await page.getByLabel("Garment’s number").fill("0147");
  await page.getByLabel("Day of the sheet").fill(new Date().toISOString().slice(0, 10));
  await page.getByRole("button", {name: "Check the sheet"}).click();
  await page.getByText("They say the same", {exact: true}).waitFor();
  await shot(page, "journey-paper-checked-desk");
  await page.context().close();
});

test("the shop's name is kept and stands on the sheet at once", async () => {
  const page = await shop.page(phone);
  await page.goto(`${shop.address}/paper?of=${first}`);
  await page.getByText("Your shop, as papers name it").click();
  await page.getByLabel("Name", {exact: true}).fill("Tannery Row Old Workwear");
  await page.getByLabel("Country, in two letters").fill("us");
  await page.getByRole("button", {name: "Keep it"}).click();
  await page.getByText("Your shop: Tannery Row Old Workwear").waitFor();
  await expect.poll(() => page.locator(".sheet-place header").textContent()).toContain("Tannery Row Old Workwear");
  expect(await page.getByLabel("Page").inputValue()).toBe("letter");
  await expectAccessible(page);
  await expectNoOverflow(page);
  await page.context().close();
});

test("many sheets are made with their progress told, and can be stopped", async () => {
  const page = await shop.page(phone);
  await page.goto(`${shop.address}/paper`);
  await page.getByRole("button", {name: /^Take all \d+ on the rack/}).click();
  await page.getByRole("button", {name: /^Make \d+ sheets as PDF/}).click();
  await page.getByText(/^[1-9]\d* of \d+/).waitFor();
  await shot(page, "journey-paper-progress-phone");
  await page.getByRole("button", {name: "Stop"}).click();
  await page.getByText("Stopped; nothing was made.").waitFor();
  await page.context().close();
});

test("a template is tried on the garment at once, its slips are told, and it is kept for all listings", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/paper?what=listing&of=${first}`);
  await page.locator(".listing-text.ready").waitFor();
  await page.getByLabel("Your words first").fill("From {shopp}, with care.");
  await page.getByText(/did you mean \{shop\}\?/).waitFor();
  expect(await page.getByRole("button", {name: /this template/i}).isDisabled()).toBe(true);
  await page.getByLabel("Your words first").fill("No. {number}, {date}: {odds}.");
  await expect.poll(() => page.locator(".listing-text").textContent()).toMatch(/^No\. 0147, March 1968: 77 in 100\./);
  await page.getByRole("button", {name: "Leave out reasons"}).click();
  await expect.poll(() => page.locator(".listing-text").textContent()).not.toMatch(/rests on/);
  await page.getByRole("button", {name: "Leave out state"}).click();
  await expect.poll(() => page.locator(".listing-text").textContent()).toMatch(/slight hole at the left knee, mended, 12 mm/);
  await page.getByRole("button", {name: "Keep this template"}).click();
  await page.getByText("Kept for all listings.").waitFor();
  expect(await (await fetch(`${shop.address}/api/paper/listing/${second}`)).text()).toMatch(/^No\. 0149, September 1972/);
  await page.context().close();
});

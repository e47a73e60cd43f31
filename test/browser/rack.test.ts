// The rack end to end: a list brought in, found and narrowed down, changed together, dated again, compared, and taken back to an earlier step.
import type {Page} from "playwright-core";
import {afterAll, beforeAll, expect, test} from "vitest";
import type {GarmentRecord, RackPage} from "../../store/model.ts";
import {desk, expectAccessible, expectNoOverflow, openWorkshop, phone, shot, type Workshop} from "./bench.ts";

let shop: Workshop;
beforeAll(async () => {
  shop = await openWorkshop();
});
afterAll(() => shop.close());

const find = async (question: string) => ((await (await fetch(`${shop.address}/api/rack?${question}`)).json()) as RackPage).rows;
const recordOf = async (id: string) => (await (await fetch(`${shop.address}/api/garments/${id}`)).json()) as GarmentRecord;
const count = (page: Page) => page.locator("h1").textContent();

const list = ["Item no.;What;Brand;Label numbers;Shelf;Price;Colour", "A1;Work trousers;marrowfield;418-0324 | 9 2 33;rail 1;120;indigo", "A2;Work trousers again;marrowfield;418-0324 | 9 2 33;rail 2;89,50;indigo", "A3;Dungarees;;;rail 1;;"].join("\n");

test.each([["desk", desk], ["phone", phone]] as const)("a list is brought in with its columns guessed, mended, and then all of it, on a %s", async (device, viewport) => {
  const page = await shop.page(viewport);
  await page.goto(`${shop.address}/rack/bring-in`);
  // Codes that many garments share would say nothing of look-alikes.
  const text = list.replace(/^A/gm, device.toUpperCase()).replaceAll("0324", device === "desk" ? "0324" : "0326");
  await page.getByLabel("Or pasted here").fill(text.replace("89,50", "much"));
  await page.getByText(/1 thing has to be mended first/).waitFor();
  expect(await page.getByRole("button", {name: "Nothing to bring in yet"}).isDisabled()).toBe(true);
  expect(await page.getByLabel("Column Shelf is taken as").inputValue()).toBe("place");
  expect(await page.getByLabel("Column Colour is taken as").inputValue()).toBe("");
  await shot(page, `journey-bring-in-${device}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  expect(await find(`text=${device}1`)).toEqual([]);
  await page.getByLabel("Or pasted here").fill(text);
  await page.getByRole("button", {name: "Bring in 3 garments"}).click();
  await page.getByText(/3 garments brought in/).waitFor();
  await expect.poll(async () => (await find(`text=${device}1`))[0]?.dating?.words, {timeout: 90_000}).toBe("September 1972");
  await page.context().close();
});

test("the rack is narrowed down by years and words, and the address says how", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/rack`);
  await page.locator(".hanger-link").first().waitFor();
  await page.getByRole("slider", {name: "First year"}).focus();
  await page.getByLabel("from").first().fill("1972");
  await page.getByLabel("until").first().fill("1972");
  await page.getByLabel("Find on the rack").fill("work trousers");
  await expect.poll(() => page.url()).toMatch(/text=work\+trousers&from=1972&until=1972|from=1972/);
  await expect.poll(() => count(page)).toBe("4 garments");
  await page.reload();
  await expect.poll(() => count(page)).toBe("4 garments");
  const plot = (await page.locator(".year-plot svg").boundingBox())!;
  await page.mouse.move(plot.x + 2, plot.y + 30);
  await page.mouse.down();
  await page.mouse.move(plot.x + plot.width - 2, plot.y + 30, {steps: 4});
  await page.mouse.up();
  await expect.poll(() => page.url()).not.toMatch(/from=1972/);
  await page.getByRole("slider", {name: "Last year"}).press("Home");
  await expect.poll(() => count(page)).toBe("0 garments");
  await page.context().close();
});

test.each([["desk", desk], ["phone", phone]] as const)("garments are picked, changed together and dated again, on a %s", async (device, viewport) => {
  const page = await shop.page(viewport);
  await page.goto(`${shop.address}/rack?text=${device}&layout=${device === "desk" ? "list" : "hangers"}`);
  await page.getByLabel(`Pick ${device.toUpperCase()}1`).check();
  await page.getByRole("button", {name: "Pick all 3"}).click();
  await page.getByText("3 garments picked").waitFor();
  await page.getByRole("button", {name: "Change together"}).click();
  await page.getByLabel("Kept", {exact: true}).last().fill("window");
  await page.getByLabel("Add tags").fill("spring, mended");
  await shot(page, `journey-change-together-${device}`);
  await expectAccessible(page);
  await page.getByRole("button", {name: "Change", exact: true}).click();
  await page.getByText("3 garments changed").waitFor();
  await page.getByRole("button", {name: "Close"}).click();
  expect((await find(`text=${device}`)).map(({place, tags}) => ({place, tags}))).toEqual(Array(3).fill({place: "window", tags: ["spring", "mended"]}));
  await page.getByRole("button", {name: "Date again"}).click();
  await page.getByRole("heading", {name: "Dated again: 0 moved, 3 stayed where they were"}).waitFor();
  await page.getByRole("button", {name: "Close"}).click();
  await page.getByRole("button", {name: "Let go"}).click();
  await expect.poll(() => page.getByText("3 garments picked").count()).toBe(0);
  await page.context().close();
});

test("while all are still being picked nothing can be done with the few picked so far", async () => {
  const page = await shop.page(desk, {offline: false});
  await page.goto(`${shop.address}/rack?text=desk&layout=list`);
  await page.getByLabel("Pick DESK1").check();
  let letThrough = () => {};
  const held = new Promise<void>((resolve) => (letThrough = resolve));
  await page.route(/\/api\/rack\?.*limit=500/, async (route) => {
    await held;
    await route.continue();
  });
  await page.getByRole("button", {name: "Pick all 3"}).click();
  for (const name of ["Change together", "Date again", "Let go"]) expect([name, await page.getByRole("button", {name}).isDisabled()]).toEqual([name, true]);
  letThrough();
  await page.getByText("3 garments picked").waitFor();
  expect(await page.getByRole("button", {name: "Date again"}).isDisabled()).toBe(false);
  await page.context().close();
});

test("a book is edited on screen, and dating again says which dates moved and why", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/books/marrowfield/edit`);
  const box = page.getByLabel("The book as YAML");
  await expect.poll(() => box.inputValue(), {timeout: 20_000}).toContain("month-and-year-figure:");
  // As if the month had been written with one figure of the year ten years later than the book thought, and the specimens with it.
  const text = await box.inputValue();
  const at = text.indexOf("  month-and-year-figure:");
  const scheme = text.slice(at).replace("1966-01", "1976-01").replace("1966-06", "1976-06").replace(/ {6}3 8: 1968-03\n {6}12 1: 1971-12\n/, "");
  await box.fill(text.slice(0, at) + scheme);
  await page.getByText("Nothing to mend").waitFor();
  await page.getByRole("button", {name: "Save as a new edition"}).click();
  await page.getByText("Edition 4, in use", {exact: false}).waitFor();
  await page.goto(`${shop.address}/rack?maker=marrowfield&layout=list`);
  await page.locator(".pick").first().check();
  await page.getByRole("button", {name: /^Pick all/}).click();
  await page.getByRole("button", {name: "Date again"}).click();
  await page.getByRole("heading", {name: /^Dated again: [1-9]\d* moved/}).waitFor({timeout: 60_000});
  const reason = page.getByRole("region", {name: /edition 3 → 4: window of month-and-year-figure begins 1966-01..1966-06 → 1976-01..1976-06/});
  await reason.locator("li", {hasText: "DESK1"}).getByText("September 1972").waitFor();
  await shot(page, "journey-dated-again-desk");
  await expectAccessible(page);
  await page.context().close();
});

test("dating again can be stopped, and what is done stays done", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/rack`);
  await page.locator(".pick").first().check();
  await page.getByRole("button", {name: /^Pick all/}).click();
  await page.getByRole("button", {name: "Date again"}).click();
  await page.getByRole("button", {name: "Stop"}).click();
  await page.getByRole("heading", {name: /^Stopped after 40 of \d+: .*; the rest is as it was$/}).waitFor({timeout: 60_000});
  await page.context().close();
});

test("look-alikes are shown side by side, one is taken off the rack and put back from its history", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/rack/alike`);
  const group = page.locator(".alike-group", {hasText: "DESK1"}).first();
  await group.waitFor();
  await shot(page, "journey-look-alikes-desk");
  await expectAccessible(page);
  const [{id}] = (await find("text=desk2")) as [RackPage["rows"][0]];
  await group.locator("li", {hasText: "DESK2"}).getByRole("button", {name: "Take this one off the rack"}).click();
  await expect.poll(async () => (await recordOf(id)).removed).toBe(true);
  await page.goto(`${shop.address}/rack/history/${id}`);
  await page.getByRole("button", {name: "Put it back on the rack"}).click();
  await page.getByText("Put back on the rack.").waitFor();
  expect((await recordOf(id)).removed).toBe(false);
  await page.getByRole("button", {name: "Go back to step 1", exact: true}).click();
  await expect.poll(async () => (await recordOf(id)).content.place).toBe("rail 2");
  await page.context().close();
});

test("a garment that was taken off the rack says so where it is opened, and can be put back there", async () => {
  const page = await shop.page(desk);
  const [{id}] = (await find("text=desk1")) as [RackPage["rows"][0]];
  await page.goto(`${shop.address}/examine/${id}`);
  await page.getByRole("button", {name: "Take it off the rack"}).click();
  await page.getByRole("button", {name: "Take it off", exact: true}).click();
  await expect.poll(async () => (await recordOf(id)).removed).toBe(true);
  await page.goto(`${shop.address}/examine/${id}`);
  await page.getByText("It was taken off the rack").waitFor();
  await shot(page, "journey-off-the-rack-desk");
  await page.getByRole("button", {name: "Put it back"}).click();
  await expect.poll(async () => (await recordOf(id)).removed).toBe(false);
  await expect.poll(() => page.getByText("It was taken off the rack").count()).toBe(0);
  // What is typed from then on is saved on top of that.
  await page.getByLabel("Title").fill("Back again");
  await expect.poll(async () => (await recordOf(id)).content.garment.title, {timeout: 15_000}).toBe("Back again");
  await page.context().close();
});

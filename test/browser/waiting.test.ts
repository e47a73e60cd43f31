// What is written without a server reaches the rack once, and nothing that somebody else wrote meanwhile is lost.
import type {Page} from "playwright-core";
import {afterAll, beforeAll, expect, test} from "vitest";
import type {GarmentRecord, RackPage} from "../../store/model.ts";
import {desk, expectAccessible, openWorkshop, phone, shot, type Workshop} from "./bench.ts";

let shop: Workshop;
beforeAll(async () => {
  shop = await openWorkshop();
});
afterAll(() => shop.close());

const find = async (text: string) => ((await (await fetch(`${shop.address}/api/rack?text=${encodeURIComponent(text)}`)).json()) as RackPage).rows;
const recordOf = async (id: string) => (await (await fetch(`${shop.address}/api/garments/${id}`)).json()) as GarmentRecord;
const waitForWorker = async (page: Page) => {
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  await page.reload();
};

test("a garment hung up without a server waits under its own name, and hangs on the rack once when the server is back", async () => {
  const page = await shop.page(phone);
  await page.goto(`${shop.address}/examine`);
  await page.getByLabel("Number").waitFor();
  await waitForWorker(page);
  await page.getByLabel("Number").waitFor();
  await shop.stopServer();
  await page.getByLabel("Number").fill("market-1");
  await page.getByLabel("Title").fill("Found at the market");
  await page.getByRole("button", {name: "Hang it on the rack"}).click();
  await page.getByText(/The change of garment market-1 waits on this device/).waitFor();
  expect(await page.getByRole("button", {name: "Hang it on the rack"}).count()).toBe(0);
  await page.getByLabel("Kept where").fill("the van");
  await page.getByText("kept on this device until the server is back").waitFor();
  await page.reload();
  await expect.poll(() => page.getByLabel("Kept where").inputValue()).toBe("the van");
  await shot(page, "journey-waiting-phone");
  await expectAccessible(page);
  await page.goto(`${shop.address}/examine`);
  await expect.poll(() => page.getByLabel("Title").inputValue()).toBe("");
  await shop.startServer();
  await expect.poll(async () => (await find("market-1")).length, {timeout: 40_000}).toBe(1);
  await expect.poll(() => page.getByText(/waits on this device/).count()).toBe(0);
  const [{id}] = (await find("market-1")) as [RackPage["rows"][0]];
  expect((await recordOf(id)).content).toMatchObject({place: "the van", garment: {title: "Found at the market"}});
  await page.context().close();
});

test("a garment changed here without a server and elsewhere meanwhile is told of, and both changes are put together", async () => {
  const [{id}] = (await find("0160")) as [RackPage["rows"][0]];
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/examine/${id}`);
  await page.locator(".ledger li").first().waitFor();
  await waitForWorker(page);
  await page.locator(".ledger li").first().waitFor();
  await shop.stopServer();
  await page.getByLabel("Kept where").fill("shelf 3");
  await page.getByText("kept on this device until the server is back").waitFor();
  await page.goto(`${shop.address}/books`);
  await shop.startServer();
  const {rev, content} = await recordOf(id);
  const other = await fetch(`${shop.address}/api/garments/${id}`, {
    method: "PUT",
    headers: {"content-type": "application/json", "x-ticking-who": "Ines"},
    body: JSON.stringify({base: rev, content: {...content, place: "attic", tags: [...content.tags, "mended"]}, what: "changed"}),
  });
  // The page may have been quicker: then there is nothing to put together.
  expect(other.status).toBe(200);
  await page.getByText(/Somebody else changed garment 0160, too/).waitFor({timeout: 40_000});
  await shot(page, "journey-conflict-note-desk");
  await expectAccessible(page);
  await page.getByRole("link", {name: "garment 0160"}).click();
  await page.getByRole("button", {name: "Save both together"}).click();
  await expect.poll(async () => (await recordOf(id)).content).toMatchObject({place: "shelf 3", tags: expect.arrayContaining(["mended"])});
  await expect.poll(() => page.getByText(/Somebody else changed/).count()).toBe(0);
  await page.context().close();
});

// Every screen, on a desk and on a phone, by day and by night: no breach of WCAG that axe can find, nothing runs off the page, no fault in the page.
import {afterAll, beforeAll, expect, test} from "vitest";
import type {RackPage} from "../../store/model.ts";
import {desk, expectAccessible, expectNoOverflow, openWorkshop, phone, shot, type Workshop} from "./bench.ts";
import {lookAtEach, type Look} from "./every-light.ts";

let shop: Workshop;
let id: string;
beforeAll(async () => {
  shop = await openWorkshop();
  const page = (await (await fetch(`${shop.address}/api/rack?text=0147`)).json()) as RackPage;
  id = page.rows[0]!.id;
});
afterAll(() => shop.close());

const screens: readonly Look[] = [
  ["examine-blank", () => "/", ".figure"],
  ["examine", () => `/examine/${id}`, ".ledger li"],
  ["rack", () => "/rack", ".hanger-link"],
  ["rack-list", () => "/rack?layout=list", ".list-title"],
  ["bring-in", () => "/rack/bring-in", "h1"],
  ["look-alikes", () => "/rack/alike", "h1"],
  ["archive", () => "/rack/archive", "h1"],
  ["history", () => `/rack/history/${id}`, "h1"],
  ["books", () => "/books", ".book-list li"],
  ["book", () => "/books/marrowfield", ".book-rules li"],
  ["book-edit", () => "/books/marrowfield/edit", "textarea"],
];

lookAtEach(screens, () => shop);

test.each([["desk", desk, "light"], ["phone", phone, "dark"]] as const)("the sheets over the examine screen on a %s", async (device, viewport, colorScheme) => {
  const page = await shop.page(viewport, {colorScheme});
  await page.goto(`${shop.address}/examine/${id}`);
  await page.locator(".ledger li").first().waitFor();
  const sheets: [string, () => Promise<void>][] = [
    ["place", () => page.getByRole("button", {name: /^face of the care label/}).click()],
    ["doubt", () => page.locator(".sign").nth(8).click()],
    ["keys", () => page.keyboard.press("?")],
  ];
  for (const [name, open] of sheets) {
    await open();
    await page.getByRole("dialog").waitFor();
    await shot(page, `sheet-${name}-${device}`);
    await expectAccessible(page);
    await expectNoOverflow(page);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
  }
  expect(shop.faults.splice(0)).toEqual([]);
  await page.context().close();
});

test("the walk-through on a phone", async () => {
  const page = await shop.page(phone, {walk: true});
  await page.goto(shop.address);
  await page.getByRole("dialog").waitFor();
  await shot(page, "sheet-walk-phone");
  await expectAccessible(page);
  await page.context().close();
});

// What a garment, a lot and the shop are worth, as a dealer goes from no sale at all to an offer and a sale, in a real browser against the real server.
import {readFileSync} from "node:fs";
import type {Page} from "playwright-core";
import {afterAll, beforeAll, expect, test} from "vitest";
import type {GarmentRecord, RackPage, SalePage} from "../../store/model.ts";
import type {LotAnswer, ShopBooks, WorthAnswer} from "../../worth/answer.ts";
import type {Terms} from "../../worth/model.ts";
import {readAmount, sayAmount} from "../../web/worth/money.ts";
import {sayAbout} from "../../web/worth/say.ts";
import {desk, expectAccessible, expectNoOverflow, openWorkshop, phone, shot, type Workshop} from "./bench.ts";
import {lookAtEach, type Look} from "./every-light.ts";
import {madeUpSales} from "./made-up-sales.ts";

let shop: Workshop;
/** Garment 0147 of the demo, dated well. */
let id: string;
beforeAll(async () => {
  shop = await openWorkshop();
  id = (await rows("0147"))[0]!.id;
  // Sold garments of the demo are dated in the background, and prices move with their dates.
  while ((await ask<RackPage>("/api/rack?sureness=undated&limit=1")).total > 0) await new Promise((resolve) => setTimeout(resolve, 200));
});
afterAll(() => shop.close());

const ask = async <T>(path: string, body?: unknown, method = "POST") =>
  (await (await fetch(shop.address + path, body === undefined ? {} : {method, headers: {"content-type": "application/json"}, body: JSON.stringify(body)})).json()) as T;
const rows = async (text: string) => (await ask<RackPage>(`/api/rack?text=${encodeURIComponent(text)}`)).rows;
const sales = (question: string) => ask<SalePage>(`/api/sales?${question}`);
const recordOf = (one: string) => ask<GarmentRecord>(`/api/garments/${one}`);
const hang = (number: string, type: string) => ask<GarmentRecord>("/api/garments", {content: {garment: {garment: number, title: `Something numbered ${number}`, type, saw: {}}}});
const dollars = (text: string) => readAmount(text.replace(/^-/, ""), "USD", "en-US").cents! * (text.startsWith("-") ? -1 : 1);
const usd = (cents: number) => sayAmount({cents, currency: "USD"}, "en-US");

/** The lines of a sum on the page and what stands below them, in cents. */
async function sumOf(page: Page, region: string): Promise<{lines: number[]; foot: number}> {
  const table = page.getByRole("region", {name: region}).locator(".sum");
  const lines = (await table.locator("tbody td").allTextContents()).map(dollars);
  return {lines, foot: dollars((await table.locator("tfoot td").textContent())!)};
}
const total = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

test.each([["desk", desk], ["phone", phone]] as const)("where there are too few sales the screen says so, and leads to writing one down, on a %s", async (device, viewport) => {
  const {id: waistcoat} = await hang(`few-${device}`, `waistcoat of the ${device}`);
  const page = await shop.page(viewport);
  await page.goto(`${shop.address}/worth/${waistcoat}`);
  await page.getByRole("heading", {name: "Too few sales to say"}).waitFor();
  await page.getByText(`No sale of waistcoat of the ${device} is written down.`).waitFor();
  await shot(page, `worth-few-${device}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  await page.getByRole("link", {name: "Write a sale down"}).click();
  expect(await page.getByLabel("Kind of garment").inputValue()).toBe(`waistcoat of the ${device}`);
  await page.getByLabel("Price", {exact: true}).fill("12,3,4");
  await page.getByText("An amount like 120 or 89.50").waitFor();
  await page.getByLabel("Made from").fill("1970");
  await page.getByLabel("Made until").fill("1968");
  await page.getByRole("button", {name: "Write it down"}).click();
  await page.getByText("2 fields have to be mended first.").waitFor();
  await shot(page, `sale-slips-${device}`);
  await expectAccessible(page);
  expect((await sales(`kind=${encodeURIComponent(`waistcoat of the ${device}`)}`)).total).toBe(0);
  // What is typed survives a reload.
  await page.reload();
  await page.getByLabel("Price", {exact: true}).fill("1,250.50");
  await page.getByLabel("Made until").fill("1972");
  await page.getByRole("button", {name: "Write it down"}).click();
  await page.getByText("Written down.").waitFor();
  const written = (await sales(`kind=${encodeURIComponent(`waistcoat of the ${device}`)}`)).rows[0]!;
  expect(written.sale).toMatchObject({price: {cents: 125050, currency: "USD"}, madeFrom: "1970-01", madeUntil: "1972-12", fees: null});
  await page.getByRole("button", {name: "Undo"}).click();
  await page.getByText("Not written down after all.").waitFor();
  expect((await sales(`kind=${encodeURIComponent(`waistcoat of the ${device}`)}`)).total).toBe(0);
  await page.context().close();
});

test.each([["desk", desk], ["phone", phone]] as const)("sales are brought in with their columns guessed, mended, and then all of them, on a %s", async (device, viewport) => {
  const page = await shop.page(viewport);
  const text = madeUpSales(150, device === "desk" ? 7 : 11);
  const before = (await sales("limit=1")).total;
  await page.goto(`${shop.address}/sales/bring-in`);
  await page.getByLabel("Or pasted here").fill(text.replace(/(\n[^\n]*?),good,\d+\.\d\d/, "$1,good,dear"));
  await page.getByText(/1 thing has to be mended first/).waitFor();
  expect(await page.getByLabel("Column Condition is taken as").inputValue()).toBe("grade");
  expect(await page.getByLabel("Column Where is taken as").inputValue()).toBe("channel");
  expect(await page.getByRole("button", {name: "Nothing to bring in yet"}).isDisabled()).toBe(true);
  await shot(page, `sales-bring-in-${device}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  await page.getByLabel("Or pasted here").fill(text);
  await page.getByRole("button", {name: "Bring in 150 sales"}).click();
  await page.getByText(/150 sales brought in/).waitFor();
  expect((await sales("limit=1")).total).toBe(before + 150);
  await page.context().close();
});

test.each([["desk", desk], ["phone", phone]] as const)("from the examine screen to a price, an asked price and an offer whose sum adds up, on a %s", async (device, viewport) => {
  const page = await shop.page(viewport);
  await page.goto(`${shop.address}/examine/${id}`);
  await page.getByRole("link", {name: "What it is worth"}).click();
  const answer = await ask<WorthAnswer>("/api/worth", {id});
  await expect.poll(() => page.locator(".price-verdict h1").textContent()).toBe(sayAbout({cents: answer.price!.typical, currency: "USD"}, "en-US"));
  await page.getByText(/^8 in 10 between/).waitFor();
  expect(await page.locator(".price-lines li").count()).toBe(answer.branches.length + (answer.branches.length === 1 ? 0 : 1));
  expect(await page.locator(".tape .cross").count()).toBe(20);
  expect(await page.locator(".used li").count()).toBe(answer.used.length);
  await page.getByLabel("The seller asks").fill("4000");
  await page.getByRole("status").filter({hasText: "Leave it at $4,000."}).waitFor();
  await page.getByLabel("The seller asks").fill("20");
  await page.getByRole("status").filter({hasText: "Buy at $20."}).waitFor();
  const {lines, foot} = await sumOf(page, "Offer");
  expect(total(lines)).toBe(foot);
  expect(foot).toBe(answer.offer!.most);
  expect(await page.locator(".three dd").allTextContents()).toEqual([usd(answer.offer!.most), usd(answer.offer!.list), expect.stringMatching(/^\$/)]);
  await shot(page, `worth-${device}`);
  // What was typed is still there when the phone wakes up.
  await page.reload();
  await page.getByRole("status").filter({hasText: "Buy at $20."}).waitFor();
  await page.getByLabel("The seller asks").fill("12,3,4");
  await page.getByText("An amount like 120 or 89.50").waitFor();
  await page.context().close();
});

test("the terms are changed over the price, each cost a line of the sum, and saved for the shop", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/worth/${id}`);
  await page.getByRole("button", {name: "terms"}).click();
  const sheet = page.getByRole("dialog");
  await sheet.getByLabel("Margin").fill("120");
  await sheet.getByText("At most 95 in a hundred").waitFor();
  expect(await sheet.getByRole("button", {name: "Save the terms"}).isDisabled()).toBe(true);
  await expectAccessible(page);
  for (const [name, text] of [["Margin", "25"], ["Kept by the channel", "12,5"], ["and for each sale", "0.30"], ["Postage", "6"], ["Cleaning and mending", "8"], ["Money tied up for a year", "10"]] as const) await sheet.getByLabel(name).fill(text);
  await sheet.getByRole("button", {name: "Save the terms"}).click();
  await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
  expect((await ask<{value: Terms}>("/api/settings/terms")).value).toMatchObject({margin: 0.25, feeShare: 0.125, feeFixed: 30, postage: 600, cleaning: 800, yearlyCost: 0.1});
  const {offer} = await ask<WorthAnswer>("/api/worth", {id});
  await expect.poll(async () => (await sumOf(page, "Offer")).foot).toBe(offer!.most);
  const {lines, foot} = await sumOf(page, "Offer");
  expect(lines.length).toBeGreaterThan(5);
  expect(total(lines)).toBe(foot);
  await page.context().close();
});

test("the terms are saved on their own screen, and taken back", async () => {
  const page = await shop.page(phone);
  await page.goto(`${shop.address}/terms`);
  const margin = async () => (await ask<{value: Terms}>("/api/settings/terms")).value.margin;
  const before = await margin();
  await page.getByLabel("Margin").fill("31");
  await page.reload();
  expect(await page.getByLabel("Margin").inputValue()).toBe("31");
  await page.getByRole("button", {name: "Save the terms"}).click();
  await expect.poll(margin).toBe(0.31);
  await page.getByRole("button", {name: "Undo"}).click();
  await expect.poll(margin).toBe(before);
  await expect.poll(() => page.getByLabel("Margin").inputValue()).toBe(String(before * 100));
  await page.context().close();
});

test("what a look is worth in money leads to the look", async () => {
  const page = await shop.page(desk);
  const {offer} = await ask<WorthAnswer>("/api/worth", {id});
  await page.goto(`${shop.address}/worth/${id}`);
  await page.getByText("then each look that is left has its worth in money").waitFor();
  await page.getByLabel("The seller asks").fill(usd(offer!.most));
  const {looks} = await ask<WorthAnswer>("/api/worth", {id, asked: offer!.most});
  const best = looks!.looks.find(({worth}) => worth > 0)!;
  const line = page.getByRole("region", {name: "What a look is worth"}).locator("li", {hasText: best.name}).first();
  await line.getByText(sayAbout({cents: best.worth, currency: "USD"}, "en-US"), {exact: true}).waitFor();
  await line.getByRole("link").click();
  await page.getByRole("dialog").waitFor();
  expect(page.url()).toContain(`/examine/${id}?look=`);
  await page.context().close();
});

test("a sale behind the price is one press away, changed, and changed back", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/worth/${id}`);
  const {used} = await ask<WorthAnswer>("/api/worth", {id});
  await page.locator(".used a").first().click();
  await page.getByRole("dialog", {name: "A sale"}).waitFor();
  const first = await ask<SalePage["rows"][0]>(`/api/sales/${used[0]!.id}`);
  expect(await page.getByLabel("Sold on").inputValue()).toBe(first.sale.soldOn);
  await page.getByLabel("Note").fill("seen with my own eyes");
  await page.getByRole("button", {name: "Save the sale"}).click();
  await page.getByText("Changed.").waitFor();
  expect((await ask<typeof first>(`/api/sales/${first.id}`)).sale.note).toBe("seen with my own eyes");
  await page.getByRole("button", {name: "Undo"}).click();
  await page.getByText("As it was before.").waitFor();
  expect((await ask<typeof first>(`/api/sales/${first.id}`)).sale).toEqual(first.sale);
  await page.context().close();
});

test("sales are found, narrowed down, sorted and taken out with the keyboard alone, and the address says how", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/sales`);
  await page.getByLabel("Find among the sales").focus();
  await page.keyboard.type("auction");
  const found = (await sales("text=auction&limit=1")).total;
  await expect.poll(() => page.locator("h1").textContent()).toBe(`${found} sales`);
  await page.getByText("Narrow down").focus();
  await page.keyboard.press("Enter");
  await page.getByRole("combobox", {name: "Kind", exact: true}).selectOption("jacket");
  await page.getByLabel("sorted by").selectOption("price true");
  const dearest = (await sales("text=auction&kind=jacket&sort=price&limit=1")).rows[0]!;
  await expect.poll(() => page.locator(".sale-price").first().textContent()).toBe(usd(dearest.sale.price.cents));
  expect(page.url()).toMatch(/text=auction/);
  await page.reload();
  await expect.poll(() => page.locator(".sale-price").first().textContent()).toBe(usd(dearest.sale.price.cents));
  await page.locator(".sale-what button").first().focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", {name: "Take it out"}).focus();
  await page.keyboard.press("Enter");
  await page.getByText("Taken out of the sales.").waitFor();
  expect((await ask<typeof dearest>(`/api/sales/${dearest.id}`)).removed).toBe(true);
  await page.getByRole("button", {name: "Undo"}).focus();
  await page.keyboard.press("Enter");
  await page.getByText("Put back among the sales.").waitFor();
  expect((await ask<typeof dearest>(`/api/sales/${dearest.id}`)).removed).toBe(false);
  await page.context().close();
});

test("a sale that somebody else saved in between is told, and what was typed is kept", async () => {
  const page = await shop.page(desk);
  const {id: sale} = await ask<SalePage["rows"][0]>("/api/sales", {sale: {soldOn: "2026-01-05", price: {cents: 5000, currency: "USD"}, kind: "apron"}});
  await page.goto(`${shop.address}/sales?sale=${sale}`);
  await page.getByLabel("Note").fill("mine");
  await ask(`/api/sales/${sale}`, {base: 1, sale: {soldOn: "2026-01-05", price: {cents: 6000, currency: "USD"}, kind: "apron", note: "theirs"}}, "PUT");
  await page.getByRole("button", {name: "Save the sale"}).click();
  await page.getByRole("alert").waitFor();
  expect(await page.getByLabel("Note").inputValue()).toBe("mine");
  await page.getByRole("button", {name: "Save the sale"}).click();
  await page.getByText("Changed.").waitFor();
  expect((await ask<SalePage["rows"][0]>(`/api/sales/${sale}`)).sale.note).toBe("mine");
  await page.context().close();
});

test("what is shown of the sales is taken out as a table", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/sales?kind=shirt`);
  await page.getByText("Take out a list").click();
  const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", {name: "a table (CSV)"}).click()]);
  const lines = readFileSync(await file.path(), "utf8").trim().split("\n");
  expect(lines.length - 1).toBe((await sales("kind=shirt&limit=1")).total);
  await page.context().close();
});

test.each([["desk", desk], ["phone", phone]] as const)("costs and the sale of a garment are written down; its sale counts at once, and is taken back, on a %s", async (device, viewport) => {
  const {id: sold} = await hang(`sold-${device}`, "trousers");
  const page = await shop.page(viewport);
  await page.goto(`${shop.address}/worth/${sold}`);
  await page.getByRole("button", {name: "Write down what it cost"}).click();
  await page.getByLabel("Paid", {exact: true}).fill("40");
  await page.getByLabel("Bought on").fill("2026-05-01");
  await page.getByRole("button", {name: "Add a cost"}).click();
  await page.getByLabel("How much").fill("12.50");
  await page.getByText("What it was for").waitFor();
  await page.getByLabel("What for").fill("zip mended");
  await shot(page, `worth-costs-${device}`);
  await expectAccessible(page);
  // What was typed outlives a closed sheet and a reload.
  await page.reload();
  await page.getByRole("button", {name: "Write down what it cost"}).click();
  expect(await page.getByLabel("What for").inputValue()).toBe("zip mended");
  // Somebody else saves in between: it is told, and their other changes stay.
  const {rev, content} = await recordOf(sold);
  await ask(`/api/garments/${sold}`, {base: rev, what: "changed", content: {...content, place: "rail 9"}}, "PUT");
  await page.getByRole("button", {name: "Save", exact: true}).click();
  await page.getByText("somebody else saved it in between").waitFor();
  await page.getByRole("button", {name: "Save", exact: true}).click();
  await page.getByText("Costs saved.").waitFor();
  expect((await recordOf(sold)).content).toMatchObject({place: "rail 9", paid: {cents: 4000, currency: "USD"}, money: {boughtOn: "2026-05-01", costs: [{what: "zip mended", amount: {cents: 1250, currency: "USD"}}]}});
  await page.getByRole("button", {name: "Mark as sold"}).click();
  const sheet = page.getByRole("dialog", {name: "Sold"});
  await sheet.getByLabel("Sold on").fill("2026-04-01");
  await sheet.getByText("Before it was bought").waitFor();
  await sheet.getByLabel("Sold on").fill("2026-08-01");
  await sheet.getByLabel("Price", {exact: true}).fill("110");
  await sheet.getByLabel("Fees").fill("111");
  await sheet.getByText("More than was paid for it").waitFor();
  await sheet.getByLabel("Fees").fill("11");
  await sheet.getByLabel("Postage").fill("6.50");
  await sheet.getByLabel("Sold through").fill("market stall");
  await expectAccessible(page);
  await sheet.getByRole("button", {name: "Mark as sold"}).click();
  await page.getByText("Marked as sold").waitFor();
  // 110.00 - 40.00 - 12.50 - 11.00 - 6.50
  expect(await sumOf(page, "What was spent and earned")).toEqual({lines: [11000, -4000, -1250, -1100, -650], foot: 4000});
  expect((await sales("own=true")).rows.find(({garment}) => garment === sold)?.sale).toMatchObject({price: {cents: 11000, currency: "USD"}, fees: {cents: 1100}});
  await shot(page, `worth-sold-${device}`);
  await page.getByRole("button", {name: "Undo"}).click();
  await page.getByRole("button", {name: "Mark as sold"}).waitFor();
  expect((await sales("own=true")).rows.some(({garment}) => garment === sold)).toBe(false);
  await page.context().close();
});

test.each([["desk", desk], ["phone", phone]] as const)("a lot is put together from the rack and by numbers, with some not examined, and has an offer, on a %s", async (device, viewport) => {
  const page = await shop.page(viewport);
  await page.goto(`${shop.address}/rack?text=0152&layout=${device === "desk" ? "list" : "hangers"}`);
  await page.getByLabel("Pick 0152").check();
  await page.getByRole("button", {name: "Put into the lot"}).click();
  await page.getByLabel("or type their numbers").fill("0147, 0155 nothing-like-it");
  await page.getByRole("button", {name: "Add them"}).click();
  await page.getByText("nothing-like-it: not on the rack").waitFor();
  await page.getByLabel("Find on the rack").fill("0166");
  await page.getByRole("button", {name: /^Add 0166/}).click();
  await page.getByLabel("Not examined").fill("4.5");
  await page.getByText("A whole number, like 40").waitFor();
  await page.getByLabel("Not examined").fill("40");
  await page.getByLabel("The seller asks").fill("300");
  const ids = (await Promise.all(["0152", "0147", "0155", "0166"].map(rows))).map(([row]) => row!.id);
  const answer = await ask<LotAnswer>("/api/worth/lot", {ids, unexamined: 40, asked: 30000});
  await expect.poll(() => page.locator(".price-verdict h1").textContent()).toBe(sayAbout({cents: answer.total!.typical, currency: "USD"}, "en-US"));
  await page.getByRole("status").filter({hasText: `${answer.offer!.atAsked!.buy ? "Buy" : "Leave it"} at $300.`}).waitFor();
  const {lines, foot} = await sumOf(page, "Offer");
  expect([total(lines), foot]).toEqual([answer.offer!.most, answer.offer!.most]);
  await page.locator("li", {hasText: "0147"}).getByLabel("drawn blindly").check();
  await page.getByText("Priced like the one that was drawn blindly.").waitFor();
  await shot(page, `lot-full-${device}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  await page.locator("li", {hasText: "0147"}).getByRole("button", {name: /^Take out/}).click();
  await expect.poll(() => page.locator(".lot-garments li").count()).toBe(3);
  await page.getByRole("button", {name: "Undo"}).click();
  await page.reload();
  await expect.poll(() => page.locator(".lot-garments li").count()).toBe(4);
  expect(await page.locator("li", {hasText: "0147"}).getByLabel("drawn blindly").isChecked()).toBe(true);
  await page.context().close();
});

test("the books of the shop say what was earned, and their figures are those that were written down", async () => {
  for (const [i, [price, paid]] of [[11000, 4000], [25000, 9000], [6000, 7000]].entries()) {
    const {id: one, rev, content} = await hang(`book-${i}`, i === 2 ? "shirt" : "trousers");
    const money = {boughtOn: `2019-0${i + 1}-03`, costs: [], listedOn: null, sold: null};
    const {rev: then} = await ask<GarmentRecord>(`/api/garments/${one}`, {base: rev, what: "changed", content: {...content, paid: {cents: paid, currency: "USD"}, money}}, "PUT");
    await ask(`/api/garments/${one}/sold`, {base: then, on: `2019-0${i + 4}-10`, price: {cents: price, currency: "USD"}, channel: "own shop"});
  }
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/shop?from=2019-04-01&until=2019-06-30`);
  const {books} = await ask<ShopBooks>("/api/shop?from=2019-04-01&until=2019-06-30");
  // 110 - 40 + 250 - 90 + 60 - 70
  expect(books[0]!.profit).toBe(22000);
  await expect.poll(() => page.locator("h1").textContent()).toBe("$220");
  await page.getByText("Month by month, in figures").click();
  const april = page.getByRole("row", {name: /^April 2019/});
  expect((await april.getByRole("cell").allTextContents()).at(-1)).toBe("$70");
  await expect.poll(() => page.locator(".taken").count()).toBe(3);
  await page.getByRole("button", {name: "this year"}).click();
  await expect.poll(() => page.url()).toMatch(/from=\d{4}-01-01$/);
  await page.context().close();
});

const screens: readonly Look[] = [
  ["worth-garment", () => `/worth/${id}`, ".used li"],
  ["sales", () => "/sales", ".sale-what"],
  ["sale-sheet", () => "/sales?write=new", ".sale-form"],
  ["sales-bring-in-empty", () => "/sales/bring-in", "h1"],
  ["lot-empty", () => "/lot", "h1"],
  ["shop", () => "/shop", ".accounts"],
  ["terms", () => "/terms", ".terms"],
];

lookAtEach(screens, () => shop);

// Measuring and looking a garment over, in a real browser: what is typed and pressed is graded at once, is there after a reload, and stands on the examine screen.
import {afterAll, beforeAll, expect, test} from "vitest";
import type {Page} from "playwright-core";
import type {GarmentRecord, RackPage} from "../../store/model.ts";
import {desk, expectAccessible, expectNoOverflow, openWorkshop, phone, shot, type Workshop} from "./bench.ts";

let shop: Workshop;
let id: string;
beforeAll(async () => {
  shop = await openWorkshop();
  id = ((await (await fetch(`${shop.address}/api/rack?text=0147`)).json()) as RackPage).rows[0]!.id;
});
afterAll(() => shop.close());

const field = (page: Page, name: RegExp) => page.getByRole("textbox", {name});

async function lay(page: Page, lengths: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, typed] of Object.entries(lengths)) await page.locator(`input[data-point="${name}"]`).fill(typed);
}

/** Presses a spot of a side's drawing, in parts of its width and height. */
async function press(page: Page, side: string, x: number, y: number): Promise<void> {
  const drawing = page.locator(`.flaw-panel.${side} .figure-sheet`);
  await drawing.scrollIntoViewIfNeeded();
  const box = (await drawing.boundingBox())!;
  await drawing.click({position: {x: box.width * x, y: box.height * y}});
}

const kept = async () => (await (await fetch(`${shop.address}/api/garments/${id}`)).json()) as GarmentRecord;

test("a garment is measured, tagged, looked over and graded; all of it is kept, and the odd hem stands on the examine screen", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/measure/${id}`);
  await page.getByRole("heading", {name: "Not looked at yet"}).waitFor();
  await page.getByRole("list", {name: "Cautions"}).getByText("No guarantee of authenticity").waitFor();

  // By the keyboard: Enter goes from point to point, and the point at hand is lit on the drawing.
  await field(page, /^Waist/).first().focus();
  await page.keyboard.type("17");
  await page.keyboard.press("Enter");
  expect(await page.evaluate(() => (document.activeElement as HTMLElement).dataset.point)).toBe("hip");
  await expect.poll(() => page.locator(".lay.at").count()).toBe(1);
  expect(await page.locator(".lay-name").textContent()).toBe("hip");
  expect(await page.locator(".measure-field").first().textContent()).toContain("34 in all round");
  await lay(page, {hip: "21", "front-rise": "11 1/4", thigh: "12 1/2", hem: "8", inseam: "28", outseam: "38 1/2"});
  await expect.poll(() => page.locator(".measure-doubt").count()).toBe(0);

  await page.getByLabel("Size on the tag").fill("W 34 L 32");
  await page.getByText("shortened hem, by about 4 in").waitFor();

  await page.getByRole("button", {name: "Note a shortened hem with its state"}).click();
  await page.getByRole("heading", {level: 1, name: "Excellent"}).waitFor();
  await page.getByRole("checkbox", {name: "shortened hem"}).uncheck();

  await page.getByRole("radio", {name: "light"}).check();
  await page.getByRole("radio", {name: "washed"}).check();
  await press(page, "front", 0.72, 0.66);
  await page.getByRole("dialog", {name: "What is wrong at the left knee"}).waitFor();
  await page.getByRole("radio", {name: "hole", exact: true}).check();
  await page.getByRole("button", {name: "Done"}).click();
  await page.getByRole("heading", {level: 1, name: "Very good"}).waitFor();
  await page.getByText("Hole at the left knee (8 points). Without it: excellent.").waitFor();
  await expect.poll(async () => (await kept()).content.state?.flaws.length, {timeout: 60_000}).toBe(1);

  const {sizes, state} = (await kept()).content;
  expect(sizes!.measures.find(({point}) => point === "front-rise")!.length).toEqual({typed: "11 1/4", unit: "in"});
  expect(state!.flaws[0]).toMatchObject({kind: "hole", place: "left knee", side: "front", severity: "plain"});

  await page.reload();
  await page.getByRole("heading", {level: 1, name: "Very good"}).waitFor();
  expect(await page.locator('input[data-point="front-rise"]').inputValue()).toBe("11 1/4");

  // Undone like anything else on this device.
  await page.getByRole("button", {name: /^Flaw 1/}).click();
  await page.getByRole("button", {name: "Take it out"}).click();
  await page.getByRole("heading", {level: 1, name: "Excellent"}).waitFor();
  await expect.poll(async () => (await kept()).content.state?.flaws.length, {timeout: 60_000}).toBe(0);
  await page.getByRole("button", {name: "undo"}).click();
  await page.getByRole("heading", {level: 1, name: "Very good"}).waitFor();
  await expect.poll(async () => (await kept()).content.state?.flaws.length, {timeout: 60_000}).toBe(1);

  await page.getByRole("link", {name: "When was it made?"}).click();
  await page.locator(".state-line .odd-box").waitFor();
  expect(await page.locator(".state-line").textContent()).toContain("It does not move the date.");
  expect(shop.faults.splice(0)).toEqual([]);
  await page.context().close();
});

test("a slip of the hand is told beside its field once it is left, and not while it is typed", async () => {
  const page = await shop.page(phone);
  await page.goto(`${shop.address}/measure`);
  const waist = page.locator('input[data-point="waist"]');
  await waist.fill("34");
  expect(await page.locator(".measure-doubt").count()).toBe(0);
  await page.keyboard.press("Tab");
  await page.getByText("enter the half, 17 in", {exact: false}).waitFor();
  expect(await waist.getAttribute("aria-invalid")).toBe("true");
  // Kept on this device though the garment hangs on no rack yet.
  await page.reload();
  await expect.poll(() => page.locator('input[data-point="waist"]').inputValue()).toBe("34");
  expect(shop.faults.splice(0)).toEqual([]);
  await page.context().close();
});

test("a body is compared with the garment, stays on this device, and is forgotten on request", async () => {
  const page = await shop.page(phone);
  await page.goto(`${shop.address}/measure/${id}`);
  await page.getByLabel("Body: waist girth").fill("33 in");
  await page.getByLabel("Body: inside leg length").fill("81 cm");
  await page.locator(".fit-verdict", {hasText: "too short at the inseam"}).waitFor();
  await page.reload();
  await page.locator(".fit-verdict", {hasText: "too short at the inseam"}).waitFor();
  expect(JSON.stringify((await kept()).content)).not.toContain("81 cm");
  await page.getByRole("button", {name: "Forget this body"}).click();
  await expect.poll(() => page.locator(".fit-verdict").count()).toBe(0);
  await page.context().close();
});

test.each([["desk", desk, "light"], ["desk", desk, "dark"], ["phone", phone, "light"], ["phone", phone, "dark"]] as const)("the measuring screen on a %s", async (device, viewport, colorScheme) => {
  const page = await shop.page(viewport, {colorScheme});
  await page.goto(`${shop.address}/measure/${id}`);
  await page.locator('input[data-point="inseam"]').focus();
  await shot(page, `measure-${device}-${colorScheme}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  await page.locator(".flaw-panels").scrollIntoViewIfNeeded();
  await shot(page, `measure-flaws-${device}-${colorScheme}`);
  await press(page, "back", 0.3, 0.3);
  await page.getByRole("dialog").waitFor();
  await shot(page, `sheet-flaw-${device}-${colorScheme}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  expect(shop.faults.splice(0)).toEqual([]);
  await page.context().close();
});

test("a changed rule shows what it would do on the rack, is refused while it cannot stand, and grades anew once saved", async () => {
  const page = await shop.page(desk);
  await page.goto(`${shop.address}/grade-rule`);
  await page.getByText("No garment changes its grade.").waitFor();
  const hole = page.locator(".rule-line", {hasText: /^Hole/});
  await hole.locator("summary").click();
  await hole.getByLabel("Slight").fill("1");
  await hole.getByLabel("Plain").fill("2");
  await page.getByText("1 garment changes its grade.").waitFor();
  await page.getByRole("link", {name: "0147"}).waitFor();
  await shot(page, "grade-rule-desk");
  await hole.getByLabel("Slight").fill("50");
  await page.getByRole("alert").getByText("points that grow from slight to heavy").waitFor();
  expect(await page.getByRole("button", {name: "Save the rule"}).isDisabled()).toBe(true);
  await hole.getByLabel("Slight").fill("1");
  await page.getByRole("button", {name: "Save the rule"}).click();
  await page.getByText("No garment changes its grade.").waitFor();
  await page.goto(`${shop.address}/measure/${id}`);
  await page.getByRole("heading", {level: 1, name: "Excellent"}).waitFor();

  await page.goto(`${shop.address}/grade-rule`);
  await page.getByRole("button", {name: "The rule that came with ticking"}).click();
  await page.getByText("1 garment changes its grade.").waitFor();
  await page.getByRole("button", {name: "Save the rule"}).click();
  await expect.poll(async () => ((await (await fetch(`${shop.address}/api/settings/grade-rule`)).json()) as {rev: number}).rev).toBe(2);
  expect(shop.faults.splice(0)).toEqual([]);
  await page.context().close();
});

test.each([["desk", desk, "dark"], ["phone", phone, "light"]] as const)("the rule on a %s", async (device, viewport, colorScheme) => {
  const page = await shop.page(viewport, {colorScheme});
  await page.goto(`${shop.address}/grade-rule`);
  await page.locator(".rule-line summary").first().click();
  await page.locator(".rule-preview table").waitFor();
  await shot(page, `grade-rule-${device}-${colorScheme}`);
  await expectAccessible(page);
  await expectNoOverflow(page);
  expect(shop.faults.splice(0)).toEqual([]);
  await page.context().close();
});

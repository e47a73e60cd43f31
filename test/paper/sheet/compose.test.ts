// What a dating sheet says: the verdict with its odds, what does not fit, marks with their sources, and nothing that nobody asked for.
import {beforeAll, expect, test} from "vitest";
import type {Rack} from "../../../commands/rack/rack.ts";
import {gather} from "../../../paper/gather.ts";
import {composeSheet} from "../../../paper/sheet/compose.ts";
import type {Sheet} from "../../../paper/sheet/sheet.ts";
import {saleSchema} from "../../../worth/model.ts";
import {contentOf, hung, materialOf, newRack, now, today} from "../material.ts";

let rack: Rack;
beforeAll(async () => {
  rack = await newRack();
});
const sheetOf = async (number: string, more?: object) => composeSheet(await materialOf(number, rack, more), 3);
const all = (sheet: Sheet) => JSON.stringify({...sheet, code: null});

test("one date: what is named, how likely, nine in ten, and the bounds", async () => {
  const {verdict, garment, on, ribbon} = await sheetOf("0147");
  expect(verdict).toEqual({lead: "Most likely made in", words: "March 1968", odds: "77 in 100, at plant 21 of Marrowfield Dungaree Company", bounds: ["9 in 10: March 1968; March 1973.", "No earlier than Mar 1968, no later than Mar 1976."]});
  expect([garment, on]).toEqual([{number: "0147", title: "Straight-leg trousers, worn label", about: "Trousers · maker: Marrowfield Dungaree Company · sold in: US"}, "25 November 2026"]);
  expect(ribbon.months).toHaveLength(1);
  expect(ribbon.months[0]!.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
});

test("two dates: a later reproduction is named as one, with a ribbon for the making and one for the look", async () => {
  const {verdict, odd, ribbon, evidence} = await sheetOf("0196");
  expect(verdict.lead).toMatch(/^Two dates: most likely a later reproduction, \d+ in 100$/);
  expect(verdict.words).toMatch(/^Made .*, in the look of /);
  expect(odd[0]).toMatch(/^What was copied looks older than what was put in\. The look speaks through .+; the making through .+\.$/);
  expect(ribbon.months.map(({name}) => name)).toEqual(["made, 9 in 10", "look, 9 in 10"]);
  expect(new Set(evidence.map(({note}) => note))).toEqual(new Set([null, "of the older look", "of the making"]));
});

test("an odd mark comes first, told as odd, in the evidence and above it", async () => {
  const {odd, evidence, ribbon} = await sheetOf("0190");
  expect(odd).toHaveLength(1);
  expect(odd[0]).toMatch(/\(\d+ in 100\)\.$/);
  expect(evidence[0]).toMatchObject({odd: true, note: expect.stringMatching(/^does not fit, \d+ in 100$/)});
  expect(ribbon.threads.some((thread) => thread.odd)).toBe(true);
});

test("each mark names its source, how it was seen, its book and the edition", async () => {
  const {evidence} = await sheetOf("0147");
  expect(evidence.length).toBeGreaterThan(3);
  for (const {name, lines} of evidence) expect(lines.join(" "), name).toMatch(/\((seen in the source|partly seen in the source|from memory, not looked up|own judgement)\)\. .+, edition \d+\./);
  expect(evidence[0]).toMatchObject({name: "The rows of numbers", seen: "month 3 (March), year figure 8", weight: 5});
  expect(evidence[0]!.lines[0]).toContain("Read as month and year figure; plant 21.");
});

test("a garment on which nothing was seen is told as not dated", async () => {
  const {verdict, evidence} = await sheetOf("0147", {garment: {garment: "blank", saw: {}}});
  expect(verdict).toEqual({lead: "Nothing was seen that tells a date", words: "Not dated", odds: "", bounds: []});
  expect(evidence).toEqual([]);
});

test("money, the owner's note, places and tags are not told; the worth only when it is asked for, as an estimate with its spread", async () => {
  const content = {...contentOf("0147"), place: "secret shelf", tags: ["secret tag"], paid: {cents: 777, currency: "EUR"}};
  const record = await hung({...content, garment: {...content.garment, note: "secret note"}}, rack);
  const {material} = await gather(record, rack, {on: today});
  expect(all(composeSheet(material!, 3))).not.toMatch(/secret|7\.77|85\.00|EUR/);
  const none = await gather(record, rack, {on: today, worth: true});
  expect(none.material!.worth).toBe("Too few comparable sales are known to say.");
  await rack.store.saveSales(Array.from({length: 60}, (_, i) => ({id: null, base: 0, who: "owner", what: "written down", at: now, sale: saleSchema.parse({soldOn: `2026-${String(1 + (i % 10)).padStart(2, "0")}-15`, price: {cents: 8000 + 150 * (i % 20), currency: "USD"}, kind: "trousers", maker: "marrowfield", madeFrom: "1968-01", madeUntil: "1968-12", grade: "good"})})));
  const some = await gather(record, rack, {on: today, worth: true});
  expect(some.material!.worth).toMatch(/^About USD \d+.*; 8 in 10 such sales bring USD \d+.* to USD \d+.*\. From sales known on 2026-11-25\.$/);
  const [plain, told] = [material!, some.material!].map((one) => composeSheet(one, 3));
  expect(told!.worth).toBe(some.material!.worth);
  expect(told!.number).not.toBe(plain!.number);
});

test("cautions follow the owner's country, each once, and the estimate is always told", async () => {
  const of = async (country: string) => {
    await rack.store.setSetting("shop.owner", JSON.stringify({rev: 1, changedAt: now, changedBy: "owner", value: {name: "Tannery Row", country, address: ["Eastgate"]}}));
    return sheetOf("0147");
  };
  const [us, uk, none] = [await of("US"), await of("GB"), await of("")];
  expect(us.cautions.join(" ")).toContain("26 U.S.C. 170");
  expect(uk.cautions.join(" ")).not.toContain("U.S.C.");
  expect(none.cautions.length).toBeGreaterThan(0);
  for (const {cautions, estimate, owner} of [us, uk, none]) {
    expect(new Set(cautions).size).toBe(cautions.length);
    expect(estimate).toMatch(/no guarantee of authenticity and no certified appraisal/);
    expect(owner).toEqual(["Tannery Row", "Eastgate"]);
  }
});

// What a garment has cost is read back as it was typed, and summed only where one currency holds.
import {expect, test} from "vitest";
import type {Content} from "../../../../store/model.ts";
import {moneyStorySchema} from "../../../../worth/model.ts";
import {sumStory} from "../../../../web/worth/offer/money-story.ts";
import {readStory, typeStory} from "../../../../web/worth/offer/story-entry.ts";

const today = "2026-11-25";
const usd = (cents: number) => ({cents, currency: "USD"});
const part: Pick<Content, "paid" | "asked" | "money"> & {standing: Content["standing"]} = {
  standing: "sold",
  paid: usd(4000),
  asked: usd(12050),
  money: moneyStorySchema.parse({boughtOn: "2026-05-01", costs: [{what: "zip mended", amount: usd(1250), on: null}], listedOn: "2026-06-01", sold: {on: "2026-08-01", price: usd(11000), fees: usd(1100), postage: usd(650), grade: "good"}}),
};

test("costs are read back as they were, the sale untouched", () => {
  expect(readStory(typeStory(part, "EUR"), part, today)).toEqual({part: {paid: part.paid, asked: part.asked, money: part.money}, slips: {costs: {}}});
});

test("an empty cost is none, half of one is told beside it", () => {
  const entry = typeStory({paid: null, asked: null, money: null}, "EUR");
  expect(readStory({...entry, costs: [{what: "", amount: "", on: today}]}, {paid: null, asked: null, money: null}, today).part).toEqual({paid: null, asked: null, money: null});
  expect(readStory({...entry, costs: [{what: "washed", amount: "", on: ""}, {what: "", amount: "5", on: ""}, {what: "mended", amount: "x", on: ""}]}, {paid: null, asked: null, money: null}, today).slips.costs).toEqual({0: expect.any(String), 1: expect.any(String), 2: expect.any(String)});
});

test("days that lie ahead, and a listing before the purchase, are told", () => {
  expect(readStory({...typeStory(part, "USD"), boughtOn: "2026-07-01"}, part, today).slips).toMatchObject({listedOn: "Before it was bought"});
  expect(readStory({...typeStory(part, "USD"), boughtOn: "2027-07-01", listedOn: ""}, part, today)).toMatchObject({part: null, slips: {boughtOn: expect.any(String)}});
});

test("the sum is the price less all that went out", () => {
  // 110.00 - 40.00 - 12.50 - 11.00 - 6.50
  expect(sumStory(part).kept).toEqual(usd(4000));
});

test("there is no sum without what was paid, before the sale, or over several currencies", () => {
  expect(sumStory({...part, paid: null}).kept).toBeNull();
  expect(sumStory({...part, standing: "for sale"})).toMatchObject({kept: null, mixed: false});
  expect(sumStory({...part, paid: {cents: 4000, currency: "EUR"}})).toMatchObject({kept: null, mixed: true});
});

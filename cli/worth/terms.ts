// ticking terms.
import {saveSetting} from "../../commands/rack/setting-by-name.ts";
import {readSetting} from "../../commands/rack/read-setting.ts";
import {printMoney} from "../../worth/index.ts";
import type {Terms} from "../../worth/model.ts";
import {done, withRackToChange, withStore, type RackFlags} from "../rack/with-rack.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {sayPart} from "./say.ts";
import {termsGiven} from "./term-flag.ts";

/** Sets what is given, and shows what holds then. */
export async function termsOfShop({set = [], json, ...flags}: RackFlags & {readonly set?: readonly string[]; readonly json?: boolean}): Promise<void> {
  const given = termsGiven(set);
  if (set.length > 0) {
    await withRackToChange(flags, true, async (rack) => {
      const {rev, value} = await readSetting(rack.store, "terms");
      await done(saveSetting, {name: "terms", base: rev, value: {...value, ...given}}, rack);
    });
  }
  const {value: terms} = await withStore(flags, true, ({store}) => readSetting(store, "terms"));
  if (json) return printJson(terms);
  const page = newPage();
  const lines = linesOf(terms);
  const room = Math.max(...lines.map(([name]) => name.length));
  for (const [name, value, words] of lines) page.item(`${name.padEnd(room)}  `, `${value} · ${words}`);
  printPage(page);
}

function linesOf(terms: Terms): readonly (readonly [keyof Terms, string, string])[] {
  const money = (cents: number) => printMoney(cents, terms.currency);
  return [
    ["currency", terms.currency, "in which the shop reckons"],
    ["margin", sayPart(terms.margin), "of the selling price before tax is to be earned"],
    ["feeShare", sayPart(terms.feeShare), "of the price is kept by the channel"],
    ["feeFixed", money(terms.feeFixed), "kept by the channel for each sale"],
    ["postage", money(terms.postage), "paid by the shop for each sale"],
    ["taxShare", sayPart(terms.taxShare), "tax inside the selling price; local law decides"],
    ["cleaning", money(terms.cleaning), "cleaning and mending of a garment"],
    ["daysToSell", String(terms.daysToSell), "days until a garment is sold"],
    ["yearlyCost", sayPart(terms.yearlyCost), "that money tied up for a year costs"],
    ["room", sayPart(terms.room), "room for haggling in the list price"],
  ];
}

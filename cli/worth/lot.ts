// ticking lot.
import {worthOfLot} from "../../commands/worth/price-lot.ts";
import {termsInUse} from "../../commands/worth/terms-in-use.ts";
import type {Problem} from "../../engine/index.ts";
import {printMoney} from "../../worth/index.ts";
import {NeedsMending} from "../ending.ts";
import {done, garmentNamed, withRack, type RackFlags} from "../rack/with-rack.ts";
import {newPage, printJson, printPage} from "../words/print.ts";
import {centsOf} from "./money-flag.ts";
import * as say from "./problems.ts";
import {termsGiven} from "./term-flag.ts";

export interface LotFlags extends RackFlags {
  readonly unexamined?: string;
  readonly sampled?: readonly string[];
  readonly asked?: string;
  readonly with?: readonly string[];
  readonly json?: boolean;
}

export async function printLot(names: readonly string[], flags: LotFlags): Promise<void> {
  const {unexamined = "0", sampled = []} = flags;
  const terms = termsGiven(flags.with ?? []);
  const {numbers, answer} = await withRack(flags, false, async (rack) => {
    const problems: Problem[] = /^\d{1,5}$/.test(unexamined) ? [] : [say.notMany("--unexamined", unexamined)];
    const asked = centsOf("--asked", flags.asked, (await termsInUse(rack.store, terms)).currency, problems);
    if (problems.length > 0) throw new NeedsMending(problems);
    const records = [];
    for (const name of names) records.push(await garmentNamed(name, rack));
    const drawn = [];
    for (const name of sampled) drawn.push((await garmentNamed(name, rack)).id);
    const input = {ids: records.map(({id}) => id), unexamined: Number(unexamined), sampled: drawn, asked, terms};
    return {numbers: new Map(records.map(({id, content}) => [id, content.garment.garment])), answer: await done(worthOfLot, input, rack)};
  });
  if (flags.json) return printJson(answer);
  const {currency, garments, offer, words, cautions, way} = answer;
  const money = (cents: number) => printMoney(cents, currency);
  const page = newPage();
  for (const one of words) page.say(one, "strong");
  page.head("One by one");
  for (const {id, typical, low, high} of garments) page.item(`${numbers.get(id)}  `, typical === null ? "too few sales of such things" : `${money(typical)}, eight in ten between ${money(low!)} and ${money(high!)}`);
  if (offer) {
    page.head("For the whole lot");
    page.say(`Pay ${money(offer.most)} at most; at ${money(offer.breakEven)} nothing is earned and nothing lost.`);
    if (offer.atAsked) page.say(offer.atAsked.words, offer.atAsked.buy ? "strong" : "odd");
  }
  page.say(way, "quiet");
  page.head("Keep in mind");
  for (const caution of cautions) page.item("- ", caution, "quiet");
  printPage(page);
}

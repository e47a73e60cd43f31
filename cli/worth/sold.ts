// ticking sold.
import {sellGarment} from "../../commands/worth/sell-garment.ts";
import {termsInUse} from "../../commands/worth/terms-in-use.ts";
import type {Problem} from "../../engine/index.ts";
import {NeedsMending} from "../ending.ts";
import {done, garmentNamed, withRackToChange, type RackFlags} from "../rack/with-rack.ts";
import {amountOf} from "./money-flag.ts";
import * as say from "./problems.ts";
import {isDay} from "./sale-query.ts";
import {sayAmount} from "./say.ts";

export interface SoldFlags extends RackFlags {
  readonly price: string;
  readonly on?: string;
  readonly fees?: string;
  readonly postage?: string;
  readonly channel?: string;
}

export async function markSold(name: string, flags: SoldFlags): Promise<void> {
  const {content} = await withRackToChange(flags, false, async (rack) => {
    const {id, rev} = await garmentNamed(name, rack);
    const {currency} = await termsInUse(rack.store);
    const on = flags.on ?? rack.now.slice(0, 10);
    const problems: Problem[] = isDay(on) ? [] : [say.notDay("--on", on)];
    const [price, fees, postage] = (["price", "fees", "postage"] as const).map((flag) => amountOf(`--${flag}`, flags[flag], currency, problems));
    if (problems.length > 0) throw new NeedsMending(problems);
    return done(sellGarment, {id, base: rev, on, price, fees, postage, channel: flags.channel}, rack);
  });
  const {on, price} = content.money!.sold!;
  process.stdout.write(`${content.garment.garment} is sold for ${sayAmount(price)} on ${on}; it counts in prices from now on.\n`);
}

// ticking sales add.
import {addSale} from "../../commands/worth/save-sale.ts";
import {termsInUse} from "../../commands/worth/terms-in-use.ts";
import * as sayWorth from "../../commands/worth/problems.ts";
import {readMade} from "../../commands/worth/table/day-cell.ts";
import type {Problem} from "../../engine/index.ts";
import {grades} from "../../state/model.ts";
import {NeedsMending} from "../ending.ts";
import {done, withRackToChange, type RackFlags} from "../rack/with-rack.ts";
import {amountOf} from "./money-flag.ts";
import * as say from "./problems.ts";
import {isDay} from "./sale-query.ts";
import {sayAmount} from "./say.ts";

export interface AddSaleFlags extends RackFlags {
  readonly on: string;
  readonly price: string;
  readonly kind: string;
  readonly maker?: string;
  readonly lot?: string;
  readonly made?: string;
  readonly size?: string;
  readonly grade?: string;
  readonly fees?: string;
  readonly channel?: string;
  readonly note?: string;
}

export async function addOneSale(flags: AddSaleFlags): Promise<void> {
  const {on: soldOn, kind, maker, lot, made, size, grade, channel, note} = flags;
  const {id, sale} = await withRackToChange(flags, true, async (rack) => {
    const {currency} = await termsInUse(rack.store);
    const problems: Problem[] = isDay(soldOn) ? [] : [say.notDay("--on", soldOn)];
    const [price, fees] = [amountOf("--price", flags.price, currency, problems), amountOf("--fees", flags.fees, currency, problems)];
    const span = made === undefined ? null : readMade(made);
    if (made !== undefined && !span) problems.push(sayWorth.notMade("--made", made));
    if (grade !== undefined && !(grades as readonly string[]).includes(grade)) problems.push(sayWorth.notGrade("--grade", grade, grades));
    if (problems.length > 0) throw new NeedsMending(problems);
    return done(addSale, {sale: {soldOn, price, fees, kind: kind.toLowerCase(), maker, lot, madeFrom: span?.from, madeUntil: span?.until, size, grade, channel, note}}, rack);
  });
  process.stdout.write(`Written down: ${sale.kind} for ${sayAmount(sale.price)} on ${sale.soldOn}, as ${id}.\n`);
}

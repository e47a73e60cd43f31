// Whether the money of a garment can be: known currencies, nothing negative, no day ahead, and not sold before it was bought.
import type {Problem} from "../../engine/index.ts";
import type {Content} from "../../store/model.ts";
import {checkSale, digitsOf} from "../../worth/index.ts";
import {saleSchema} from "../../worth/model.ts";
import * as say from "./problems.ts";

/** @param before  what was kept until now: money that stays as it is is not looked at again */
export function moneyProblems(content: Content, before: Content | null, today: string): Problem[] {
  const told = ({paid, asked, money}: Content) => JSON.stringify([paid, asked, money]);
  if (before && told(before) === told(content)) return [];
  const {paid, asked, money, garment} = content;
  const amounts = [["paid", paid], ["asked", asked], ...(money?.costs ?? []).map(({amount}, i) => [`money.costs #${i + 1}`, amount] as const), ["money.sold.postage", money?.sold?.postage ?? null]] as const;
  const problems = amounts.flatMap(([at, amount]) => {
    if (!amount) return [];
    return [...(digitsOf(amount.currency) === null ? [say.unknownCurrency(at, amount.currency)] : []), ...(amount.cents < 0 ? [say.belowNothing(at)] : [])];
  });
  if (!money) return problems;
  const {boughtOn, listedOn, costs, sold} = money;
  const days = [["money.boughtOn", boughtOn], ["money.listedOn", listedOn], ...costs.map(({on}, i) => [`money.costs #${i + 1}`, on] as const)] as const;
  problems.push(...days.flatMap(([at, day]) => (day !== null && day > today ? [say.dayAhead(at, day)] : [])));
  if (!sold) return problems;
  const {on: soldOn, price, fees, channel} = sold;
  problems.push(...checkSale(saleSchema.parse({soldOn, price, fees, channel, kind: garment.type ?? "garment"}), "money.sold", today));
  if (sold.postage && sold.postage.currency !== price.currency) problems.push(say.otherPostage(sold.postage.currency, price.currency));
  if (boughtOn !== null && soldOn < boughtOn) problems.push(say.soldBeforeBought(soldOn, boughtOn));
  return problems;
}

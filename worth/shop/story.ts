// One garment's money in one currency: what it cost, what it brought, and how long it took.
import type {Amount} from "../model.ts";
import {dayOf} from "../price/columns.ts";
import type {ShopGarment} from "../subject.ts";

export interface Story {
  readonly garment: ShopGarment;
  readonly currency: string;
  /** Null: nobody noted it. */
  readonly paid: number | null;
  readonly boughtOn: string | null;
  readonly listedOn: string | null;
  readonly costs: readonly {readonly cents: number; readonly on: string | null}[];
  readonly sold: {readonly on: string; readonly price: number; readonly outlay: number} | null;
  /** From bought (else listed) to sold; null when one of them is not known. */
  readonly days: number | null;
}

/** The story in the garment's one currency; null when it has no money at all, "mixed" when its amounts are of several currencies. */
export function storyOf(garment: ShopGarment): Story | null | "mixed" {
  const {paid, asked, money} = garment;
  const sold = money?.sold ?? null;
  const amounts = [paid, asked, ...(money?.costs.map(({amount}) => amount) ?? []), sold?.price ?? null, sold?.fees ?? null, sold?.postage ?? null].filter((amount): amount is Amount => amount !== null);
  const [first] = amounts;
  if (!first) return null;
  if (amounts.some(({currency}) => currency !== first.currency)) return "mixed";
  const since = money?.boughtOn ?? money?.listedOn ?? null;
  return {
    garment, currency: first.currency, paid: paid?.cents ?? null, boughtOn: money?.boughtOn ?? null, listedOn: money?.listedOn ?? null,
    costs: money?.costs.map(({amount, on}) => ({cents: amount.cents, on})) ?? [],
    sold: sold && {on: sold.on, price: sold.price.cents, outlay: (sold.fees?.cents ?? 0) + (sold.postage?.cents ?? 0)},
    days: since !== null && sold !== null ? Math.max(0, dayOf(sold.on) - dayOf(since)) : null,
  };
}

/** All that was laid out besides the buying price: for a sold one fees and postage, too. */
export const costsOf = ({costs, sold}: Story): number => costs.reduce((sum, {cents}) => sum + cents, 0) + (sold?.outlay ?? 0);

/** What a sold one earned; null when it is not sold or nobody noted what was paid. */
export const profitOfStory = (story: Story): number | null => (story.sold === null || story.paid === null ? null : story.sold.price - story.paid - costsOf(story));

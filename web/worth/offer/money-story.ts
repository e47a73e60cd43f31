// What was spent and earned on one garment, as the lines of a small sum.
import type {Content} from "../../../store/model.ts";
import type {Amount} from "../../../worth/model.ts";

export interface StoryLine {
  readonly what: string;
  readonly amount: Amount;
  /** Money that went out. */
  readonly out: boolean;
}

export interface MoneyStorySum {
  readonly lines: readonly StoryLine[];
  /** Null while it is not sold, when nobody wrote down what was paid, or when several currencies meet. */
  readonly kept: Amount | null;
  /** Several currencies meet: they are never added up. */
  readonly mixed: boolean;
}

/** The sale of a garment; null when it is not sold after all, whatever is still noted of one. */
export const saleOf = ({standing, money}: Pick<Content, "standing" | "money">) => (standing === "sold" ? (money?.sold ?? null) : null);

export function sumStory(content: Pick<Content, "paid" | "standing" | "money">): MoneyStorySum {
  const {paid, money} = content;
  const sold = saleOf(content);
  const lines: StoryLine[] = [
    ...(sold ? [{what: "sold for", amount: sold.price, out: false}] : []),
    ...(paid ? [{what: "what was paid", amount: paid, out: true}] : []),
    ...(money?.costs ?? []).map(({what, amount}) => ({what, amount, out: true})),
    ...(sold?.fees ? [{what: "fees", amount: sold.fees, out: true}] : []),
    ...(sold?.postage ? [{what: "postage", amount: sold.postage, out: true}] : []),
  ];
  const currencies = new Set(lines.map(({amount}) => amount.currency));
  const kept = sold && paid && currencies.size === 1 ? {cents: lines.reduce((sum, {amount, out}) => sum + (out ? -amount.cents : amount.cents), 0), currency: sold.price.currency} : null;
  return {lines, kept, mixed: currencies.size > 1};
}

// What a garment has cost so far, as it is typed, and read back: every slip told beside its field.
import type {Content} from "../../../store/model.ts";
import {moneyStorySchema} from "../../../worth/model.ts";
import {readAmount, typeAmount} from "../money.ts";

export interface CostEntry {
  readonly what: string;
  readonly amount: string;
  readonly on: string;
}

export interface StoryEntry {
  readonly currency: string;
  readonly paid: string;
  readonly boughtOn: string;
  readonly listedOn: string;
  readonly asked: string;
  readonly costs: readonly CostEntry[];
}

type Part = Pick<Content, "paid" | "asked" | "money">;

export interface StorySlips {
  readonly paid?: string;
  readonly asked?: string;
  readonly boughtOn?: string;
  readonly listedOn?: string;
  /** By the place of the cost in the list. */
  readonly costs: Readonly<Record<number, string>>;
}

/** @param usual  currency of what has none yet */
export function typeStory({paid, asked, money}: Part, usual: string): StoryEntry {
  const currency = paid?.currency ?? money?.costs[0]?.amount.currency ?? asked?.currency ?? usual;
  return {
    currency,
    paid: paid ? typeAmount(paid) : "",
    boughtOn: money?.boughtOn ?? "",
    listedOn: money?.listedOn ?? "",
    asked: asked ? typeAmount(asked) : "",
    costs: (money?.costs ?? []).map(({what, amount, on}) => ({what, amount: typeAmount(amount), on: on ?? ""})),
  };
}

/** @returns part null when something cannot stand; a cost with nothing in it is none */
export function readStory(entry: StoryEntry, before: Part, today: string): {readonly part: Part | null; readonly slips: StorySlips} {
  const slips: {-readonly [K in keyof StorySlips]: StorySlips[K]} & {costs: Record<number, string>} = {costs: {}};
  const {currency} = entry;
  const amount = (key: "paid" | "asked") => {
    const {cents, wrong} = readAmount(entry[key], currency);
    if (wrong) slips[key] = wrong;
    return cents === null ? null : {cents, currency};
  };
  const [paid, asked] = [amount("paid"), amount("asked")];
  if (entry.boughtOn > today) slips.boughtOn = "That day lies ahead";
  if (entry.listedOn > today) slips.listedOn = "That day lies ahead";
  else if (entry.listedOn !== "" && entry.boughtOn !== "" && entry.listedOn < entry.boughtOn) slips.listedOn = "Before it was bought";
  const costs = entry.costs.flatMap(({what, amount: text, on}, i) => {
    const {cents, wrong} = readAmount(text, currency);
    if (what.trim() === "" && text.trim() === "") return [];
    if (wrong) slips.costs[i] = wrong;
    else if (what.trim() === "") slips.costs[i] = "What it was for";
    else if (cents === null) slips.costs[i] = "How much it was";
    else if (on > today) slips.costs[i] = "That day lies ahead";
    return cents === null ? [] : [{what: what.trim(), amount: {cents, currency}, on: on || null}];
  });
  const {costs: wrongCosts, ...others} = slips;
  if (Object.keys(others).length + Object.keys(wrongCosts).length > 0) return {part: null, slips};
  const money = {...(before.money ?? moneyStorySchema.parse({})), boughtOn: entry.boughtOn || null, listedOn: entry.listedOn || null, costs};
  const empty = money.boughtOn === null && money.listedOn === null && costs.length === 0 && money.sold === null;
  return {part: {paid, asked, money: empty ? null : money}, slips};
}

// The terms of the shop as they are saved, with what a question wants otherwise; and the owner's country.
import {z} from "zod";
import type {Store} from "../../store/store.ts";
import {termsSchema, type Terms} from "../../worth/model.ts";
import {readSetting} from "../rack/read-setting.ts";

const {currency, margin, feeShare, feeFixed, postage, taxShare, cleaning, daysToSell, yearlyCost, room} = termsSchema.shape;

/** Some of the terms: the others stay as they are saved. */
export const otherTermsSchema = z.strictObject({
  currency: currency.unwrap().optional(),
  margin: margin.unwrap().optional(),
  feeShare: feeShare.unwrap().optional(),
  feeFixed: feeFixed.unwrap().optional(),
  postage: postage.unwrap().optional(),
  taxShare: taxShare.unwrap().optional(),
  cleaning: cleaning.unwrap().optional(),
  daysToSell: daysToSell.unwrap().optional(),
  yearlyCost: yearlyCost.unwrap().optional(),
  room: room.unwrap().optional(),
});

export async function termsInUse(store: Pick<Store, "setting">, other: z.output<typeof otherTermsSchema> = {}): Promise<Terms> {
  return termsSchema.parse({...(await readSetting(store, "terms")).value, ...other});
}

/** Two letters; null when the owner did not say. */
export async function countryOf(store: Pick<Store, "setting">): Promise<string | null> {
  return (await readSetting(store, "owner")).value.country || null;
}

// Says what a rail or a bag may bring: garments that were examined, and others that nobody looked at.
import {z} from "zod";
import {recordSchema, type GarmentRecord} from "../../store/model.ts";
import {lotAnswerSchema, priceLot, type LotAnswer} from "../../worth/index.ts";
import * as sayRack from "../rack/problems.ts";
import {rackCommand, unfit, type Reply} from "../rack/rack-command.ts";
import {readSetting} from "../rack/read-setting.ts";
import {comparablesOf} from "./comparables.ts";
import {demoCaution} from "./demo-sales.ts";
import {oddsOf} from "./odds-of.ts";
import {askedSchema} from "./price-garment.ts";
import * as say from "./problems.ts";
import {seeded} from "./seeded.ts";
import {subjectOf} from "./subject-of.ts";
import {countryOf, otherTermsSchema, termsInUse} from "./terms-in-use.ts";

const ids = z.array(recordSchema.shape.id);

export const worthOfLot = rackCommand({
  name: "worth.lot",
  summary: "say what a rail or a bag of garments may bring, examined and unexamined ones",
  route: {method: "post", path: "/api/worth/lot"},
  input: z.strictObject({
    ids: ids.min(1).max(1000).describe("garments on the rack that were examined"),
    unexamined: z.number().int().min(0).max(10_000).default(0).describe("garments in the lot that nobody looked at"),
    sampled: ids.max(1000).default([]).describe("those of the examined ones that were drawn blindly and stand for the rest; empty: all of them"),
    asked: askedSchema.describe("asked for the whole lot, in the smallest unit of the currency of the terms"),
    terms: otherTermsSchema.optional().describe("other than those that are saved"),
  }),
  output: lotAnswerSchema,
  async run({ids: wanted, unexamined, sampled, asked, terms: other}, rack): Promise<Reply<LotAnswer>> {
    const {store, now} = rack;
    const twice = [...new Set(wanted.filter((id, i) => wanted.indexOf(id) !== i))];
    const strangers = sampled.filter((id) => !wanted.includes(id));
    const problems = [...twice.map(say.lotTwice), ...strangers.map(say.notInLot)];
    if (problems.length > 0) return unfit(problems);
    const found = await Promise.all(wanted.map((id) => store.get(id)));
    const missing = wanted.filter((_, i) => !found[i]);
    if (missing.length > 0) return {refused: "unknown", problems: missing.map(sayRack.noGarment)};
    const terms = await termsInUse(store, other);
    const comparables = await comparablesOf(store, terms.currency, now.slice(0, 10));
    const rule = (await readSetting(store, "grade-rule")).value;
    const garments = [];
    for (const {id, content} of found as GarmentRecord[]) garments.push({id, subject: subjectOf(content, await oddsOf(content.garment, false, rack), id, rule)});
    const answer = priceLot(comparables, garments, {terms, unexamined, sampled, asked, random: seeded(wanted.join()), country: await countryOf(store)});
    const caution = await demoCaution(store);
    return {answer: caution ? {...answer, cautions: [caution, ...answer.cautions]} : answer};
  },
});

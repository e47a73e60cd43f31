// Says what a garment may bring, what to pay for it, and what looking further is worth.
import {z} from "zod";
import {contentSchema, recordSchema} from "../../store/model.ts";
import {priceGarment, worthAnswerSchema, type WorthAnswer} from "../../worth/index.ts";
import {readSetting} from "../rack/read-setting.ts";
import * as sayRack from "../rack/problems.ts";
import {rackCommand, unfit, unknown} from "../rack/rack-command.ts";
import {comparablesOf} from "./comparables.ts";
import {demoCaution} from "./demo-sales.ts";
import {oddsOf} from "./odds-of.ts";
import * as say from "./problems.ts";
import {subjectOf} from "./subject-of.ts";
import {countryOf, otherTermsSchema, termsInUse} from "./terms-in-use.ts";

/** An amount asked of the buyer, in the smallest unit of the currency of the terms. */
export const askedSchema = z.number().int().min(0).max(1e12).nullable().default(null).describe("asked of the buyer, in the smallest unit of the currency of the terms");

export const worthOfGarment = rackCommand({
  name: "worth.garment",
  summary: "say what a garment may bring, what to pay for it, and what looking further is worth",
  route: {method: "post", path: "/api/worth"},
  input: z.strictObject({
    id: recordSchema.shape.id.optional().describe("on the rack"),
    content: contentSchema.optional().describe("as it is being written down; beside an id: instead of what is kept"),
    asked: askedSchema,
    terms: otherTermsSchema.optional().describe("other than those that are saved"),
  }),
  output: worthAnswerSchema,
  async run({id, content: given, asked, terms: other}, rack) {
    const {store, now} = rack;
    const record = id === undefined ? null : await store.get(id);
    if (id !== undefined && !record) return unknown(sayRack.noGarment(id));
    const content = given ?? record?.content;
    if (!content) return unfit([say.nothingToPrice()]);
    const terms = await termsInUse(store, other);
    const comparables = await comparablesOf(store, terms.currency, now.slice(0, 10), id ?? null);
    const odds = await oddsOf(content.garment, asked !== null, rack);
    const subject = subjectOf(content, odds, id ?? null, (await readSetting(store, "grade-rule")).value);
    const paid = content.paid?.currency === terms.currency ? content.paid.cents : null;
    const answer: WorthAnswer = priceGarment(comparables, subject, {terms, asked, paid, looks: odds?.looks ?? [], country: await countryOf(store)});
    const caution = await demoCaution(store);
    return {answer: caution ? {...answer, cautions: [caution, ...answer.cautions]} : answer};
  },
});

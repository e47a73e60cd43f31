// Marks a garment on the rack as sold: from then on its sale counts in prices and in the books of the shop.
import {z} from "zod";
import {gradeOf} from "../../state/grade.ts";
import {recordSchema} from "../../store/model.ts";
import {amountSchema, moneyStorySchema} from "../../worth/model.ts";
import * as sayRack from "../rack/problems.ts";
import {rackCommand, unfit, unknown} from "../rack/rack-command.ts";
import {readSetting} from "../rack/read-setting.ts";
import {saveOne} from "../rack/save.ts";
import * as say from "./problems.ts";

const {on, channel} = moneyStorySchema.shape.sold.unwrap().unwrap().shape;

export const sellGarment = rackCommand({
  name: "garment.sold",
  summary: "mark a garment as sold; its sale counts in prices at once",
  route: {method: "post", path: "/api/garments/{id}/sold"},
  input: z.strictObject({
    id: recordSchema.shape.id,
    base: recordSchema.shape.rev.describe("the revision that was seen"),
    on: on.describe("day of the sale"),
    price: amountSchema.describe("what the buyer paid, postage apart"),
    fees: amountSchema.nullable().default(null).describe("what the channel kept"),
    postage: amountSchema.nullable().default(null).describe("paid by the shop"),
    channel,
  }),
  output: recordSchema,
  async run({id, base, ...sale}, rack) {
    const found = await rack.store.get(id);
    if (!found) return unknown(sayRack.noGarment(id));
    const {content} = found;
    if (found.rev === base && content.standing === "sold" && content.money?.sold) return unfit([say.soldAlready(content.garment.garment, content.money.sold.on)]);
    const grade = content.state ? gradeOf(content.state, (await readSetting(rack.store, "grade-rule")).value).grade : null;
    const money = {...(content.money ?? moneyStorySchema.parse({})), sold: {...sale, grade}};
    return saveOne(rack, {id, base, content: {...content, standing: "sold", money}, what: "sold"});
  },
});

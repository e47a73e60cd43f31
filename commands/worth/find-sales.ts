// Finds sales, shows one, and tells its history.
import {z} from "zod";
import {salePageSchema, saleQuerySchema, saleStepSchema} from "../../store/model.ts";
import {saleRecordSchema} from "../../worth/model.ts";
import {rackCommand, unknown} from "../rack/rack-command.ts";
import * as say from "./problems.ts";

const {id} = saleRecordSchema.shape;

export const findSales = rackCommand({
  name: "sales.find",
  summary: "find sales by words, kind, maker, grade, day and place",
  route: {method: "get", path: "/api/sales"},
  input: saleQuerySchema,
  output: salePageSchema,
  run: async (query, {store}) => ({answer: await store.findSales(query)}),
});

export const getSale = rackCommand({
  name: "sale.get",
  summary: "show a sale as it is kept",
  route: {method: "get", path: "/api/sales/{id}"},
  input: z.strictObject({id}),
  output: saleRecordSchema,
  async run({id: wanted}, {store}) {
    const found = await store.sale(wanted);
    return found ? {answer: found} : unknown(say.noSale(wanted));
  },
});

export const saleHistory = rackCommand({
  name: "sale.history",
  summary: "show who changed what about a sale that was written down, and when",
  route: {method: "get", path: "/api/sales/{id}/history"},
  input: z.strictObject({id}),
  output: z.array(saleStepSchema),
  async run({id: wanted}, {store}) {
    const steps = await store.saleHistory(wanted);
    return steps.length > 0 || (await store.sale(wanted)) ? {answer: steps} : unknown(say.noSale(wanted));
  },
});

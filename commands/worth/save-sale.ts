// Writes a sale down, and changes one: what cannot be is refused, and nobody else's change is lost.
import {z} from "zod";
import {saleRecordSchema, saleSchema, type Sale, type SaleRecord} from "../../worth/model.ts";
import {checkSale} from "../../worth/index.ts";
import type {SaleSave} from "../../store/store.ts";
import type {Problem} from "../../engine/index.ts";
import type {Rack} from "../rack/rack.ts";
import {rackCommand, unfit, unknown, type Reply} from "../rack/rack-command.ts";
import {keeperOf} from "./kept-already.ts";
import {lastDay} from "./last-day.ts";
import * as say from "./problems.ts";

const {id, rev} = saleRecordSchema.shape;

export const addSale = rackCommand({
  name: "sale.add",
  summary: "write down a sale, the shop's own or somebody else's",
  route: {method: "post", path: "/api/sales", status: 201},
  input: z.strictObject({sale: saleSchema}),
  output: saleRecordSchema,
  async run({sale}, rack) {
    const problems = await saleProblems(sale, rack);
    return problems.length > 0 ? unfit(problems) : saveSale(rack, {id: null, base: 0, sale, what: "added"});
  },
});

export const changeSale = rackCommand({
  name: "sale.change",
  summary: "save a change to a sale; refused when somebody saved in between",
  route: {method: "put", path: "/api/sales/{id}"},
  input: z.strictObject({id, base: rev.describe("the revision that was changed"), sale: saleSchema}),
  output: saleRecordSchema,
  async run({id: wanted, base, sale}, rack) {
    const problems = await saleProblems(sale, rack, wanted);
    return problems.length > 0 ? unfit(problems) : saveSale(rack, {id: wanted, base, sale, what: "changed"});
  },
});

export const removeSale = rackCommand({
  name: "sale.remove",
  summary: "take a sale out of the list; its history stays",
  route: {method: "delete", path: "/api/sales/{id}"},
  input: z.strictObject({id, base: rev}),
  output: saleRecordSchema,
  run: (input, rack) => keep(input, rack, true),
});

export const putBackSale = rackCommand({
  name: "sale.put-back",
  summary: "put a removed sale back into the list",
  route: {method: "post", path: "/api/sales/{id}/put-back"},
  input: z.strictObject({id, base: rev}),
  output: saleRecordSchema,
  run: (input, rack) => keep(input, rack, false),
});

async function keep({id: wanted, base}: {readonly id: string; readonly base: number}, rack: Rack, removed: boolean): Promise<Reply<SaleRecord>> {
  const found = await rack.store.sale(wanted);
  if (!found) return unknown(say.noSale(wanted));
  if (found.garment === null && found.rev === base && found.removed === removed) return {answer: found};
  return saveSale(rack, {id: wanted, base, sale: found.sale, removed, what: removed ? "removed" : "put back"});
}

async function saleProblems(sale: Sale, {store, now}: Rack, except?: string): Promise<Problem[]> {
  const problems = checkSale(sale, "sale", lastDay(now));
  if (problems.length > 0) return problems;
  const double = (await keeperOf(store, {from: sale.soldOn, until: sale.soldOn})).problemOf(sale, "sale", except);
  return double ? [double] : [];
}

async function saveSale({store, who, now: at}: Rack, change: Pick<SaleSave, "id" | "base" | "sale" | "removed" | "what">): Promise<Reply<SaleRecord>> {
  const there = change.id === null ? null : await store.sale(change.id);
  if (there && there.garment !== null) return unfit([say.ofGarment((await store.get(there.garment))?.content.garment.garment ?? there.garment)]);
  const [saved] = await store.saveSales([{...change, who, at}]);
  if (saved!.saved) return {answer: saved!.saved};
  if (!saved!.conflict) return unknown(say.noSale(change.id ?? ""));
  const {now, base} = saved!.conflict;
  return {refused: "conflict", problems: [say.saleSavedBetween(now.changedBy, now.changedAt)], more: {now, base}};
}

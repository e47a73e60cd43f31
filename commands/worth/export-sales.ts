// Hands sales out as a file: a table, JSON, or JSON a line; all of them, or those that a query finds.
import {z} from "zod";
import {saleQuerySchema, type SaleQuery} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";
import type {Sale} from "../../worth/model.ts";
import {rackCommand, type Download} from "../rack/rack-command.ts";
import {printSale, saleHeader} from "./table/print-sale.ts";

const format = z.enum(["csv", "json", "jsonl"]);
const kinds = {csv: "text/csv; charset=utf-8", json: "application/json", jsonl: "application/x-ndjson; charset=utf-8"} as const;
const perPage = 500;

export const exportSales = rackCommand({
  name: "sales.export",
  summary: "hand sales out as a table or as JSON",
  route: {method: "get", path: "/api/sales/export", gives: "download"},
  input: saleQuerySchema.omit({offset: true, limit: true}).extend({format: format.default("csv")}),
  output: z.string(),
  async run({format: wanted, ...query}, {store, now}): Promise<{answer: Download}> {
    const pieces = {csv: table, json: list, jsonl: lines}[wanted];
    return {answer: {name: `sales-${now.slice(0, 10)}.${wanted}`, mime: kinds[wanted], pieces: pieces(found(query, store))}};
  },
});

async function* found(query: Omit<SaleQuery, "offset" | "limit">, store: Store): AsyncGenerator<Sale> {
  for (let offset = 0; ; offset += perPage) {
    const {rows} = await store.findSales({...query, offset, limit: perPage});
    for (const {sale} of rows) yield sale;
    if (rows.length < perPage) return;
  }
}

async function* table(sales: AsyncIterable<Sale>): AsyncGenerator<string> {
  yield `${saleHeader}\r\n`;
  for await (const sale of sales) yield `${printSale(sale)}\r\n`;
}

async function* list(sales: AsyncIterable<Sale>): AsyncGenerator<string> {
  let before = "[\n";
  for await (const sale of sales) {
    yield before + JSON.stringify(sale);
    before = ",\n";
  }
  yield before === "[\n" ? "[]\n" : "\n]\n";
}

async function* lines(sales: AsyncIterable<Sale>): AsyncGenerator<string> {
  for await (const sale of sales) yield `${JSON.stringify(sale)}\n`;
}

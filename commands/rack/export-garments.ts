// Hands garments out as a file: a table, JSON, or JSON a line; all of them, or those that a query finds.
import {z} from "zod";
import {rackQuerySchema, type Content, type RackQuery} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";
import {rackCommand, type Download} from "./rack-command.ts";
import {printHeader, printRecord} from "./table/print-table.ts";

const format = z.enum(["csv", "json", "jsonl"]);
const kinds = {csv: "text/csv; charset=utf-8", json: "application/json", jsonl: "application/x-ndjson; charset=utf-8"} as const;
const perPage = 500;

export const exportGarments = rackCommand({
  name: "rack.export",
  summary: "hand garments out as a table or as JSON",
  route: {method: "get", path: "/api/rack/export", gives: "download"},
  input: rackQuerySchema.omit({offset: true, limit: true}).extend({format: format.default("csv")}),
  output: z.string(),
  async run({format: wanted, ...query}, {store, now}): Promise<{answer: Download}> {
    const contents = () => contentsOf({...query, offset: 0, limit: perPage}, store);
    const pieces = {csv: table, json: list, jsonl: lines}[wanted];
    return {answer: {name: `rack-${now.slice(0, 10)}.${wanted}`, mime: kinds[wanted], pieces: pieces(contents)}};
  },
});

async function* contentsOf(query: RackQuery, store: Store): AsyncGenerator<Content> {
  for (let offset = 0; ; offset += perPage) {
    const {rows} = await store.search({...query, offset});
    const records = await Promise.all(rows.map(({id}) => store.get(id)));
    for (const record of records) if (record) yield record.content;
    if (rows.length < perPage) return;
  }
}

// Twice over the garments: the line of names comes first and holds every mark that any of them carries.
async function* table(contents: () => AsyncGenerator<Content>): AsyncGenerator<string> {
  const marks = new Set<string>();
  for await (const {garment} of contents()) for (const id of Object.keys(garment.saw)) if (id !== "rows") marks.add(id);
  const sorted = [...marks].sort();
  yield `${printHeader(sorted)}\r\n`;
  for await (const content of contents()) yield `${printRecord(content, sorted)}\r\n`;
}

async function* list(contents: () => AsyncGenerator<Content>): AsyncGenerator<string> {
  let before = "[\n";
  for await (const content of contents()) {
    yield before + JSON.stringify(content);
    before = ",\n";
  }
  yield before === "[\n" ? "[]\n" : "\n]\n";
}

async function* lines(contents: () => AsyncGenerator<Content>): AsyncGenerator<string> {
  for await (const content of contents()) yield `${JSON.stringify(content)}\n`;
}

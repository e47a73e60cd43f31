// Hands garments out as a file: a table, JSON, or JSON a line; all of them, or those that a query finds.
import {z} from "zod";
import {rackQuerySchema, type Content, type RackQuery} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";
import {allRecords} from "./all-records.ts";
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
    const whole = isWhole(query);
    const found = whole ? null : await idsOf({...query, offset: 0, limit: perPage}, store);
    const pieces = {csv: table, json: list, jsonl: lines}[wanted];
    return {answer: {name: `rack-${now.slice(0, 10)}.${wanted}`, mime: kinds[wanted], pieces: pieces(() => (found ? named(found, store) : everything(store)))}};
  },
});

const unfiltered = rackQuerySchema.parse({});

/** Whether a query finds everything that hangs on the rack: that is handed out from the oldest on, without a search. */
function isWhole(query: Omit<RackQuery, "offset" | "limit">): boolean {
  return Object.entries(query).every(([key, value]) => key === "sort" || key === "descending" || key === "atLeast" || value === unfiltered[key as keyof RackQuery]);
}

async function idsOf(query: RackQuery, store: Store): Promise<string[]> {
  const ids: string[] = [];
  for (;;) {
    const {rows} = await store.search({...query, offset: ids.length});
    ids.push(...rows.map(({id}) => id));
    if (rows.length < query.limit) return ids;
  }
}

async function* named(ids: readonly string[], store: Store): AsyncGenerator<Content> {
  for (const id of ids) {
    const record = await store.get(id);
    if (record) yield record.content;
  }
}

async function* everything(store: Store): AsyncGenerator<Content> {
  for await (const {removed, content} of allRecords(store)) if (!removed) yield content;
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

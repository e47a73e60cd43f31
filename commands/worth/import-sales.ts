// Takes sales over from a table or from JSON: first tried, with everything that has to be mended; then all of them, or none.
import {z} from "zod";
import type {Problem} from "../../engine/index.ts";
import {checkSale} from "../../worth/index.ts";
import {amountSchema, saleRecordSchema, saleSchema} from "../../worth/model.ts";
import * as sayRack from "../rack/problems.ts";
import type {Rack} from "../rack/rack.ts";
import {rackCommand, unfit} from "../rack/rack-command.ts";
import {readJsonLines, readJsonList} from "../rack/table/read-json.ts";
import {readTable, type Table} from "../rack/table/read-table.ts";
import {keeperOf, wholeSale} from "./kept-already.ts";
import {lastDay} from "./last-day.ts";
import * as say from "./problems.ts";
import {readSaleJson, readSaleRecord, type Habits, type ReadSale} from "./table/read-sale.ts";
import {neededColumns, saleColumnOf, type SaleColumn} from "./table/sale-column.ts";

const mostSales = 100_000;
/** So many are shown before they are taken over. */
const previewed = 20;
/** So many problems are told; more would hide the first. */
const mostProblems = 500;

const columnSchema = z.strictObject({name: z.string(), target: z.string().nullable().describe("an entry of a sale, currency, \"\" for left out; null: to be said"), samples: z.array(z.string())});

export const importSales = rackCommand({
  name: "sales.import",
  summary: "take sales over from a table or from JSON: tried first, then all or none",
  route: {method: "post", path: "/api/sales/import"},
  mostBytes: 64_000_000,
  input: z.strictObject({
    format: z.enum(["csv", "json", "jsonl"]),
    text: z.string().max(64_000_000),
    mapping: z.record(z.string().max(300), z.string().max(300)).optional().describe("what columns are taken as: name of the column, then an entry of a sale, currency, or \"\" to leave it out; names speak for themselves when left out"),
    currency: amountSchema.shape.currency.optional().describe("of amounts that name none"),
    days: z.enum(["day first", "month first"]).optional().describe("of days like 3/4/2026"),
    try: z.boolean().default(true).describe("true: nothing is saved"),
  }),
  output: z.strictObject({
    columns: z.array(columnSchema).optional().describe("of a table"),
    ready: z.number().int().describe("sales without a problem"),
    problems: z.array(z.unknown()).describe(`the first ${mostProblems}, by line`),
    rows: z.array(z.strictObject({line: z.number().int(), sale: saleSchema})).describe("the first ones, as they would be taken over"),
    ids: z.array(saleRecordSchema.shape.id).describe("of the sales taken over"),
  }),
  async run({format, text, mapping, currency, days, try: tried}, rack) {
    const {columns, read, problems: slips} = readAs(format, text, mapping, {currency: currency ?? null, days: days ?? null});
    if (read.length > mostSales) return unfit([say.tooManySales(mostSales)]);
    const checked = await checkAll(read, rack);
    const good = checked.flatMap((one) => (one.sale ? [{line: one.line, sale: one.sale}] : []));
    const nothing = read.length === 0 && slips.length === 0 ? [say.nothingToImport()] : [];
    const problems = [...slips, ...checked.flatMap((one) => one.problems ?? []), ...nothing].toSorted((a, b) => lineOf(a) - lineOf(b)).slice(0, mostProblems);
    const shown = {...(columns ? {columns} : {}), ready: good.length, problems, rows: good.slice(0, previewed)};
    if (tried) return {answer: {...shown, ids: []}};
    if (problems.length > 0) return unfit(problems);
    const {store, who, now: at} = rack;
    const saved = await store.saveSales(good.map(({sale}) => ({id: null, base: 0, sale, who, what: "imported", at})));
    return {answer: {...shown, ids: saved.map((one) => one.saved!.id)}};
  },
});

/** What is about no line comes first. */
const lineOf = ({at}: Problem) => Number(/^(?:line|no\.) (\d+)/.exec(at)?.[1] ?? 0);

interface Read {
  readonly columns?: z.infer<typeof columnSchema>[];
  readonly read: readonly ReadSale[];
  readonly problems: readonly Problem[];
}

function readAs(format: "csv" | "json" | "jsonl", text: string, mapping: Readonly<Record<string, string>> | undefined, habits: Habits): Read {
  if (format === "json") return readJsonList<ReadSale>(text, readSaleJson);
  if (format === "jsonl") return readJsonLines<ReadSale>(text, readSaleJson);
  const table = readTable(text);
  if (!table.names) return {read: [], problems: table.problems};
  const {targets, problems} = targetsOf(table, mapping);
  const samples = (i: number) => table.records.slice(0, 50).map(({cells}) => cells[i]!).filter((cell) => cell.trim() !== "").slice(0, 3);
  const columns = table.names.map((name, i) => ({name, target: targets[i]!, samples: samples(i)}));
  const read = problems.length > 0 ? [] : table.records.map((record) => readSaleRecord(record, targets as (SaleColumn | "")[], habits));
  return {columns, read, problems: [...problems, ...table.problems]};
}

/** What each column is taken as: what was said, else what its name says. */
function targetsOf({names}: Table, mapping: Readonly<Record<string, string>> = {}): {targets: (SaleColumn | "" | null)[]; problems: Problem[]} {
  const problems: Problem[] = Object.keys(mapping).filter((name) => !names.includes(name)).map(sayRack.noSuchColumn);
  const targets = names.map((name) => {
    const said = Object.hasOwn(mapping, name) ? mapping[name]! : name;
    const target = saleColumnOf(said);
    if (target === null) problems.push(say.noSuchEntry(name, said));
    return target;
  });
  const double = [...new Set(targets.filter((target, i) => target && targets.indexOf(target) !== i))];
  problems.push(...double.map((target) => sayRack.mappedTwice(target!, names.filter((_, i) => targets[i] === target))));
  problems.push(...neededColumns.filter(([target]) => !targets.includes(target)).map(([target, words]) => say.noColumn(target, words)));
  return {targets, problems};
}

/** Each by itself, then against the others and against those that are kept. */
async function checkAll(read: readonly ReadSale[], {store, now}: Rack): Promise<ReadSale[]> {
  const today = lastDay(now);
  const days = read.flatMap(({sale}) => sale?.soldOn ?? []).sort();
  const keeper = days.length > 0 ? await keeperOf(store, {from: days[0]!, until: days.at(-1)!}) : null;
  const first = new Map<string, number>();
  return read.map((one) => {
    if (!one.sale) return one;
    const {line, sale} = one;
    const at = `line ${line}`;
    const problems = checkSale(sale, at, today).map((problem) => ({...problem, at: problem.at.replace(`${at}.`, `${at} `)}));
    const key = wholeSale(sale);
    const before = first.get(key);
    if (before === undefined) first.set(key, line);
    const double = problems.length > 0 ? null : before !== undefined ? say.standsTwice(at, `line ${before}`) : keeper!.problemOf(sale, at);
    return problems.length > 0 || double ? {line, problems: double ? [double] : problems} : one;
  });
}

// Takes garments over from a table or from JSON: first tried, with everything that has to be mended; then all of them, or none.
import {z} from "zod";
import type {Problem} from "../../engine/index.ts";
import {contentSchema, moneySchema, recordSchema, type Content} from "../../store/model.ts";
import type {Store} from "../../store/store.ts";
import {moneyProblems} from "../worth/check-money.ts";
import {lastDay} from "../worth/last-day.ts";
import * as say from "./problems.ts";
import type {Rack} from "./rack.ts";
import {rackCommand, unfit} from "./rack-command.ts";
import {markIds, targetOf, type Target} from "./table/column.ts";
import {markChecker} from "./table/check-marks.ts";
import {readContent} from "./table/read-content.ts";
import {readJsonLines, readJsonList} from "./table/read-json.ts";
import {readRecord, type ReadContent} from "./table/read-record.ts";
import {readTable, type Table} from "./table/read-table.ts";

const mostGarments = 50_000;
/** So many are shown before they are taken over. */
const previewed = 20;

const columnSchema = z.strictObject({name: z.string(), target: z.string().nullable().describe("an entry, a mark, \"\" for left out; null: to be said"), samples: z.array(z.string())});
const answerSchema = z.strictObject({
  columns: z.array(columnSchema).optional().describe("of a table"),
  ready: z.number().int().describe("garments without a problem"),
  problems: z.array(z.unknown()),
  rows: z.array(z.strictObject({line: z.number().int(), content: contentSchema})).describe("the first ones, as they would be taken over"),
  ids: z.array(recordSchema.shape.id).describe("of the garments taken over; they are dated in the background"),
});

export const importGarments = rackCommand({
  name: "rack.import",
  summary: "take garments over from a table or from JSON: tried first, then all or none",
  route: {method: "post", path: "/api/rack/import"},
  mostBytes: 64_000_000,
  input: z.strictObject({
    format: z.enum(["csv", "json", "jsonl"]),
    text: z.string().max(64_000_000),
    mapping: z.record(z.string().max(300), z.string().max(300)).optional().describe("what columns are taken as: name of the column, then an entry, a mark, or \"\" to leave it out; names speak for themselves when left out"),
    currency: moneySchema.shape.currency.optional().describe("of amounts that name none"),
    try: z.boolean().default(true).describe("true: nothing is saved"),
  }),
  output: answerSchema,
  async run({format, text, mapping, currency, try: tried}, rack) {
    const {columns, read, problems: slips} = readAs(format, text, mapping, currency ?? null, rack);
    if (read.length > mostGarments) return unfit([say.tooManyLines(mostGarments)]);
    const checked = await checkAll(read, rack);
    const good = checked.flatMap((one) => (one.content ? [{line: one.line, content: one.content}] : []));
    const nothing = read.length === 0 && slips.length === 0 ? [say.nothingToImport("text")] : [];
    const problems = byLine([...slips, ...checked.flatMap((one) => one.problems ?? []), ...nothing]);
    const shown = {...(columns ? {columns} : {}), ready: good.length, problems, rows: good.slice(0, previewed)};
    if (tried) return {answer: {...shown, ids: []}};
    if (problems.length > 0) return unfit(problems);
    const {store, who, now: at} = rack;
    const saved = await store.saveAll(good.map(({content}) => ({id: null, base: 0, content, who, what: "imported", at})));
    const ids = saved.map((one) => one.saved!.id);
    await rack.dateLater(ids);
    return {answer: {...shown, ids}};
  },
});

/** In the order of the lines; what is about no line comes first. */
function byLine(problems: readonly Problem[]): Problem[] {
  const lineOf = ({at}: Problem) => Number(/^line (\d+)/.exec(at)?.[1] ?? 0);
  return problems.toSorted((a, b) => lineOf(a) - lineOf(b));
}

interface Read {
  readonly columns?: z.infer<typeof columnSchema>[];
  readonly read: readonly ReadContent[];
  readonly problems: readonly Problem[];
}

function readAs(format: "csv" | "json" | "jsonl", text: string, mapping: Readonly<Record<string, string>> | undefined, currency: string | null, {world}: Rack): Read {
  if (format === "json") return readJsonList(text, readContent);
  if (format === "jsonl") return readJsonLines(text, readContent);
  const table = readTable(text);
  if (!table.names) return {read: [], problems: table.problems};
  const {targets, problems} = targetsOf(table, mapping, markIds(world.books));
  const columns = table.names.map((name, i) => ({name, target: targets[i]!, samples: samplesOf(table, i)}));
  const read = problems.length > 0 ? [] : table.records.map((record) => readRecord(record, targets as Target[], currency));
  return {columns, read, problems: [...problems, ...table.problems]};
}

/** What each column is taken as: what was said, else what its name says. */
function targetsOf({names}: Table, mapping: Readonly<Record<string, string>> = {}, marks: ReadonlySet<string>): {targets: (Target | null)[]; problems: Problem[]} {
  const problems: Problem[] = Object.keys(mapping).filter((name) => !names.includes(name)).map(say.noSuchColumn);
  const targets = names.map((name) => {
    const said = Object.hasOwn(mapping, name) ? mapping[name]! : undefined;
    const target = said === "" ? "" : targetOf(said ?? name, marks);
    if (target === null) problems.push(say.noSuchTarget(name, said ?? name));
    return target;
  });
  const double = [...new Set(targets.filter((target, i) => target && targets.indexOf(target) !== i))];
  problems.push(...double.map((target) => say.mappedTwice(target!, names.filter((_, i) => targets[i] === target))));
  if (!targets.includes("garment")) problems.push(say.noNumberColumn());
  return {targets, problems};
}

const samplesOf = ({records}: Table, column: number) => records.slice(0, 50).map(({cells}) => cells[column]!).filter((cell) => cell.trim() !== "").slice(0, 3);

/** Marks must be known, numbers free, photos there. */
async function checkAll(read: readonly ReadContent[], {world, store, now}: Rack): Promise<ReadContent[]> {
  const slipsOf = markChecker(world);
  const first = new Map<string, number>();
  const checked: ReadContent[] = [];
  for (const one of read) {
    if (one.content === undefined) {
      checked.push(one);
      continue;
    }
    const {line, content} = one;
    const at = `line ${line}`;
    const number = content.garment.garment;
    const problems: Problem[] = slipsOf(content.garment).map((slip) => ({...slip, at: `${at} ${slip.at}`}));
    if (first.has(number)) problems.push(say.numberTwice(at, number, `line ${first.get(number)}`));
    else first.set(number, line);
    if (await store.byNumber(number)) problems.push(say.numberTaken(at, number));
    problems.push(...moneyProblems(content, null, lastDay(now)).map((problem) => ({...problem, at: `${at} ${problem.at}`})), ...(await missingPhotos(content, store, at)));
    checked.push(problems.length > 0 ? {line, problems} : one);
  }
  return checked;
}

async function missingPhotos({photos}: Content, store: Store, at: string): Promise<Problem[]> {
  const found = await Promise.all(photos.map(({photo}) => store.photo(photo)));
  return photos.flatMap(({photo}, i) => (found[i] ? [] : [say.noPhoto(`${at} photos #${i + 1}`, photo)]));
}

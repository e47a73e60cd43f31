// Dates garments again by the books in use, and says which of them moved and why.
import {z} from "zod";
import {recordSchema, type GarmentRecord} from "../../store/model.ts";
import type {Problem} from "../../engine/index.ts";
import type {Save} from "../../store/store.ts";
import {allRecords} from "./all-records.ts";
import type {Rack} from "./rack.ts";
import {rackCommand, type Reply} from "./rack-command.ts";
import {sameDating, whyMoved, type EditionBook} from "./why-moved.ts";
import {editionOf} from "./books-in-use.ts";

/** Garments that are dated and saved in one step: few enough that others get their turn in between. */
const perShare = 40;

const movedSchema = z.strictObject({id: recordSchema.shape.id, number: z.string(), from: z.string().describe("what it was dated to"), to: z.string(), why: z.string()});
const progressSchema = z.strictObject({done: z.number().int(), of: z.number().int()});
const resultSchema = z.strictObject({moved: z.array(movedSchema), same: z.number().int(), problems: z.array(z.unknown()).describe("why single garments cannot be dated by the books in use")});

export type RedateLine = z.infer<typeof progressSchema> | {readonly moved: readonly z.infer<typeof movedSchema>[]; readonly same: number; readonly problems: readonly Problem[]};

/** Several by their ids, or all that are not removed. The last line says what moved. */
export const redateGarments = rackCommand({
  name: "rack.redate",
  summary: "date garments again by the books in use, and say what moved and why",
  route: {method: "post", path: "/api/rack/redate", gives: "lines"},
  mostBytes: 4_000_000,
  input: z.strictObject({ids: z.array(recordSchema.shape.id).max(50_000).optional().describe("all when left out")}),
  output: z.union([progressSchema, resultSchema]),
  run: async ({ids}, rack): Promise<Reply<AsyncIterable<RedateLine>>> => ({answer: redate(ids ? [...new Set(ids)] : null, rack)}),
});

async function* redate(ids: readonly string[] | null, rack: Rack): AsyncGenerator<RedateLine> {
  const of = ids ? ids.length : await countOf(rack);
  const moved: z.infer<typeof movedSchema>[] = [];
  const problems: Problem[] = [];
  let [done, same] = [0, 0];
  const edition = await editionReader(rack);
  yield {done, of};
  for await (const share of ids ? named(ids, rack) : everything(rack)) {
    const present = share.filter((record) => !record.removed);
    const found = await rack.date(present.map(({content}) => content.garment));
    const saves: Save[] = [];
    for (const [i, record] of present.entries()) {
      const {garment, dating: before} = record.content;
      const {dating, problems: slips} = found[i]!;
      if (slips) {
        problems.push(...slips.map((slip) => ({...slip, at: `garment ${garment.garment} ${slip.at}`})));
        continue;
      }
      if (before?.words === dating.words && before.kind === dating.kind) same++;
      else moved.push({id: record.id, number: garment.garment, from: before?.words ?? "not dated", to: dating.words, why: whyMoved(before, dating, garment, edition)});
      if (!before || !sameDating(before, dating)) saves.push({id: record.id, base: record.rev, content: {...record.content, dating}, who: rack.who, what: "dated again", at: rack.now});
    }
    await saveShare(saves, rack);
    done += share.length;
    yield {done, of};
  }
  yield {moved, same, problems};
}

// Together when nobody saved in between, else one by one: what somebody saved meanwhile was dated on saving, by the same books.
async function saveShare(saves: readonly Save[], {store}: Rack): Promise<void> {
  if (saves.length === 0) return;
  const saved = await store.saveAll(saves);
  if (saved.every((one) => one.saved)) return;
  for (const save of saves) await store.save(save);
}

async function countOf({store}: Rack): Promise<number> {
  let count = 0;
  for await (const {removed} of allRecords(store)) if (!removed) count++;
  return count;
}

async function* everything({store}: Rack): AsyncGenerator<readonly GarmentRecord[]> {
  let share: GarmentRecord[] = [];
  for await (const record of allRecords(store)) {
    if (!record.removed) share.push(record);
    if (share.length < perShare) continue;
    yield share;
    share = [];
  }
  if (share.length > 0) yield share;
}

async function* named(ids: readonly string[], {store}: Rack): AsyncGenerator<readonly GarmentRecord[]> {
  for (let from = 0; from < ids.length; from += perShare) {
    const found = await Promise.all(ids.slice(from, from + perShare).map((id) => store.get(id)));
    yield found.filter((record) => record !== null);
  }
}

/** Reads each edition once, however many garments were dated by it. */
async function editionReader({store, shipped}: Rack): Promise<EditionBook> {
  const editions = await store.editions();
  const read = new Map<string, ReturnType<typeof editionOf>>();
  return (book, edition) => {
    const key = `${edition} ${book}`;
    if (!read.has(key)) read.set(key, editionOf(shipped, editions, book, edition));
    return read.get(key)?.book ?? null;
  };
}

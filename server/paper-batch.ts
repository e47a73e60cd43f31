// Papers of many garments, with a line for each that is done; garments whose marks cannot be read are left out and told.
import type {z} from "zod";
import type {Rack} from "../commands/rack/rack.ts";
import type {Problem} from "../engine/index.ts";
import {formOf} from "../paper/listing/forms.ts";
import {makeListing, makeSheet, makeTag, photosOf, type ReadPhoto} from "../paper/make.ts";
import type {PrintOptions} from "../paper/print.ts";
import type {Tag} from "../paper/tag/tag.ts";
import type {GarmentRecord} from "../store/model.ts";
import type {PaperFiles} from "./paper-files.ts";
import type {Press} from "./paper-press.ts";
import type {batchWish} from "./paper-shapes.ts";

export interface BatchGiven {
  readonly rack: Rack;
  readonly press: Press;
  readonly files: PaperFiles;
  readonly readPhoto: ReadPhoto;
  readonly options: PrintOptions;
}

interface Batch {
  /** @param before  settles when the one before is on the paper, so that the order stays */
  make(record: GarmentRecord, before: Promise<unknown>): Promise<readonly Problem[]>;
  end(): Promise<{readonly ending: string; readonly bytes: Uint8Array | string}>;
  drop(): Promise<void>;
}

/** Lines {done, of}, at the end {file, bytes, problems}. */
export async function* runBatch(records: readonly GarmentRecord[], wish: z.output<typeof batchWish>, given: BatchGiven): AsyncGenerator<unknown> {
  const batch = await begin(wish, records.length, given);
  let ended = false;
  const problems: Problem[] = [];
  // While one is drawn the next is examined already: two workers share it.
  let before: Promise<readonly Problem[]> = Promise.resolve([]);
  try {
    for (const [i, record] of records.entries()) {
      const making = batch.make(record, before);
      // What stops the one before is told by it alone.
      making.catch(() => undefined);
      const told = before;
      before = making;
      problems.push(...(await told));
      if (i > 0) yield {done: i, of: records.length};
    }
    problems.push(...(await before));
    yield {done: records.length, of: records.length};
    ended = true;
    const {ending, bytes} = await batch.end();
    yield {file: await given.files.keep(wish.what === "sheet" ? "dating-sheets" : wish.what === "tags" ? "hang-tags" : "listings", ending, bytes), bytes: bytes.length, problems};
  } finally {
    // Who asked has gone: what was drawn so far is of use to nobody.
    await before.catch(() => undefined);
    if (!ended) await batch.drop();
  }
}

async function begin({what, size, photos, worth, format, code, price, form}: z.output<typeof batchWish>, count: number, {rack, press, readPhoto, options}: BatchGiven): Promise<Batch> {
  const nothing = async () => {};
  if (what === "sheet") {
    const job = await press.sheets(`${count} dating sheets`, size, options);
    return {
      async make(record, before) {
        const {made, problems} = await makeSheet(record, rack, {on: options.on, photos, worth});
        if (problems) return problems;
        const shown = await photosOf(made, readPhoto);
        await before;
        await job.add(made, shown);
        return [];
      },
      end: async () => ({ending: "pdf", bytes: await job.end()}),
      drop: () => job.drop(),
    };
  }
  if (what === "tags") {
    const tags: Tag[] = [];
    return {
      async make(record, before) {
        const tag = await makeTag(record, rack, {price});
        await before;
        tags.push(tag);
        return [];
      },
      end: async () => ({ending: "pdf", bytes: await press.tags(tags, {format, code, size}, options)}),
      drop: nothing,
    };
  }
  const texts: string[] = [];
  return {
    async make(record, before) {
      const {made, problems} = await makeListing(record, rack, {on: options.on, form});
      await before;
      if (made !== undefined) texts.push(made);
      return problems ?? [];
    },
    end: async () => ({ending: formOf[form].ending, bytes: form === "json" ? `[\n${texts.map((text) => text.trim()).join(",\n")}\n]\n` : texts.join(form === "markdown" ? "\n---\n\n" : "\n----\n\n")}),
    drop: nothing,
  };
}

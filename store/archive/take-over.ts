// Fills an empty rack with the unpacked data of an archive, inside one transaction of the caller's.
import {createHash} from "node:crypto";
import {readFileSync} from "node:fs";
import {join} from "node:path";
import {z} from "zod";
import {StoreFault} from "../fault.ts";
import {bookEditionSchema, photoSchema, saleStepSchema, stepSchema, type SaleStep, type Step} from "../model.ts";
import type {Database} from "../sqlite/database.ts";
import {hang, putStep} from "../sqlite/hang.ts";
import {putSale} from "../sqlite/put-sale.ts";
import {asBytes, dataLines} from "./data-lines.ts";
import {linesOf} from "./lines-of.ts";
import {bookName, isSecret, type DataName, type Manifest} from "./manifest.ts";
import {reasonOf} from "./open-zip.ts";
import * as say from "./problems.ts";

const settingSchema = z.strictObject({key: z.string().min(1).max(200).refine((key) => !isSecret(key), "a secret has no place in an archive"), value: z.string()});

/**
 * @param unpacked  the folder of the unpacked files
 * @throws StoreFault with what is wrong; the caller's transaction takes everything back
 */
export function takeOver(db: Database, unpacked: string, manifest: Manifest, archive: string): void {
  const read = <T>(name: DataName, schema: z.ZodType<T>, keep: (value: T) => void) => {
    let line = 0;
    try {
      for (const text of linesOf(join(unpacked, name))) {
        line++;
        // What is kept is the line as it stands: checking must not fill in what it lacks.
        const value = JSON.parse(text) as T;
        const checked = schema.safeParse(value);
        if (!checked.success) throw new Error(checked.error.issues[0]!.message);
        keep(value);
      }
    } catch (error) {
      throw error instanceof StoreFault ? error : new StoreFault([say.badLine(archive, name, line, reasonOf(error))]);
    }
  };

  readHistory(db, (keep) => read("history.jsonl", stepSchema, keep));
  if (manifest.files.some(({name}) => name === "sales.jsonl")) readSales(db, (keep) => read("sales.jsonl", saleStepSchema, keep));
  read("photos.jsonl", photoSchema, ({photo, mime, bytes, width, height, addedAt}) =>
    db.run("INSERT INTO photo (photo, mime, bytes, width, height, added_at) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO UPDATE SET added_at = excluded.added_at", photo, mime, bytes, width, height, addedAt));
  read("books.jsonl", bookEditionSchema.omit({yaml: true}), ({book, edition, title, savedAt, savedBy}) => {
    const name = bookName(book, edition);
    if (!manifest.files.some((file) => file.name === name)) throw new StoreFault([say.entryMissing(archive, name)]);
    const yaml = readFileSync(join(unpacked, name), "utf8");
    const there = db.one<{yaml: string}>("SELECT yaml FROM edition WHERE book = ? AND edition = ?", book, edition);
    if (there && there.yaml !== yaml) throw new StoreFault([say.otherBook(book, edition)]);
    if (!there) db.run("INSERT INTO edition (book, edition, title, yaml, saved_at, saved_by) VALUES (?, ?, ?, ?, ?, ?)", book, edition, title, yaml, savedAt, savedBy);
  });
  read("settings.jsonl", settingSchema, ({key, value}) => db.run("INSERT INTO setting (key, value) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value", key, value));

  const hash = createHash("sha256");
  for (const piece of asBytes(dataLines["garments.jsonl"](db))) hash.update(piece);
  if (hash.digest("hex") !== manifest.files.find(({name}) => name === "garments.jsonl")?.sha256) throw new StoreFault([say.contradiction(archive)]);
}

/** A garment hangs as its last step says; the steps before are its history. */
function readHistory(db: Database, read: (keep: (step: Step) => void) => void): void {
  let steps: Step[] = [];
  const hangLast = () => {
    if (steps.length === 0) return;
    for (const step of steps.slice(0, -1)) putStep(db, step);
    hang(db, steps.at(-1)!, steps[0]!.at, null);
    steps = [];
  };
  read((step) => {
    const before = steps.at(-1);
    if (before && before.id !== step.id) hangLast();
    if (step.rev !== steps.length + 1) throw new Error(`step ${step.rev} of ${step.id} stands where step ${steps.length + 1} should`);
    steps.push(step);
  });
  hangLast();
}

/** Each step of a written sale on top of the one before. */
function readSales(db: Database, read: (keep: (step: SaleStep) => void) => void): void {
  let before = {id: "", rev: 0};
  read((step) => {
    const wanted = step.id === before.id ? before.rev + 1 : 1;
    if (step.rev !== wanted || step.id < before.id) throw new Error(`step ${step.rev} of ${step.id} stands where step ${wanted} should`);
    putSale(db, step);
    before = step;
  });
}

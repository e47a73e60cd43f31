// ticking paper sheet.
import {join} from "node:path";
import {readSetting} from "../../commands/rack/read-setting.ts";
import {mostPhotos, type SheetSize} from "../../commands/paper/choices.ts";
import {sheetPage} from "../../paper/html/sheet-html.ts";
import {makeSheet, photosOf} from "../../paper/make.ts";
import type {PhotoBytes} from "../../paper/pdf/photos.ts";
import {printSheets, sheetPress} from "../../paper/print.ts";
import type {Sheet} from "../../paper/sheet/sheet.ts";
import type {GarmentRecord} from "../../store/model.ts";
import {partsOf} from "../../store/open.ts";
import {photoFiles} from "../../store/photo/photo-files.ts";
import {NeedsMending, orMend} from "../ending.ts";
import {counted} from "../rack/counted.ts";
import {withRack} from "../rack/with-rack.ts";
import {chosen, type ChosenFlags} from "./chosen.ts";
import {notPhotos, pageOfMany} from "./problems.ts";
import {progress} from "./progress.ts";
import {fileName, makeFolder, writePaper} from "./write.ts";

interface Flags extends ChosenFlags {
  readonly size: SheetSize;
  readonly out?: string;
  readonly each?: string;
  readonly photos?: string;
  readonly worth?: boolean;
}

export async function makeSheets(words: readonly string[], flags: Flags): Promise<void> {
  const photos = flags.photos === undefined ? 4 : Number(flags.photos);
  if (!Number.isInteger(photos) || photos < 0 || photos > mostPhotos) throw new NeedsMending([notPhotos(flags.photos!, mostPhotos)]);
  await withRack(flags, false, async (rack) => {
    const records = await chosen(words, flags, rack);
    const options = {on: rack.now.slice(0, 10), author: (await readSetting(rack.store, "owner")).value.name};
    const {read} = photoFiles(partsOf(rack.folder).photos);
    const one = async (record: GarmentRecord) => {
      const made = await makeSheet(record, rack, {on: options.on, photos, worth: flags.worth === true});
      const sheet = orMend(made.problems ? {problems: made.problems} : {answer: made.made});
      return {sheet, photos: await photosOf(sheet, read)};
    };
    if (flags.out?.endsWith(".html")) return page(records, one, flags.out);
    const told = progress("dating sheets", records.length);
    if (flags.each !== undefined) {
      makeFolder(flags.each);
      for (const [i, record] of records.entries()) {
        const made = await one(record);
        writePaper(join(flags.each, `${fileName(made.sheet.number)}.pdf`), await printSheets([made], flags.size, options));
        told.done(i + 1);
      }
      told.end();
      return void process.stderr.write(`${counted(records.length, "dating sheet")} in ${flags.each}.\n`);
    }
    const out = flags.out ?? "dating-sheets.pdf";
    writePaper(out, await together(records, one, flags.size, options, told));
    process.stderr.write(`${counted(records.length, "dating sheet")} in ${out}.\n`);
  });
}

interface Made {
  readonly sheet: Sheet;
  readonly photos: PhotoBytes;
}

async function together(records: readonly GarmentRecord[], one: (record: GarmentRecord) => Promise<Made>, size: SheetSize, options: {on: string; author: string}, told: ReturnType<typeof progress>): Promise<Uint8Array> {
  const first = await one(records[0]!);
  const press = sheetPress(records.length === 1 ? `Dating sheet ${first.sheet.number}` : `${records.length} dating sheets`, size, options);
  for (const [i, record] of records.entries()) {
    const {sheet, photos} = i === 0 ? first : await one(record);
    press.add(sheet, photos);
    told.done(i + 1);
  }
  told.end();
  return press.end();
}

async function page(records: readonly GarmentRecord[], one: (record: GarmentRecord) => Promise<Made>, out: string): Promise<void> {
  if (records.length > 1) throw new NeedsMending([pageOfMany(records.length)]);
  const {sheet, photos} = await one(records[0]!);
  const addressOf = (photo: string) => (photos.has(photo) ? `data:image/jpeg;base64,${Buffer.from(photos.get(photo)!).toString("base64")}` : null);
  writePaper(out, sheetPage(sheet, {addressOf, styleAt: null}));
  process.stderr.write(`1 dating sheet in ${out}.\n`);
}


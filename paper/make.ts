// Makes the papers of garments on the rack, whoever asks for them: sheets with their photos, tags, listing text.
import type {Rack} from "../commands/rack/rack.ts";
import {readSetting} from "../commands/rack/read-setting.ts";
import type {Form} from "../commands/paper/choices.ts";
import type {ListingTemplate} from "../commands/paper/listing-template.ts";
import type {Problem} from "../engine/index.ts";
import {gradeOf} from "../state/grade.ts";
import type {GarmentRecord} from "../store/model.ts";
import {gather, gradeRuleOf, type PaperWish} from "./gather.ts";
import {composeListing} from "./listing/listing.ts";
import {writeListing} from "./listing/forms.ts";
import type {PhotoBytes} from "./pdf/photos.ts";
import {composeSheet} from "./sheet/compose.ts";
import type {Sheet} from "./sheet/sheet.ts";
import {composeTag, type Tag} from "./tag/tag.ts";

export type Made<T> = {readonly made: T; readonly problems?: undefined} | {readonly made?: undefined; readonly problems: readonly Problem[]};

/** Reads a photo in one of the sizes that are kept; null when it went missing. */
export type ReadPhoto = (hash: string, size: "small" | "shown") => Promise<Uint8Array | null>;

export async function makeSheet(record: GarmentRecord, rack: Rack, {photos, ...wish}: PaperWish & {readonly photos: number}): Promise<Made<Sheet>> {
  const {material, problems} = await gather(record, rack, wish);
  return problems ? {problems: named(record, problems)} : {made: composeSheet(material, photos)};
}

/** The first photo large, the others as small as they stand there. */
export async function photosOf({photos}: Sheet, read: ReadPhoto): Promise<PhotoBytes> {
  const all = new Map<string, Uint8Array>();
  for (const [i, {photo}] of photos.entries()) {
    const bytes = await read(photo, i === 0 ? "shown" : "small");
    if (bytes) all.set(photo, bytes);
  }
  return all;
}

export async function makeTag({content}: GarmentRecord, rack: Rack, {price}: {readonly price: boolean}): Promise<Tag> {
  const {value: {name: shop}} = await readSetting(rack.store, "owner");
  const grade = content.state ? gradeOf(content.state, await gradeRuleOf(rack)).grade : null;
  const dating = content.dating ?? (await rack.date([content.garment]))[0]?.dating ?? null;
  return composeTag({...content, dating}, {shop, grade, price});
}

/** @param template  one that is tried; the owner's when left out */
export async function makeListing(record: GarmentRecord, rack: Rack, {form, template, ...wish}: PaperWish & {readonly form: Form; readonly template?: ListingTemplate}): Promise<Made<string>> {
  const {material, problems} = await gather(record, rack, wish);
  if (problems) return {problems: named(record, problems)};
  const used = template ?? (await readSetting(rack.store, "listing-template")).value;
  return {made: writeListing(form, composeListing(material, used), material)};
}

const named = ({content}: GarmentRecord, problems: readonly Problem[]): Problem[] => problems.map((problem) => ({...problem, at: `garment ${content.garment.garment}: ${problem.at}`}));

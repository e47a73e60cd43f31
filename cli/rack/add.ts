// ticking rack add: garments from files, with photos.
import {readFileSync} from "node:fs";
import {basename} from "node:path";
import {addGarment} from "../../commands/rack/add-garment.ts";
import * as sayRack from "../../commands/rack/problems.ts";
import {readMoney} from "../../commands/rack/table/money-cell.ts";
import type {Garment, Problem} from "../../engine/index.ts";
import {loadGarment} from "../../rulebooks/load.ts";
import {validateGarment} from "../../rulebooks/validate.ts";
import {partsOf} from "../../store/open.ts";
import {photoFiles} from "../../store/photo/photo-files.ts";
import type {Content} from "../../store/model.ts";
import {NeedsMending} from "../ending.ts";
import {notFound, notOpened} from "../problems.ts";
import {sayDated} from "./list.ts";
import * as say from "./problems.ts";
import {done, withRackToChange, type OpenRack, type RackFlags} from "./with-rack.ts";

export interface AddFlags extends RackFlags {
  readonly place?: string;
  readonly standing?: Content["standing"];
  readonly paid?: string;
  readonly asked?: string;
  readonly tag?: readonly string[];
  readonly photo?: readonly string[];
}

/** All garments are checked before the first is added. */
export async function addToRack(files: readonly string[], flags: AddFlags): Promise<void> {
  const {place, standing, tag: tags, photo: photos = []} = flags;
  const problems: Problem[] = [];
  const garments = files.flatMap((file): {at: string; garment: Garment}[] => {
    const checked = file === "-" ? validateGarment(readFileSync(0), "stdin") : loadGarment(file);
    problems.push(...(checked.problems ?? []));
    return checked.garment ? [{at: file, garment: checked.garment}] : [];
  });
  const money = (at: string, text: string | undefined) => {
    const read = text === undefined ? null : readMoney(text, null);
    if (text !== undefined && !read) problems.push(sayRack.badMoney(at, text));
    return read;
  };
  const [paid, asked] = [money("--paid", flags.paid), money("--asked", flags.asked)];
  if (photos.length > 0 && files.length > 1) problems.push(say.photoOfSeveral());
  if (problems.length > 0) throw new NeedsMending(problems);
  await withRackToChange(flags, true, async (rack) => {
    await checkGarments(garments, rack);
    const uses = await addPhotos(photos, rack);
    for (const {garment} of garments) {
      const {content} = await done(addGarment, {content: {garment, place, standing, paid, asked, tags, photos: uses}}, rack);
      process.stdout.write(`${garment.garment} hangs on the rack: ${sayDated(content)}.\n`);
    }
  });
}

/** Marks must be known, and numbers free. */
async function checkGarments(garments: readonly {readonly at: string; readonly garment: Garment}[], rack: OpenRack): Promise<void> {
  const problems: Problem[] = [];
  const dated = await rack.date(garments.map(({garment}) => garment));
  const first = new Map<string, string>();
  for (const [i, {at, garment: {garment: number}}] of garments.entries()) {
    problems.push(...(dated[i]!.problems ?? []).map((problem) => ({...problem, at: `${at} ${problem.at}`})));
    if (await rack.store.byNumber(number)) problems.push(sayRack.numberTaken(at, number));
    if (first.has(number)) problems.push(sayRack.numberTwice(at, number, first.get(number)!));
    else first.set(number, at);
  }
  if (problems.length > 0) throw new NeedsMending(problems);
}

async function addPhotos(paths: readonly string[], {folder, store, now}: OpenRack): Promise<{photo: string}[]> {
  const files = photoFiles(partsOf(folder).photos);
  const uses: {photo: string}[] = [];
  for (const path of paths) {
    const {photo, problems} = await files.add(bytesOf(path), basename(path), now);
    if (problems) throw new NeedsMending(problems);
    await store.addPhoto(photo);
    uses.push({photo: photo.photo});
  }
  return uses;
}

function bytesOf(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    const {code = "unknown reason"} = error as NodeJS.ErrnoException;
    throw new NeedsMending([code === "ENOENT" ? notFound(path) : notOpened(path, code)]);
  }
}

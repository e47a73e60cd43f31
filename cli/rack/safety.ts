// ticking rack backup, archive, restore and check.
import {existsSync} from "node:fs";
import {join} from "node:path";
import type {Problem} from "../../engine/index.ts";
import {restoreArchive} from "../../store/archive/restore-archive.ts";
import {writeArchive} from "../../store/archive/write-archive.ts";
import {restoreBackup} from "../../store/backup/restore-backup.ts";
import {listBackups, makeBackup} from "../../store/backup/backups.ts";
import {partsOf} from "../../store/open.ts";
import {photoFiles} from "../../store/photo/photo-files.ts";
import type {Store} from "../../store/store.ts";
import {dataFolder} from "../data-folder.ts";
import {NeedsMending} from "../ending.ts";
import {notFound} from "../problems.ts";
import {newPage, printPage} from "../words/print.ts";
import {counted} from "./counted.ts";
import * as say from "./problems.ts";
import {mending, withStore, type RackFlags} from "./with-rack.ts";

export async function backUp(flags: RackFlags & {readonly list?: boolean}): Promise<void> {
  const page = newPage();
  await withStore(flags, false, async ({folder, store, now}) => {
    const {backups} = partsOf(folder);
    if (!flags.list) page.say(`Backed up: ${join(backups, await makeBackup(store, folder, now))}`);
    const all = await listBackups(folder);
    if (flags.list) for (const {name, at} of all) page.item(`${at.slice(0, 16).replace("T", " ")} UTC  `, join(backups, name));
    if (flags.list && all.length === 0) page.say("There is no backup yet.");
  });
  printPage(page);
}

export async function archiveTo(file: string, flags: RackFlags): Promise<void> {
  if (existsSync(file)) throw new NeedsMending([say.fileThere(file)]);
  const {manifest: {garments, steps, photos, books}, missing} = await withStore(flags, false, ({folder}) => writeArchive(folder, file));
  process.stdout.write(`${file} holds ${counted(garments, "garment")} with ${counted(steps, "step")} of history, ${counted(photos - missing.length, "photo")} and ${counted(books, "edition")} of books.\n`);
  if (missing.length > 0) throw new NeedsMending(missing.map((photo) => say.photoUnsound(`photo ${photo.slice(0, 12)}…`, "it is not in the archive")));
}

/** An archive fills a new rack, or one on which nothing ever hung; a backup makes a new one. */
export async function restoreFrom(file: string, flags: RackFlags): Promise<void> {
  if (!existsSync(file)) throw new NeedsMending([notFound(file)]);
  const folder = dataFolder(flags.data);
  if (file.endsWith(".sqlite")) {
    const {garments, photos} = await mending(() => restoreBackup(file, folder));
    process.stdout.write(`Restored to ${folder}: ${counted(garments, "garment")}, ${photos ? "with the photos that stood beside the backup" : "without photos: none stand beside the backup"}.\n`);
    return;
  }
  const {restored, problems} = await mending(() => restoreArchive(file, folder));
  if (problems) throw new NeedsMending(problems);
  const {garments, photos, books} = restored;
  process.stdout.write(`Restored to ${folder}: ${counted(garments, "garment")}, ${counted(photos, "photo")} and ${counted(books, "edition")} of books.\n`);
}

/** Looks at every page of the database and at every original. */
export async function checkRack(flags: RackFlags): Promise<void> {
  const photos = await withStore(flags, false, async ({folder, store}) => {
    const problems: Problem[] = (await store.check()).map((said) => say.unsound(folder, said));
    const files = photoFiles(partsOf(folder).photos);
    const shown = await photosShown(store);
    let seen = 0;
    for (let after: string | null = null, page; (page = await store.photos(after, 200)).length > 0; after = page.at(-1)!.photo) {
      for (const {photo} of page) if (!(await files.isSound(photo))) problems.push(say.photoUnsound(`photo ${photo.slice(0, 12)}…`, shown.has(photo) ? `garment ${shown.get(photo)} shows it` : "an earlier step of a garment may show it"));
      seen += page.length;
    }
    if (problems.length > 0) throw new NeedsMending(problems);
    return seen;
  });
  process.stdout.write(`The rack is sound: the database, its history and ${counted(photos, "photo")}.\n`);
}

/** The number of a garment that shows a photo, by photo. */
async function photosShown(store: Store): Promise<ReadonlyMap<string, string>> {
  const shown = new Map<string, string>();
  for (let after: string | null = null, page; (page = await store.walk(after, 500)).length > 0; after = page.at(-1)!.id) {
    for (const {content} of page) for (const {photo} of content.photos) shown.set(photo, content.garment.garment);
  }
  return shown;
}

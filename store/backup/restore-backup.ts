// Makes a rack of a backup again, in a folder of its own: nothing that is there now is touched.
import {constants} from "node:fs";
import {copyFile, cp, mkdir, rm, stat} from "node:fs/promises";
import {dirname, join} from "node:path";
import {diskFault} from "../disk/disk-fault.ts";
import {StoreFault} from "../fault.ts";
import {openStore, partsOf} from "../open.ts";
import {rackThere} from "../problems.ts";

/**
 * Restores a backup of the database, and brings along the photos of the rack that it is of: they stand beside the folder of backups.
 * @param file    a backup, where it was made: in the folder of backups of its rack
 * @param folder  a rack that is not there yet
 * @returns how many garments hang on the restored rack, and whether photos were found beside the backup
 * @throws StoreFault when a rack is there already, the backup is damaged, or the disk refuses; the folder is then as it was
 */
export async function restoreBackup(file: string, folder: string): Promise<{readonly garments: number; readonly photos: boolean}> {
  const {database, photos} = partsOf(folder);
  if (await isThere(database)) throw new StoreFault([rackThere(folder)]);
  const beside = join(dirname(file), "..", "photos");
  const withPhotos = await isThere(beside);
  try {
    await mkdir(folder, {recursive: true});
    await copyFile(file, database, constants.COPYFILE_EXCL);
    const garments = await countIn(folder);
    if (withPhotos) await cp(beside, photos, {recursive: true, mode: constants.COPYFILE_FICLONE});
    return {garments, photos: withPhotos};
  } catch (error) {
    for (const end of ["", "-wal", "-shm"]) await rm(`${database}${end}`, {force: true});
    throw error instanceof StoreFault ? error : diskFault(error, folder);
  }
}

async function countIn(folder: string): Promise<number> {
  const store = await openStore(folder);
  try {
    return await store.count();
  } finally {
    await store.close();
  }
}

const isThere = (path: string) => stat(path).then(() => true, () => false);

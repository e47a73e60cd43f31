// Restores an archive to an empty rack, as a whole or not at all, while others may have the rack open.
import {randomUUID} from "node:crypto";
import {existsSync, mkdirSync, renameSync} from "node:fs";
import {rm, statfs} from "node:fs/promises";
import {dirname, join} from "node:path";
import type {Problem} from "../../engine/problem.ts";
import {diskFault} from "../disk/disk-fault.ts";
import {StoreFault} from "../fault.ts";
import {openFiles, partsOf} from "../open.ts";
import {originalPath} from "../photo/photo-files.ts";
import type {Database} from "../sqlite/database.ts";
import {photoName, type Manifest} from "./manifest.ts";
import {openZip} from "./open-zip.ts";
import * as say from "./problems.ts";
import {takeOver} from "./take-over.ts";
import {readManifest, unpack} from "./unpack.ts";

export type Restored = {readonly restored: Manifest; readonly problems?: undefined} | {readonly restored?: undefined; readonly problems: readonly Problem[]};

/**
 * Everything is unpacked beside the rack and checked; then one transaction takes it over.
 * @param archive  path of the file
 * @param folder   of the rack; made when it is not there, and taken away again when the archive is refused
 * @throws StoreFault when the disk is full or closed; nothing was restored then
 */
export async function restoreArchive(archive: string, folder: string): Promise<Restored> {
  const {zip, problems} = await openZip(archive);
  if (problems) return {problems};
  const isNew = !existsSync(folder);
  const {photos} = partsOf(folder);
  const unpacked = join(photos, "waiting", `restore-${randomUUID()}`);
  let restored: Restored;
  try {
    restored = await restore();
  } catch (error) {
    const fault = diskFault(error, folder);
    if (isNew) await rm(folder, {recursive: true, force: true});
    throw fault;
  } finally {
    zip.close();
    await rm(unpacked, {recursive: true, force: true});
  }
  if (restored.problems && isNew) await rm(folder, {recursive: true, force: true});
  return restored;

  async function restore(): Promise<Restored> {
    const {manifest, problems: slips} = await readManifest(zip!, archive);
    if (slips) return {problems: slips};
    const lack = await roomProblems(manifest, archive, folder);
    if (lack.length > 0) return {problems: lack};
    const db = openFiles(folder);
    try {
      if (!isEmpty(db)) return {problems: [say.rackNotEmpty(folder)]};
      const wrong = await unpack(zip!, manifest, archive, unpacked);
      if (wrong.length > 0) return {problems: wrong};
      db.write(() => {
        if (!isEmpty(db)) throw new StoreFault([say.rackNotEmpty(folder)]);
        takeOver(db, unpacked, manifest, archive);
        for (const {name, sha256} of manifest.files) if (name === photoName(sha256)) move(join(unpacked, name), originalPath(photos, sha256));
      });
      return {restored: manifest};
    } catch (error) {
      if (error instanceof StoreFault && error.problems.every(({code}) => code.startsWith("archive/"))) return {problems: error.problems};
      throw error;
    } finally {
      db.close();
    }
  }
}

const isEmpty = (db: Database) => db.one("SELECT 1 FROM step UNION ALL SELECT 1 FROM sale_step LIMIT 1") === null;

function move(from: string, to: string): void {
  mkdirSync(dirname(to), {recursive: true});
  renameSync(from, to);
}

/** Data are unpacked, then written into the database: they need their room twice, and some for the index. */
async function roomProblems({files}: Manifest, archive: string, folder: string): Promise<Problem[]> {
  const needed = files.reduce((sum, {name, bytes}) => sum + (name.startsWith("photos/") ? bytes : 3 * bytes), 10_000_000);
  let there = folder;
  while (!existsSync(there) && dirname(there) !== there) there = dirname(there);
  const {bavail, bsize} = await statfs(there);
  const megabytes = (bytes: number) => Math.ceil(bytes / 1e6);
  return needed > bavail * bsize ? [say.noRoom(archive, megabytes(needed), megabytes(bavail * bsize))] : [];
}

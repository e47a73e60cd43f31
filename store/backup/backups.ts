// Backups of the database in their folder: made while others write, named by their time, thinned out with age.
import {randomUUID} from "node:crypto";
import {open, mkdir, readdir, rename, rm} from "node:fs/promises";
import {join} from "node:path";
import {diskFault} from "../disk/disk-fault.ts";
import {partsOf} from "../open.ts";
import type {Store} from "../store.ts";
import {backupDue, backupsToKeep} from "./which-to-keep.ts";

const nameOf = (time: string) => `rack-${time.slice(0, 19).replaceAll(":", "-")}Z.sqlite`;
const namePattern = /^rack-(\d{4}-\d{2}-\d{2})T(\d{2})-(\d{2})-(\d{2})Z\.sqlite$/;

export interface Backup {
  /** Of the file in the folder of backups. */
  readonly name: string;
  /** UTC. */
  readonly at: string;
}

/** Backups that were made by the day, oldest first; copies that were put aside before a change of the whole rack are none of them, and stay. */
export async function listBackups(folder: string): Promise<readonly Backup[]> {
  const names = await readdir(partsOf(folder).backups).catch(() => []);
  return names
    .flatMap((name) => {
      const [, day, hour, minute, second] = namePattern.exec(name) ?? [];
      return day ? [{name, at: `${day}T${hour}:${minute}:${second}.000Z`}] : [];
    })
    .sort((a, b) => (a.at < b.at ? -1 : 1));
}

/**
 * Makes a backup, and takes away those that have become too many.
 * Photos are not in it: their files never change, and nothing deletes them.
 * @param now  UTC
 * @returns    the name of its file
 * @throws StoreFault when the disk is full or closed; older backups are all there then
 */
export async function makeBackup(store: Store, folder: string, now: string): Promise<string> {
  const {backups} = partsOf(folder);
  const name = nameOf(now);
  const part = join(backups, `${randomUUID()}.part`);
  try {
    await mkdir(backups, {recursive: true});
    await store.backup(part);
    await syncFile(part);
    await rename(part, join(backups, name));
  } catch (error) {
    await rm(part, {force: true});
    throw diskFault(error, folder);
  }
  const all = await listBackups(folder);
  const keep = backupsToKeep(all.map(({at}) => at));
  for (const old of all) if (!keep.has(old.at)) await rm(join(backups, old.name), {force: true});
  return name;
}

/** Makes the backup of the day when there is none yet; null when there is. */
export async function backUpWhenDue(store: Store, folder: string, now: string): Promise<string | null> {
  const all = await listBackups(folder);
  return backupDue(now, all.map(({at}) => at)) ? makeBackup(store, folder, now) : null;
}

async function syncFile(path: string): Promise<void> {
  const file = await open(path, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}

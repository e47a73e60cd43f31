// Opens a rack: one folder with the database, the photos and the backups.
import {accessSync, constants, mkdirSync} from "node:fs";
import {join} from "node:path";
import {StoreFault} from "./fault.ts";
import {folderClosed} from "./problems.ts";
import {openDatabase, type Database} from "./sqlite/database.ts";
import {migrate} from "./sqlite/migrate.ts";
import {sqliteStore} from "./sqlite/sqlite-store.ts";
import type {Store} from "./store.ts";

/** Where the parts of a rack stand in its folder. */
export const partsOf = (folder: string) => ({database: join(folder, "ticking.sqlite"), photos: join(folder, "photos"), backups: join(folder, "backups")});

/**
 * Opens the rack in a folder; the folder is made when it is not there.
 * @throws StoreFault when the folder cannot be used, or was written by a newer program
 */
export async function openStore(folder: string): Promise<Store> {
  return sqliteStore(openFiles(folder));
}

/** The same, as the bare database: for those that work on the whole of it. */
export function openFiles(folder: string): Database {
  const {database, photos, backups} = partsOf(folder);
  let db: Database | null = null;
  try {
    for (const path of [folder, photos, backups]) mkdirSync(path, {recursive: true});
    accessSync(folder, constants.W_OK);
    db = openDatabase(database);
    migrate(db, folder, backups);
    return db;
  } catch (error) {
    db?.close();
    throw error instanceof StoreFault ? error : new StoreFault([folderClosed(folder, reasonOf(error))]);
  }
}

const reasonOf = (error: unknown) => (error instanceof Error ? error.message.replace(/^E[A-Z]+: /, "").split(",")[0]! : String(error));

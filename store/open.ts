// Opens a rack: one folder with the database, the photos and the backups.
import {accessSync, constants, mkdirSync} from "node:fs";
import {join} from "node:path";
import {StoreFault} from "./fault.ts";
import {dataDamaged, folderClosed} from "./problems.ts";
import {openDatabase, type Database} from "./sqlite/database.ts";
import {migrate} from "./sqlite/migrate.ts";
import {sqliteStore} from "./sqlite/sqlite-store.ts";
import type {Store} from "./store.ts";

/** Where the parts of a rack stand in its folder. */
export const partsOf = (folder: string) => ({database: join(folder, "ticking.sqlite"), photos: join(folder, "photos"), backups: join(folder, "backups")});

/**
 * Opens the rack in a folder; the folder is made when it is not there.
 * @throws StoreFault when the folder cannot be used, its database is damaged, or it was written by a newer program
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
    if (error instanceof StoreFault) throw error;
    const reason = reasonOf(error);
    throw new StoreFault([damaged.test(reason) ? dataDamaged(database, reason) : folderClosed(folder, reason)]);
  }
}

/** Words of SQLITE_NOTADB and SQLITE_CORRUPT. Source: SQLite, "Result and Error Codes" (sqlite.org/rescode.html), and sqlite3_errstr of 3.53. */
const damaged = /file is not a database|malformed/;

const reasonOf = (error: unknown) => (error instanceof Error ? error.message.replace(/^E[A-Z]+: /, "").split(",")[0]! : String(error));

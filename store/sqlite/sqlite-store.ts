// The store on SQLite: one file, several processes at once.
import type {BookEdition, Photo} from "../model.ts";
import type {Store} from "../store.ts";
import {checkAll} from "./check-all.ts";
import type {Database} from "./database.ts";
import {findSalesIn} from "./find-sales.ts";
import {garmentsIn} from "./garments.ts";
import {salesIn} from "./sales.ts";
import {searchIn} from "./search.ts";

interface PhotoRow extends Omit<Photo, "addedAt"> {
  readonly added_at: string;
}

interface EditionRow extends Omit<BookEdition, "savedAt" | "savedBy"> {
  readonly saved_at: string;
  readonly saved_by: string;
}

/** A store on an open database that has the newest shape. */
export function sqliteStore(db: Database): Store {
  return {
    ...garmentsIn(db),
    search: searchIn(db),
    ...salesIn(db),
    findSales: findSalesIn(db),
    addPhoto: async ({photo, mime, bytes, width, height, addedAt}) => {
      db.run("INSERT INTO photo (photo, mime, bytes, width, height, added_at) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING", photo, mime, bytes, width, height, addedAt);
    },
    photo: async (hash) => {
      const row = db.one<PhotoRow>("SELECT * FROM photo WHERE photo = ?", hash);
      return row && photoOf(row);
    },
    photos: async (after, limit) => db.all<PhotoRow>("SELECT * FROM photo WHERE photo > ? ORDER BY photo LIMIT ?", after ?? "", limit).map(photoOf),
    editions: async (book) =>
      db
        .all<EditionRow>("SELECT * FROM edition WHERE ? IS NULL OR book = ? ORDER BY book, edition", book ?? null, book ?? null)
        .map(({saved_at, saved_by, ...rest}) => ({...rest, savedAt: saved_at, savedBy: saved_by})),
    addEdition: async ({book, edition, title, yaml, savedAt, savedBy}) =>
      db.run("INSERT INTO edition (book, edition, title, yaml, saved_at, saved_by) VALUES (?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING", book, edition, title, yaml, savedAt, savedBy) > 0,
    setting: async (key) => db.one<{value: string}>("SELECT value FROM setting WHERE key = ?", key)?.value ?? null,
    setSetting: async (key, value) => {
      if (value === null) db.run("DELETE FROM setting WHERE key = ?", key);
      else db.run("INSERT INTO setting (key, value) VALUES (?, ?) ON CONFLICT (key) DO UPDATE SET value = excluded.value", key, value);
    },
    swapSetting: async (key, seen, value) =>
      seen === null
        ? db.run("INSERT INTO setting (key, value) VALUES (?, ?) ON CONFLICT DO NOTHING", key, value) > 0
        : db.run("UPDATE setting SET value = ? WHERE key = ? AND value = ?", value, key, seen) > 0,
    backup: async (path) => void db.run("VACUUM INTO ?", path),
    check: async () => checkAll(db),
    close: async () => db.close(),
  };
}

const photoOf = ({added_at, ...rest}: PhotoRow): Photo => ({...rest, addedAt: added_at});

// The small database of this device: drafts not yet saved, and saves and photos that wait for the server.
import {openDB, type DBSchema, type IDBPDatabase} from "idb";
import type {Draft, Waiting} from "./kept.ts";

interface Shape extends DBSchema {
  readonly draft: {readonly key: string; readonly value: Draft};
  readonly waiting: {readonly key: number; readonly value: Waiting};
  readonly photo: {readonly key: string; readonly value: {readonly photo: string; readonly blob: Blob}};
}

let opened: Promise<IDBPDatabase<Shape>> | null = null;

/** Opens the database once; when the browser keeps none (a private window, a full disk) the promise is refused. */
export function database(): Promise<IDBPDatabase<Shape>> {
  opened ??= openDB<Shape>("ticking", 2, {
    upgrade(db, before) {
      if (before < 1) {
        db.createObjectStore("draft", {keyPath: "garment"});
        db.createObjectStore("waiting", {keyPath: "key", autoIncrement: true});
      }
      db.createObjectStore("photo", {keyPath: "photo"});
    },
    // Another tab wants a newer shape, or the browser closed it: the next use opens it again.
    blocking: () => forget(true),
    terminated: () => forget(false),
  }).catch((error: unknown) => {
    opened = null;
    throw error;
  });
  return opened;
}

function forget(close: boolean): void {
  const was = opened;
  opened = null;
  if (close) void was?.then((db) => db.close());
}

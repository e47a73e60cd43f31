// Brings a database file to the newest shape, step by step, a copy of the old one put aside first.
import {mkdirSync} from "node:fs";
import {join} from "node:path";
import {StoreFault} from "../fault.ts";
import {newerData} from "../problems.ts";
import type {Database} from "./database.ts";
import {migrations} from "./migrations.ts";

const versionOf = (db: Database) => db.one<{user_version: number}>("PRAGMA user_version")!.user_version;

/**
 * @param backups  the folder for the copy
 * @throws StoreFault when the file was written by a newer program
 */
export function migrate(db: Database, folder: string, backups: string, steps: readonly string[] = migrations): void {
  const before = versionOf(db);
  if (before > steps.length) throw new StoreFault([newerData(folder, before, steps.length)]);
  if (before === steps.length) return;
  if (before > 0) {
    mkdirSync(backups, {recursive: true});
    db.run("VACUUM INTO ?", join(backups, `before-shape-${before + 1}-${Date.now()}.sqlite`));
  }
  db.write(() => {
    // Another process may have done it while this one waited.
    for (let version = versionOf(db); version < steps.length; version++) {
      db.exec(steps[version]!);
      db.exec(`PRAGMA user_version = ${version + 1}`);
    }
  });
}

// Opens the database file: settings for safety, statements prepared once, transactions.
import {dirname} from "node:path";
import {DatabaseSync} from "@photostructure/sqlite";
import {diskFault} from "../disk/disk-fault.ts";

export type Value = string | number | bigint | Uint8Array | null;
export type Row = Readonly<Record<string, Value>>;

/** A thin layer over the database; every call is synchronous, so nothing of this process comes between. A disk that is full or closed ends a call with a StoreFault. */
export interface Database {
  exec(sql: string): void;
  all<T = Row>(sql: string, ...values: readonly Value[]): T[];
  one<T = Row>(sql: string, ...values: readonly Value[]): T | null;
  /** Rows changed. */
  run(sql: string, ...values: readonly Value[]): number;
  /** All or nothing; other writers wait. */
  write<T>(work: () => T): T;
  close(): void;
}

/** How long a write waits for another process. */
const busyMs = 10_000;

/**
 * Opens a database.
 * Write-ahead logging with a full sync on every commit: what was answered is on the disk.
 */
export function openDatabase(file: string): Database {
  const onDisk = <T>(work: () => T): T => {
    try {
      return work();
    } catch (error) {
      throw diskFault(error, dirname(file));
    }
  };
  const db = new DatabaseSync(file);
  db.exec(`PRAGMA busy_timeout = ${busyMs}; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA cache_size = -32000; PRAGMA journal_size_limit = 20000000`);
  const prepared = new Map<string, ReturnType<typeof db.prepare>>();
  const statement = (sql: string) => {
    let found = prepared.get(sql);
    if (!found) prepared.set(sql, (found = db.prepare(sql)));
    return found;
  };
  return {
    exec: (sql) => onDisk(() => db.exec(sql)),
    all: <T>(sql: string, ...values: readonly Value[]) => onDisk(() => statement(sql).all(...values) as T[]),
    one: <T>(sql: string, ...values: readonly Value[]) => onDisk(() => (statement(sql).get(...values) as T | undefined) ?? null),
    run: (sql, ...values) => onDisk(() => Number(statement(sql).run(...values).changes)),
    write(work) {
      onDisk(() => db.exec("BEGIN IMMEDIATE"));
      try {
        const result = work();
        onDisk(() => db.exec("COMMIT"));
        return result;
      } catch (error) {
        if (db.isTransaction) db.exec("ROLLBACK");
        throw error;
      }
    },
    close() {
      prepared.clear();
      db.close();
    },
  };
}

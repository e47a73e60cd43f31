// Puts a step into the history, and the garment as it stands after it onto the rack: columns, tags, words, and its sale.
import type {Step} from "../model.ts";
import {columnsOf, wordsOf} from "./columns.ts";
import type {Database, Value} from "./database.ts";
import {followGarment} from "./put-sale.ts";

/** @param n  row number of the garment; null: a new one */
export function hang(db: Database, step: Step, createdAt: string, n: number | null): void {
  const {id, rev, at, who, removed, content} = step;
  const seq = putStep(db, step);
  const row = put(db, {id, rev, seq, created_at: createdAt, changed_at: at, changed_by: who, removed: Number(removed), ...columnsOf(content)}, n);
  db.run("DELETE FROM tag WHERE n = ?", row);
  for (const tag of new Set(content.tags)) db.run("INSERT INTO tag (n, tag) VALUES (?, ?)", row, tag);
  if (n !== null) db.run("DELETE FROM words WHERE rowid = ?", row);
  db.run("INSERT INTO words (rowid, body) VALUES (?, ?)", row, wordsOf(content));
  followGarment(db, step);
}

/** The history alone. */
export function putStep(db: Database, {id, rev, at, who, what, removed, content}: Step): number {
  const sql = "INSERT INTO step (id, rev, at, who, what, removed, content) VALUES (?, ?, ?, ?, ?, ?, ?) RETURNING seq";
  return db.one<{seq: number}>(sql, id, rev, at, who, what, Number(removed), JSON.stringify(content))!.seq;
}

function put(db: Database, columns: Readonly<Record<string, Value>>, n: number | null): number {
  const names = Object.keys(columns);
  if (n === null) return db.one<{n: number}>(`INSERT INTO garment (${names.join(", ")}) VALUES (${names.map(() => "?").join(", ")}) RETURNING n`, ...Object.values(columns))!.n;
  db.run(`UPDATE garment SET ${names.map((name) => `${name} = ?`).join(", ")} WHERE n = ?`, ...Object.values(columns), n);
  return n;
}

// The data of a rack as lines of JSON, always in the same order, so that the same rack gives the same bytes.
import type {Database, Value} from "../sqlite/database.ts";
import {isSecret, type DataName} from "./manifest.ts";

type Line = Readonly<Record<string, Value>>;

/** Contents are handed on as they were saved, letter by letter. */
const raw = (entries: Readonly<Record<string, string>>) => `{${Object.entries(entries).map(([name, text]) => `"${name}":${text}`).join(",")}}`;
const said = (value: Value) => JSON.stringify(value);
const yes = (value: Value) => String(value === 1);

export const dataLines: Readonly<Record<DataName, (db: Database) => Generator<string>>> = {
  "garments.jsonl": (db) =>
    inPages(
      db,
      "SELECT garment.id, garment.rev, created_at, changed_at, changed_by, garment.removed, content FROM garment JOIN step USING (seq) WHERE garment.id > ? ORDER BY garment.id LIMIT ?",
      [""],
      ({id}) => [id!],
      (g) => raw({id: said(g.id!), rev: said(g.rev!), createdAt: said(g.created_at!), changedAt: said(g.changed_at!), changedBy: said(g.changed_by!), removed: yes(g.removed!), content: g.content as string}),
    ),
  "history.jsonl": (db) =>
    inPages(
      db,
      "SELECT id, rev, at, who, what, removed, content FROM step WHERE (id, rev) > (?, ?) ORDER BY id, rev LIMIT ?",
      ["", 0],
      ({id, rev}) => [id!, rev!],
      (s) => raw({id: said(s.id!), rev: said(s.rev!), at: said(s.at!), who: said(s.who!), what: said(s.what!), removed: yes(s.removed!), content: s.content as string}),
    ),
  "sales.jsonl": (db) =>
    inPages(
      db,
      "SELECT id, rev, at, who, what, removed, body FROM sale_step WHERE (id, rev) > (?, ?) ORDER BY id, rev LIMIT ?",
      ["", 0],
      ({id, rev}) => [id!, rev!],
      (s) => raw({id: said(s.id!), rev: said(s.rev!), at: said(s.at!), who: said(s.who!), what: said(s.what!), removed: yes(s.removed!), sale: s.body as string}),
    ),
  "photos.jsonl": (db) =>
    inPages(db, "SELECT photo, mime, bytes, width, height, added_at FROM photo WHERE photo > ? ORDER BY photo LIMIT ?", [""], ({photo}) => [photo!], ({added_at, ...rest}) => JSON.stringify({...rest, addedAt: added_at})),
  "books.jsonl": (db) =>
    inPages(
      db,
      "SELECT book, edition, title, saved_at, saved_by FROM edition WHERE (book, edition) > (?, ?) ORDER BY book, edition LIMIT ?",
      ["", 0],
      ({book, edition}) => [book!, edition!],
      ({saved_at, saved_by, ...rest}) => JSON.stringify({...rest, savedAt: saved_at, savedBy: saved_by}),
    ),
  *"settings.jsonl"(db) {
    for (const {key, value} of db.all<{key: string; value: string}>("SELECT key, value FROM setting ORDER BY key")) if (!isSecret(key)) yield JSON.stringify({key, value});
  },
};

/** @param start  what stands for the question marks of the first page, the limit left out */
function* inPages(db: Database, sql: string, start: readonly Value[], next: (last: Line) => readonly Value[], print: (line: Line) => string): Generator<string> {
  for (let after = start; ; ) {
    const page = db.all<Line>(sql, ...after, 500);
    for (const line of page) yield print(line);
    if (page.length < 500) return;
    after = next(page.at(-1)!);
  }
}

/** Lines as bytes, many at once. */
export function* asBytes(lines: Iterable<string>): Generator<Buffer> {
  let waiting = "";
  for (const line of lines) {
    waiting += `${line}\n`;
    if (waiting.length < 100_000) continue;
    yield Buffer.from(waiting);
    waiting = "";
  }
  if (waiting !== "") yield Buffer.from(waiting);
}

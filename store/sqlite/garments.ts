// Garments and their history: every save is a step that stays.
import type {Content, GarmentRecord, Step} from "../model.ts";
import type {Save, Saved, SavedTogether, Store} from "../store.ts";
import type {Database} from "./database.ts";
import {hang} from "./hang.ts";
import {newId} from "./new-id.ts";
import {readContent} from "./read-content.ts";

interface GarmentRow {
  readonly n: number;
  readonly id: string;
  readonly rev: number;
  readonly created_at: string;
  readonly changed_at: string;
  readonly changed_by: string;
  readonly removed: number;
  readonly content: string;
}

/** The content of a garment is that of its newest step. */
const selectRecord = `SELECT n, garment.id, garment.rev, created_at, changed_at, changed_by, garment.removed, content FROM garment JOIN step USING (seq)`;

export function garmentsIn(db: Database): Pick<Store, "get" | "byNumber" | "count" | "save" | "saveAll" | "walk" | "history"> {
  const rowOf = (id: string) => db.one<GarmentRow>(`${selectRecord} WHERE garment.id = ?`, id);

  const contentAt = (id: string, rev: number): Content | null => {
    const found = db.one<{content: string}>("SELECT content FROM step WHERE id = ? AND rev = ?", id, rev);
    return found && readContent(found.content);
  };

  /** Null when nothing stands in the way. */
  const stopped = ({id, base}: Save): Saved | null => {
    if (id === null) return null;
    const now = rowOf(id);
    if (!now) return {unknown: true};
    return now.rev === base ? null : {conflict: {now: recordOf(now), base: contentAt(id, base)}};
  };

  const apply = ({id: given, content, removed, who, what, at}: Save): Saved => {
    const before = given === null ? null : rowOf(given)!;
    const step: Step = {id: given ?? newId(at), rev: (before?.rev ?? 0) + 1, at, who, what, removed: removed ?? before?.removed === 1, content};
    const createdAt = before?.created_at ?? at;
    hang(db, step, createdAt, before?.n ?? null);
    return {saved: {id: step.id, rev: step.rev, createdAt, changedAt: at, changedBy: who, removed: step.removed, content: JSON.parse(JSON.stringify(content)) as Content}};
  };

  /** All in one transaction; a change that is stopped takes the others back. */
  const saveAll = (changes: readonly Save[]): readonly SavedTogether[] =>
    db.write(() => {
      const stops = changes.map(stopped);
      return stops.every((stop) => stop === null) ? changes.map(apply) : stops.map((stop) => stop ?? {held: true});
    });

  return {
    get: async (id) => {
      const row = rowOf(id);
      return row && recordOf(row);
    },
    count: async () => db.one<{count: number}>("SELECT count(*) AS count FROM garment WHERE removed = 0")!.count,
    byNumber: async (number) => {
      const row = db.one<GarmentRow>(`${selectRecord} WHERE number = ? AND garment.removed = 0 ORDER BY n LIMIT 1`, number);
      return row && recordOf(row);
    },
    save: async (change) => db.write(() => stopped(change) ?? apply(change)),
    saveAll: async (changes) => {
      const known = changes.flatMap(({id}) => id ?? []);
      if (new Set(known).size < known.length) throw new Error("one garment twice among changes that are saved together");
      return saveAll(changes);
    },
    walk: async (after, limit) => db.all<GarmentRow>(`${selectRecord} WHERE garment.id > ? ORDER BY garment.id LIMIT ?`, after ?? "", limit).map(recordOf),
    history: async (id) =>
      db
        .all<Omit<Step, "removed" | "content"> & {removed: number; content: string}>("SELECT id, rev, at, who, what, removed, content FROM step WHERE id = ? ORDER BY rev", id)
        .map((step) => ({...step, removed: step.removed === 1, content: readContent(step.content)})),
  };
}

function recordOf({id, rev, created_at, changed_at, changed_by, removed, content}: GarmentRow): GarmentRecord {
  return {id, rev, createdAt: created_at, changedAt: changed_at, changedBy: changed_by, removed: removed === 1, content: readContent(content)};
}

// Sales and their history: every save of a written one is a step that stays; those of garments are changed on the garment.
import type {Sale, SaleRecord} from "../../worth/model.ts";
import type {SaleStep} from "../model.ts";
import type {SaleSave, SavedSale, Store} from "../store.ts";
import type {Database} from "./database.ts";
import {newId} from "./new-id.ts";
import {putSale} from "./put-sale.ts";

export interface SaleRow {
  readonly id: string;
  readonly rev: number;
  readonly changed_at: string;
  readonly changed_by: string;
  readonly removed: number;
  readonly garment: string | null;
  readonly body: string;
}

export const selectSale = "SELECT id, rev, changed_at, changed_by, removed, garment, body FROM sale";

export function salesIn(db: Database): Pick<Store, "sale" | "saveSales" | "walkSales" | "saleHistory" | "salesSince"> {
  const rowOf = (id: string) => db.one<SaleRow>(`${selectSale} WHERE id = ?`, id);

  const saleAt = (id: string, rev: number): Sale | null => {
    const found = db.one<{body: string}>("SELECT body FROM sale_step WHERE id = ? AND rev = ?", id, rev);
    return found && (JSON.parse(found.body) as Sale);
  };

  /** Null when nothing stands in the way. */
  const stopped = ({id, base}: SaleSave): SavedSale | null => {
    if (id === null) return null;
    const now = rowOf(id);
    if (!now || now.garment !== null) return {unknown: true};
    return now.rev === base ? null : {conflict: {now: saleRecordOf(now), base: saleAt(id, base)}};
  };

  const apply = ({id: given, sale, removed, who, what, at}: SaleSave): SavedSale => {
    const before = given === null ? null : rowOf(given)!;
    const step: SaleStep = {id: given ?? newId(at), rev: (before?.rev ?? 0) + 1, at, who, what, removed: removed ?? before?.removed === 1, sale};
    putSale(db, step);
    return {saved: {id: step.id, rev: step.rev, changedAt: at, changedBy: who, removed: step.removed, garment: null, sale: JSON.parse(JSON.stringify(sale)) as Sale}};
  };

  return {
    sale: async (id) => {
      const row = rowOf(id);
      return row && saleRecordOf(row);
    },
    saveSales: async (changes) => {
      const known = changes.flatMap(({id}) => id ?? []);
      if (new Set(known).size < known.length) throw new Error("one sale twice among changes that are saved together");
      return db.write(() => {
        const stops = changes.map(stopped);
        return stops.every((stop) => stop === null) ? changes.map(apply) : stops.map((stop) => stop ?? {held: true as const});
      });
    },
    walkSales: async (after, limit) => db.all<SaleRow>(`${selectSale} WHERE id > ? ORDER BY id LIMIT ?`, after ?? "", limit).map(saleRecordOf),
    saleHistory: async (id) =>
      db
        .all<Omit<SaleStep, "removed" | "sale"> & {removed: number; body: string}>("SELECT id, rev, at, who, what, removed, body FROM sale_step WHERE id = ? ORDER BY rev", id)
        .map(({body, ...step}) => ({...step, removed: step.removed === 1, sale: JSON.parse(body) as Sale})),
    salesSince: async (mark) => {
      const at = Object.fromEntries(db.all<{name: string; value: number}>("SELECT name, value FROM counter WHERE name IN ('sales', 'sales emptied')").map(({name, value}) => [name, value]));
      const whole = mark === null || mark < at["sales emptied"]!;
      if (!whole && mark === at.sales) return {mark, whole, sales: []};
      // One text of all of them is handed over faster than as many rows; removed ones tell only those who know them.
      const {lines} = db.one<{lines: string}>(
        `SELECT json_group_array(json_object('id', id, 'garment', garment, 'removed', json(CASE removed WHEN 1 THEN 'true' ELSE 'false' END), 'sale', json(body))) AS lines FROM sale WHERE ${whole ? "removed = 0 AND mark > ?" : "mark > ?"}`,
        whole ? -1 : mark,
      )!;
      return {mark: at.sales!, whole, sales: JSON.parse(lines) as Pick<SaleRecord, "id" | "garment" | "removed" | "sale">[]};
    },
  };
}

export function saleRecordOf({id, rev, changed_at, changed_by, removed, garment, body}: SaleRow): SaleRecord {
  return {id, rev, changedAt: changed_at, changedBy: changed_by, removed: removed === 1, garment, sale: JSON.parse(body) as Sale};
}

// Puts sales where they are looked for: columns and words, and a mark that grows with every change.
import type {SaleStep, Step} from "../model.ts";
import type {Sale, SaleRecord} from "../../worth/model.ts";
import type {Database, Value} from "./database.ts";
import {saleOfGarment} from "./sale-of-garment.ts";

/** Puts a step of a written sale into the history, and the sale as it stands after it among the others. */
export function putSale(db: Database, {id, rev, at, who, what, removed, sale}: SaleStep): void {
  place(db, {id, rev, changedAt: at, changedBy: who, removed, garment: null, sale});
  db.run("INSERT INTO sale_step (id, rev, at, who, what, removed, body) VALUES (?, ?, ?, ?, ?, ?, ?)", id, rev, at, who, what, Number(removed), JSON.stringify(sale));
}

/** The sale of a garment follows it: it comes when the garment is sold, changes with it, and goes when it is not sold after all or taken off the rack. */
export function followGarment(db: Database, {id, rev, at, who, removed, content}: Step): void {
  const sale = saleOfGarment(content);
  const there = db.one<{body: string; removed: number}>("SELECT body, removed FROM sale WHERE id = ?", id);
  if (!sale && !there) return;
  place(db, {id, rev, changedAt: at, changedBy: who, removed: removed || sale === null, garment: id, sale: sale ?? (JSON.parse(there!.body) as Sale)});
}

function place(db: Database, {id, rev, changedAt, changedBy, removed, garment, sale}: SaleRecord): void {
  const {value: mark} = db.one<{value: number}>("UPDATE counter SET value = value + 1 WHERE name = 'sales' RETURNING value")!;
  const {soldOn, price, kind, maker, grade, channel} = sale;
  const columns: Readonly<Record<string, Value>> = {
    id, rev, mark, changed_at: changedAt, changed_by: changedBy, removed: Number(removed), garment, body: JSON.stringify(sale),
    sold_on: soldOn, cents: price.cents, kind, maker, grade, channel, words: folded([kind, maker, sale.lot, sale.size, channel, grade, sale.note].filter(Boolean).join("\n")),
  };
  const names = Object.keys(columns);
  db.run(
    `INSERT INTO sale (${names.join(", ")}) VALUES (${names.map(() => "?").join(", ")}) ON CONFLICT (id) DO UPDATE SET ${names.slice(1).map((name) => `${name} = excluded.${name}`).join(", ")}`,
    ...Object.values(columns),
  );
}

/** Letters without case and accents. */
export const folded = (text: string) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

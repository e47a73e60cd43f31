// Finds sales by what stands in their columns, and by words.
import type {SalePage, SaleQuery} from "../model.ts";
import type {Database, Value} from "./database.ts";
import {leap} from "./leap.ts";
import {folded} from "./put-sale.ts";
import {saleRecordOf, selectSale, type SaleRow} from "./sales.ts";

const orders: Readonly<Record<SaleQuery["sort"], string>> = {sold: "sold_on", price: "cents", kind: "kind COLLATE NOCASE", maker: "maker COLLATE NOCASE", changed: "changed_at"};

export function findSalesIn(db: Database): (query: SaleQuery) => Promise<SalePage> {
  return async (query) => {
    const {where, values} = conditions(query);
    const direction = query.descending ? "DESC" : "ASC";
    const order = `${orders[query.sort]} ${direction}, n ${direction}`;
    const distinct = (column: string) => leap(db, "sale", column, "removed = 0 AND ");
    // Where every row has to be looked at, it is looked at once: all numbers in order, of which a page is read whole.
    const all = query.text.trim() === "" ? null : (JSON.parse(db.one<{ns: string}>(`SELECT json_group_array(n) AS ns FROM (SELECT n FROM sale WHERE ${where} ORDER BY ${order})`, ...values)!.ns) as number[]);
    const page = all?.slice(query.offset, query.offset + query.limit).map((n) => db.one<SaleRow>(`${selectSale} WHERE n = ?`, n)!);
    const rows = page ?? db.all<SaleRow>(`${selectSale} WHERE ${where} ORDER BY ${order} LIMIT ? OFFSET ?`, ...values, query.limit, query.offset);
    const total = all?.length ?? db.one<{total: number}>(`SELECT count(*) AS total FROM sale WHERE ${where}`, ...values)!.total;
    return {total, rows: rows.map(saleRecordOf), values: {kinds: distinct("kind"), makers: distinct("maker"), channels: distinct("channel")}};
  };
}

function conditions(query: SaleQuery): {where: string; values: Value[]} {
  const parts: [string, ...Value[]][] = [["removed = ?", Number(query.removed)]];
  // A removed one that follows its garment is put back with the garment.
  if (query.removed) parts.push(["garment IS NULL"]);
  for (const column of ["kind", "maker", "grade", "channel"] as const) if (query[column] !== null) parts.push([`${column} = ?`, query[column]]);
  if (query.from !== null) parts.push(["sold_on >= ?", query.from]);
  if (query.until !== null) parts.push(["sold_on <= ?", query.until]);
  if (query.own !== null) parts.push([query.own ? "garment IS NOT NULL" : "garment IS NULL"]);
  for (const word of folded(query.text).split(/\s+/).filter((one) => one !== "")) parts.push(["instr(words, ?) > 0", word]);
  return {where: parts.map(([sql]) => sql).join(" AND "), values: parts.flatMap(([, ...given]) => given)};
}

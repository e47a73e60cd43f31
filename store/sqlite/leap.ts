// The different values of a column, leaping through its index from one to the next instead of reading them all.
import type {Database} from "./database.ts";

/** @param condition  on the columns before it in the index, with " AND " behind it; empty: none */
export function leap(db: Database, table: string, column: string, condition: string): string[] {
  const next = (after: string) => `SELECT min(${column}) FROM ${table} WHERE ${condition}${column} > ${after}`;
  const sql = `WITH RECURSIVE found (value) AS (${next("''")} UNION ALL SELECT (${next("value")}) FROM found WHERE value IS NOT NULL) SELECT value FROM found WHERE value IS NOT NULL`;
  return db.all<{value: string}>(sql).map(({value}) => value);
}

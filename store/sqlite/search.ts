// Finds garments: columns and words in the database, years in memory.
import type {Content, Dating, RackPage, RackQuery, RackRow} from "../model.ts";
import type {Database, Value} from "./database.ts";
import {leap} from "./leap.ts";
import {shareBetween, yearsIn, type YearShares} from "./years.ts";

const orders: Readonly<Record<RackQuery["sort"], string>> = {changed: "changed_at", number: "number COLLATE NOCASE", date: "best", place: "place COLLATE NOCASE", asked: "asked", sureness: "probability"};
/** Columns that a garment can be without. */
const mayLack: readonly RackQuery["sort"][] = ["date", "asked", "sureness"];

export function searchIn(db: Database): (query: RackQuery) => Promise<RackPage> {
  const years = yearsIn(db);
  return async (query) => {
    const {where, values} = conditions(query);
    const direction = query.descending ? "DESC" : "ASC";
    const order = orders[query.sort];
    // One text of all numbers is handed over many times faster than as many rows.
    const numbers = (condition: string) => {
      const {ns} = db.one<{ns: string}>(`SELECT json_group_array(n) AS ns FROM (SELECT n FROM garment WHERE ${where}${condition} ORDER BY ${order} ${direction}, n ${direction})`, ...values)!;
      return JSON.parse(ns) as number[];
    };
    // Garments without a value come last either way; asked for apart, so that an index gives the order.
    const fitting = mayLack.includes(query.sort) ? [...numbers(` AND ${order} IS NOT NULL`), ...numbers(` AND ${order} IS NULL`)] : numbers("");
    const known = years();
    const inYears = query.from === null && query.until === null ? fitting : fitting.filter((n) => liesIn(known.get(n), query));
    return {total: inYears.length, rows: rowsOf(db, inYears.slice(query.offset, query.offset + query.limit)), years: summed(inYears, known), values: valuesOf(db)};
  };
}

// A hair below, since shares are kept as 32-bit numbers.
const liesIn = (shares: YearShares | undefined, {from, until, atLeast}: RackQuery) => shares !== undefined && shareBetween(shares, from, until) >= atLeast - 1e-5;

function conditions(query: RackQuery): {where: string; values: Value[]} {
  const parts: [string, ...Value[]][] = [["removed = ?", Number(query.removed)]];
  for (const column of ["maker", "type", "place", "standing", "sureness"] as const) if (query[column] !== null) parts.push([`${column} = ?`, query[column]]);
  if (query.askedFrom !== null) parts.push(["asked >= ?", query.askedFrom]);
  if (query.askedUntil !== null) parts.push(["asked <= ?", query.askedUntil]);
  if (query.odd !== null) parts.push([query.odd ? "odd > 0" : "odd = 0"]);
  if (query.tag !== null) parts.push(["n IN (SELECT n FROM tag WHERE tag = ?)", query.tag]);
  const words = matchOf(query.text);
  if (words !== null) parts.push(["n IN (SELECT rowid FROM words WHERE words MATCH ?)", words]);
  return {where: parts.map(([sql]) => sql).join(" AND "), values: parts.flatMap(([, ...values]) => values)};
}

/** Every word, or its beginning, has to be there; a code like 412-0318 in this order. Null when there is nothing to look for. */
function matchOf(text: string): string | null {
  const words = text.split(/\s+/).map((word) => (word.match(/[\p{L}\p{N}]+/gu) ?? []).join(" ")).filter((word) => word !== "");
  return words.length === 0 ? null : words.map((word) => `"${word}"*`).join(" AND ");
}

/** Room for every year that a garment can be of; plain loops, since this runs over the whole rack with every search. */
const [firstYear, yearRoom] = [1000, 2000];

function summed(fitting: readonly number[], known: ReadonlyMap<number, YearShares>): RackPage["years"] {
  const all = new Float64Array(yearRoom);
  let first = yearRoom;
  let end = 0;
  for (const n of fitting) {
    const found = known.get(n);
    if (!found) continue;
    const {shares} = found;
    const from = found.first - firstYear;
    if (from < first) first = from;
    if (from + shares.length > end) end = from + shares.length;
    for (let i = 0; i < shares.length; i++) all[from + i]! += shares[i]!;
  }
  if (end <= first) return {first: 1900, garments: []};
  return {first: first + firstYear, garments: Array.from(all.subarray(first, end), (sum) => Number(sum.toFixed(4)))};
}

function rowsOf(db: Database, numbers: readonly number[]): RackRow[] {
  return numbers.map((n) => {
    const {id, rev, changed_at, content, maker} = db.one<{id: string; rev: number; changed_at: string; content: string; maker: string | null}>("SELECT garment.id, garment.rev, changed_at, content, maker FROM garment JOIN step USING (seq) WHERE n = ?", n)!;
    const {garment, place, standing, asked, tags, photos, dating} = JSON.parse(content) as Content;
    return {
      id, rev, number: garment.garment, title: garment.title ?? "", type: garment.type ?? "", maker, place, standing, asked, tags,
      cover: photos[0]?.photo ?? null, photos: photos.length, dating: dating && withoutYears(dating), changedAt: changed_at,
    };
  });
}

function withoutYears(dating: Dating): RackRow["dating"] {
  const rest: Partial<Dating> = {...dating};
  delete rest.years;
  return rest as RackRow["dating"];
}

function valuesOf(db: Database): RackPage["values"] {
  const distinct = (column: string) => leap(db, "garment", column, "removed = 0 AND ");
  const used = (tag: string) => db.one("SELECT 1 FROM tag JOIN garment USING (n) WHERE tag = ? AND removed = 0 LIMIT 1", tag) !== null;
  return {makers: distinct("maker"), types: distinct("type"), places: distinct("place"), tags: leap(db, "tag", "tag", "").filter(used)};
}
